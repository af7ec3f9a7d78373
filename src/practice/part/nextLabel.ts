/**
 * The next free label: one more than the highest number, in the way the builder writes labels.
 * @param labels all labels in use
 * @returns `P-001` where none of them has a number at its end
 * @example nextLabel(['P-013', 'P-002']) //=> 'P-014'
 */
export function nextLabel(labels: readonly string[]): string {
  let highest = { lead: 'P-', digits: 3, number: 0 };
  const uses = new Map<string, number>();
  const found = labels.flatMap((label) => {
    const [, lead, digits] = /^(.*?)(\d{1,9})$/.exec(label.trim()) ?? [];
    return lead === undefined || digits === undefined
      ? []
      : [{ lead, digits: digits.length, number: Number(digits) }];
  });
  for (const { lead } of found) uses.set(lead, (uses.get(lead) ?? 0) + 1);
  const [usual] = [...uses].sort(([, a], [, b]) => b - a)[0] ?? [];
  for (const one of found) if (one.lead === usual && one.number >= highest.number) highest = one;
  return `${highest.lead}${String(highest.number + 1).padStart(highest.digits, '0')}`;
}

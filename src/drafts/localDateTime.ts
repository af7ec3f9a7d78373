/** What a date field asks for. */
export type DateTimeKind = 'date' | 'datetime-local';

const two = (count: number) => String(count).padStart(2, '0');

/**
 * An instant as a date field writes it, in the phone's own time zone.
 * @param atMs instant, ms since 1970 UTC
 * @example toLocalField(0, 'date') //=> '1970-01-01' where the zone is UTC
 */
export function toLocalField(atMs: number, kind: DateTimeKind): string {
  const at = new Date(atMs);
  const day = `${String(at.getFullYear()).padStart(4, '0')}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return kind === 'date' ? day : `${day}T${two(at.getHours())}:${two(at.getMinutes())}`;
}

/**
 * The instant a date field means, in the phone's own time zone; a date alone means its midday,
 * so that no change of clocks moves it to a neighbouring day.
 * @param text the field's value
 * @returns ms since 1970 UTC, or undefined where the field is empty or half filled
 * @example fromLocalField('') //=> undefined
 */
export function fromLocalField(text: string): number | undefined {
  const found = /^(\d{4})-(\d{2})-(\d{2})(?:T(\d{2}):(\d{2}))?/.exec(text);
  if (!found) return undefined;
  const [year, month, day, hour, minute] = found
    .slice(1)
    .map((digits) => (digits ? Number(digits) : undefined));
  const at = new Date(2000, month! - 1, day!, hour ?? 12, minute ?? 0);
  // Given to the constructor, the years 0 to 99 would be taken for 1900 to 1999.
  at.setFullYear(year!, month! - 1, day!);
  return at.getDate() === day ? at.getTime() : undefined;
}

/**
 * A name that no other thing of the list bears: the wanted one, or the wanted one with the next free number.
 * @param taken the names of the others
 * @example freeName('Rotor on hub', ['Rotor on hub']) //=> 'Rotor on hub 2'
 */
export function freeName(wanted: string, taken: readonly string[]): string {
  const have = new Set(taken);
  if (!have.has(wanted)) return wanted;
  // One more than there are others: one of these numbers is free.
  const numbers = Array.from({ length: taken.length + 1 }, (_, at) => at + 2);
  return `${wanted} ${numbers.find((number) => !have.has(`${wanted} ${number}`))}`;
}

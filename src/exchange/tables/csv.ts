/** Signs that make a spreadsheet take a text for a formula; wide forms of the first four count as well. */
const FORMULA = /^[\s\p{Cc}]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r]/u;
const NUMBER = /^[+-]?\d+(\.\d+)?$/;

/**
 * A text that a spreadsheet shows instead of working it out: one that would begin a formula gets an apostrophe
 * before it, numbers stay numbers.
 * Source: OWASP, CSV Injection; from memory.
 * @example guarded('=1+1') //=> "'=1+1"
 */
export const guarded = (text: string): string =>
  FORMULA.test(text) && !NUMBER.test(text) ? `'${text}` : text;

const quoted = (text: string): string =>
  /[",\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;

/**
 * A table as RFC 4180 asks: a line for each row ended by CR LF, commas between, quotation marks where they are
 * needed and doubled inside.
 * @param rows the first names the columns; every row as long as that
 * @throws RangeError when a row is longer or shorter
 * @example csvText([['Part', 'Note'], ['Fork', 'say "no"']]) //=> 'Part,Note\r\nFork,"say ""no"""\r\n'
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  const columns = rows[0]?.length ?? 0;
  for (const row of rows)
    if (row.length !== columns) throw new RangeError(`a row of ${row.length} cells among ${columns} columns`);
  return rows.map((row) => `${row.map((cell) => quoted(guarded(cell))).join(',')}\r\n`).join('');
}

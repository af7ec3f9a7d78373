import { dayWords } from '../words/phrases.ts';

/** A line of the as-built sheet. A heading opens a block that paper should not break. */
export type SheetLine =
  | { is: 'title'; text: string }
  | { is: 'caution'; text: string }
  | { is: 'section'; text: string }
  | { is: 'heading'; text: string }
  | {
      is: 'field';
      label: string;
      text: string /** Stands out: something is missing or open. */;
      loud?: true;
    };

export const field = (label: string, text: string): SheetLine => ({ is: 'field', label, text });
export const loud = (label: string, text: string): SheetLine => ({ is: 'field', label, text, loud: true });

/** Who did it, as the settings named the person that day. */
export const doneBy = (by: string | undefined): SheetLine =>
  by ? field('Done by', by) : loud('Done by', 'not recorded');

/** An instant as the sheet prints it. @example whenWords(Date.UTC(2026, 4, 3, 9), 'UTC') //=> '3 May 2026 at 09:00' */
export function whenWords(ms: number, zone: string): string {
  const clock = new Intl.DateTimeFormat('en-GB', { timeStyle: 'short', timeZone: zone });
  return `${dayWords(ms, zone)} at ${clock.format(ms)}`;
}

const underlined = (text: string, mark: string) => `${text}\n${mark.repeat([...text].length)}`;

function lineText(line: SheetLine): string {
  switch (line.is) {
    case 'title':
      return underlined(line.text, '=');
    case 'section':
      return `\n${underlined(line.text, '-')}`;
    case 'heading':
      return `\n${line.text}`;
    case 'caution':
      return `\n! ${line.text}`;
    case 'field':
      return `${line.loud ? '! ' : '  '}${line.label}: ${line.text}`;
  }
}

/**
 * The sheet as plain text, for a file that needs no app to be read.
 * @example sheetText([{ is: 'title', text: 'Magpie' }]) //=> 'Magpie\n======\n'
 */
export function sheetText(lines: readonly SheetLine[]): string {
  return `${lines.map(lineText).join('\n')}\n`;
}

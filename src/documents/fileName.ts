import { utf8Bytes } from './utf8Bytes.ts';

/** Device names that Windows keeps for itself, with any ending. */
const KEPT = /^(con|prn|aux|nul|com\d|lpt\d)$/i;
/** Most bytes of a name; file systems take 255, and browsers add to it when the name is taken. */
const MOST_BYTES = 200;

/**
 * A name that every file system takes and that shows as what it is, out of what a person called a thing: no path,
 * no sign that steers, hides or turns letters around, no hidden file, no device name.
 * @param called as it was typed; may be anything
 * @param end ending with its dot
 * @see Windows' rules: https://learn.microsoft.com/windows/win32/fileio/naming-a-file
 * @example fileName('../Magpie: rear wheel', '.txt') //=> 'Magpie rear wheel.txt'
 */
export function fileName(called: string, end: string): string {
  const plain = called
    .normalize('NFC')
    .replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}\\/:*?"<>|%]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .replace(/^[ .]+/, '');
  let short = '';
  let left = MOST_BYTES;
  for (const sign of plain) {
    left -= utf8Bytes(sign);
    if (left < 0) break;
    short += sign;
  }
  const stem = short.replace(/[ .]+$/, '');
  if (stem === '') return `pinchbolt${end}`;
  return KEPT.test(stem.split('.')[0]?.trimEnd() ?? '') ? `_${stem}${end}` : `${stem}${end}`;
}

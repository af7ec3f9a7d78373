import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { writeJournalText } from '../../../../src/exchange/text/writeJournalText.ts';
import type { Entry } from '../../../../src/journal/entries.ts';
import { batched, MADE_AT, memory, opened, refusal, whole } from '../aCopy.ts';
import { allEntries, idOf } from '../entriesOfEveryKind.ts';

async function textOf(entries: readonly Entry[]): Promise<string> {
  const kept = memory();
  await writeJournalText({ entries: batched(entries), madeAtMs: MADE_AT }, kept.stream);
  return kept.blob().text();
}

describe('the journal as one text', () => {
  test('every line is JSON, entries stand as they are, and each check line can be computed again', async () => {
    const lines = (await textOf(allEntries)).trim().split('\n');
    const read = lines.map((line) => JSON.parse(line));
    expect(read.filter((line) => 'id' in line)).toEqual(allEntries);
    let before = '0'.repeat(64);
    let since = '';
    for (const [at, line] of lines.entries()) {
      if (!('sha256' in read[at])) {
        since += `${line}\n`;
        continue;
      }
      before = createHash('sha256')
        .update(before + since)
        .digest('hex');
      expect(read[at].sha256).toBe(before);
      since = '';
    }
    expect(read.at(-1)).toMatchObject({ entriesAbove: allEntries.length, end: true });
  });

  test('comes back as it was, over several check lines', async () => {
    const note = allEntries.find(({ type }) => type === 'note-added') as Entry;
    const many = Array.from({ length: 5001 }, (_, at) => ({ ...note, id: idOf(at + 1), words: `ü${at}` }));
    const { entries } = await whole(await opened(new Blob([await textOf(many)])));
    expect(entries.map((entry) => JSON.stringify(entry))).toEqual(many.map((entry) => JSON.stringify(entry)));
  });

  test.each([
    ['a line is changed', (text: string) => text.replace('Magpie', 'Magpye'), 'damaged'],
    ['the end is cut off', (text: string) => text.slice(0, -90), 'cut-short'],
    [
      'it ends at a check line',
      (text: string) => text.split('\n').slice(0, -2).join('\n').concat('\n'),
      'cut-short',
    ],
    ['something follows the end', (text: string) => `${text}{}\n`, 'damaged'],
    [
      'the head says a newer format',
      (text: string) => rehashed(text.replace(/"format":\d/, '"format":3')),
      'newer-format',
    ],
    [
      'an entry is of a newer version',
      (text: string) => rehashed(text.replace('"v":1', '"v":999')),
      'newer-entries',
    ],
  ])('%s: refused', async (_name, change, refused) => {
    const text = await textOf(allEntries);
    expect(await refusal(new Blob([change(text)]))).toHaveProperty('refused', refused);
  });
});

/** The text with check lines that are right again. */
function rehashed(text: string): string {
  let before = '0'.repeat(64);
  let since = '';
  return text
    .trim()
    .split('\n')
    .map((line) => {
      if (!line.startsWith('{"entriesAbove"')) {
        since += `${line}\n`;
        return `${line}\n`;
      }
      before = createHash('sha256')
        .update(before + since)
        .digest('hex');
      since = '';
      return `${line.replace(/[0-9a-f]{64}/, before)}\n`;
    })
    .join('');
}

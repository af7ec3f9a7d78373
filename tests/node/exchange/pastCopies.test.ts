import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { FORMAT } from '../../../src/exchange/archive/layout.ts';
import { schemaWords, wordsIn } from '../../../src/exchange/schema/entrySchema.ts';
import { TEXT_FORMAT } from '../../../src/exchange/text/journalText.ts';
import { foldAll } from '../../../src/journal/fold.ts';
import { MemoryRows } from '../../../src/journal/memoryRows.ts';
import { upcast } from '../../../src/journal/upcasts.ts';
import { fileSentence } from '../../../src/words/fileRefusals.ts';
import { archiveOf, opened, photoOf, refusal, whole } from './aCopy.ts';
import { type Bytes, bytesOf, changed, type Files, filesOf, signed, zipOf } from './mutated/rebuilt.ts';

/** Copies as past versions saved them; made once, when that version shipped. */
const past = (name: string): Blob =>
  new Blob([
    new Uint8Array(readFileSync(fileURLToPath(new URL(`../../fixtures/copies/${name}`, import.meta.url)))),
  ]);
const upTo = (format: number) => Array.from({ length: format }, (_, at) => at + 1);

describe('[X1] copies of every format so far', () => {
  test.each(upTo(FORMAT))('an archive of format %i opens with everything in it', async (format) => {
    const copy = await opened(past(`format${format}.zip`));
    expect(copy).toMatchObject({ entries: 40, madeAtMs: Date.UTC(2026, 4, 4, 9) });
    const { entries, photos } = await whole(copy);
    expect(photos).toEqual([photoOf(1, 300)]);
    const rows = new MemoryRows();
    foldAll(rows, entries.map(upcast));
    expect(rows.rows.size).toBeGreaterThan(10);
    expect(entries.filter(({ phone }) => phone === 'Bench phone')).toHaveLength(format === 1 ? 0 : 20);
  });

  test.each(upTo(TEXT_FORMAT))(
    'a journal in text of format %i opens with everything in it',
    async (format) => {
      const { entries } = await whole(await opened(past(`format${format}.jsonl`)));
      const { entries: inArchive } = await whole(await opened(past(`format${format}.zip`)));
      expect(entries).toEqual(inArchive);
    },
  );
});

const archived = async (): Promise<Files> => filesOf(new Uint8Array(await (await archiveOf()).arrayBuffer()));
const asFile = (files: Files): Blob => new Blob([zipOf(signed(files))]);
const LINES = 'journal/00001.jsonl';
const HEAD = 'archive.json';
const withField = (text: string) => text.replace('"type":"step-done"', '"type":"step-done","mood":"good"');
const knowing = (words: number) => (text: string) =>
  text.replace(/"schemaWords":( ?)\d+/, `"schemaWords":$1${words}`);

describe('a copy of a newer version of the app says to update the app', () => {
  const inHead = (text: string) =>
    text.replace(/"format": \d+/, `"format": ${FORMAT + 1}`).replace('{', '{ "crate": [1],');

  test.each<[string, (files: Files) => Files]>([
    ['by its format alone', (files) => changed(files, HEAD, inHead)],
    [
      'with files this version does not know',
      (files) => [...changed(files, HEAD, inHead), ['sounds/1.wav', bytesOf('x')] as [string, Bytes]],
    ],
    [
      'without files this version asks for',
      (files) => changed(files, HEAD, inHead).filter(([path]) => path === HEAD),
    ],
    ['with lines that are otherwise', (files) => changed(changed(files, HEAD, inHead), LINES, () => 'x\n')],
  ])('an archive, %s', async (_name, change) => {
    const refused = await refusal(asFile(change(await archived())));
    if (refused === 'read') throw new Error('it was read');
    expect(refused.refused).toBe('newer-format');
    expect(fileSentence(refused)).toBe(
      'This copy was made by a newer version of the app. Update the app, then try again.',
    );
  });

  test('an entry with a field this version does not know, where the head says that its app knows more', async () => {
    const newer = changed(changed(await archived(), LINES, withField), HEAD, knowing(schemaWords() + 1));
    const refused = await refusal(asFile(newer));
    if (refused === 'read') throw new Error('it was read');
    expect(refused.refused).toBe('newer-entries');
    expect(fileSentence(refused)).toMatch(
      /^Line \d+ of journal\/00001\.jsonl \(mood\) was written by a newer version of the app\. Update the app/,
    );
    // More that is known is no harm where no entry makes use of it.
    await opened(asFile(changed(await archived(), HEAD, knowing(schemaWords() + 1))));
  });

  test('the same field in a copy of an app that knows no more is no entry of any version', async () => {
    const refused = await refusal(asFile(changed(await archived(), LINES, withField)));
    expect(refused).toMatchObject({ refused: 'entry-wrong' });
  });

  test('a journal in text', async () => {
    const text = await past(`format${TEXT_FORMAT}.jsonl`).text();
    const newer = [
      text.replace(`"format":${TEXT_FORMAT}`, `"format":${TEXT_FORMAT + 1},"crate":[1]`),
      withField(knowing(schemaWords() + 1)(text)),
    ];
    const refused = await Promise.all(newer.map((one) => refusal(new Blob([checkedAnew(one)]))));
    expect(refused).toMatchObject([{ refused: 'newer-format' }, { refused: 'newer-entries' }]);
  });
});

/** The text with check lines that are right again. */
function checkedAnew(text: string): string {
  let [before, since] = ['0'.repeat(64), ''];
  const lines = text.trim().split('\n');
  return lines
    .map((line) => {
      if (!line.startsWith('{"entriesAbove"')) {
        since += `${line}\n`;
        return `${line}\n`;
      }
      before = createHash('sha256').update(before).update(since).digest('hex');
      since = '';
      return `${line.replace(/[0-9a-f]{64}/, before)}\n`;
    })
    .join('');
}

test('a schema that asks for less knows more, as one with more fields does', () => {
  const asked = { properties: { a: { type: 'string' }, b: { type: 'string' } }, required: ['a', 'b'] };
  expect(wordsIn({ ...asked, required: ['a'] })).toBeGreaterThan(wordsIn(asked));
  expect(wordsIn({ ...asked, properties: { ...asked.properties, c: { type: 'string' } } })).toBeGreaterThan(
    wordsIn(asked),
  );
});

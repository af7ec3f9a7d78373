import { beforeAll, expect, test } from 'vitest';
import type { SheetLine } from '../../../src/documents/sheetLine.ts';
import { sheetLines } from '../../../src/documents/sheetLines.ts';
import { entryContent } from '../../fixtures/entryContent.ts';
import { builtBike, circumstances, NINE } from './builtBike.ts';

let lines: SheetLine[];
beforeAll(async () => {
  const { asBuilt, logbook } = await builtBike();
  lines = sheetLines(await asBuilt(NINE + 86_400_000), circumstances);
  logbook.close();
});

/** What was written down for the bike, by the content that asks for it. */
const printed: Record<string, RegExp> = {
  work: /tightened to 5,2 N·m, 2 bolts, 2 passes/,
  'work-date': /3 May 2026 at 10:00/,
  worker: /the builder/,
  approval: /the whole build/,
  data: /5 N·m, printed on the part, Stem \(P-002\), face plate/,
  inspection: /check before riding: Front wheel \(7 points\).*Cranks \(6 points, 1 not OK\)/,
  'inspection-date': /3 May 2026 at 11:00/,
  'time-then': /1 ride, 8 km, 30 minutes/,
  signer: /the builder/,
  statement: /passed for a first short ride/,
  discrepancies: /Cranks: a little play/,
  'owner-work': /tightened to 5,2 N·m/,
  'owner-date': /3 May 2026/,
  'owner-signature': /the builder/,
  'total-time': /2 rides, 12 km, 50 minutes/,
  life: /not known/,
  'inspection-status': /Frame: rear ends/,
  alterations: /cold-set at rear ends, from 120 mm to 130 mm/,
};

test('every content that is asked for has a value to look for, and none is looked for that is not asked for', () => {
  expect(Object.keys(printed)).toEqual(entryContent.map(({ id }) => id));
});

// 14 CFR 43.9, 43.11 and 91.417, public copies; rows marked memory are from memory.
test.each(entryContent)(
  '$rule asks for $asked: held, and printed under "$printedAs" ($known)',
  ({ id, printedAs }) => {
    const texts = lines.flatMap((line) =>
      line.is === 'field' && line.label === printedAs ? [line.text] : [],
    );
    expect(texts.join('\n')).toMatch(printed[id] ?? /$^/);
  },
);

test.each(entryContent)('$id has a source', ({ source, held, known }) => {
  expect(source).toMatch(/^14 CFR \d/);
  expect(held).not.toBe('');
  expect(['seen', 'memory']).toContain(known);
});

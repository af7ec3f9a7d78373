import { expect, test } from 'vitest';
import { field, loud, type SheetLine } from '../../../../src/documents/sheetLine.ts';
import { sectionsOf, underOneLabel } from '../../../../src/screens/sheet/Paper.tsx';

test('lines of one label in a row stand under it once; what stands out keeps a label of its own', () => {
  const fields = [
    field('Open then', 'a re-check'),
    field('Open then', 'a step'),
    loud('Open then', 'a brake'),
    field('Signed by', 'T'),
    field('Open then', 'later'),
  ].filter((line) => line.is === 'field');
  const texts = underOneLabel(fields).map((lines) => lines.map(({ text }) => text));
  expect(texts).toEqual([['a re-check', 'a step'], ['a brake'], ['T'], ['later']]);
});

test('a heading opens a block, a section gathers them, and the caution stays with its section', () => {
  const lines: SheetLine[] = [
    field('State', 'not released'),
    { is: 'caution', text: 'Careful' },
    { is: 'section', text: 'Joints' },
    { is: 'heading', text: 'Stem' },
    field('Found', 'it held'),
  ];
  expect(sectionsOf(lines)).toEqual([
    { title: undefined, caution: 'Careful', blocks: [{ heading: undefined, fields: [lines[0]] }] },
    { title: 'Joints', caution: undefined, blocks: [{ heading: 'Stem', fields: [lines[4]] }] },
  ]);
});

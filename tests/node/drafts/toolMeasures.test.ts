import { expect, test } from 'vitest';
import { draftOfTool, emptyTool, readTool } from '../../../src/drafts/toolDraft.ts';
import type { ToolRow } from '../../../src/journal/rows.ts';

const typed = {
  ...emptyTool('N.m'),
  name: 'small wrench',
  toolClass: 'click' as const,
  lever: '21 cm',
  uses: '120',
};

test('a tool keeps its kind, its uses and the length to the hand as typed, and brings them back', () => {
  const read = readTool(typed);
  if (!read.ok) throw new Error(read.sentence);
  expect(read.about).toMatchObject({
    ...{ toolClass: 'click', cyclesSinceCheck: 120 },
    lever: { value: 21, unit: 'cm', typed: '21 cm' },
  });
  const again = draftOfTool({ ...read.about, toolId: 't1' } as ToolRow, 'N.m');
  expect(again).toMatchObject({ toolClass: 'click', lever: '210 mm', uses: '120' });
});

test.each([
  ['lever', { lever: 'long' }],
  ['uses', { uses: 'many' }],
])('a %s that is no number is said at its field', (wrong, change) => {
  expect(readTool({ ...typed, ...change })).toMatchObject({ ok: false, wrong });
});

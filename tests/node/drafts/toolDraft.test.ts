import { describe, expect, test } from 'vitest';
import { changedTool, draftOfTool, emptyTool, readTool } from '../../../src/drafts/toolDraft.ts';
import type { ToolRow } from '../../../src/journal/rows.ts';
import { scaleText } from '../../../src/words/scaleText.ts';

const tool = (about: Partial<ToolRow>): ToolRow => ({
  ...{ key: 'tool/t', is: 'tool', toolId: 't', lastMs: 0, lastId: '', name: 'Click wrench' },
  ...about,
});

describe('the form of a tool', () => {
  test('a scale in in·lbf is kept in N·m: 20 to 200 in·lbf (1 in·lbf = 0.112984829 N·m, exact by definition)', () => {
    const read = readTool({ ...emptyTool('[in_i].[lbf_av]'), name: 'Beam', min: '20', max: '200' });
    expect(read.ok && read.about.minNm).toBeCloseTo(2.25969658, 7);
    expect(read.ok && read.about.maxNm).toBeCloseTo(22.5969658, 6);
  });

  test('what was typed comes back after its way through N·m', () => {
    const read = readTool({ ...emptyTool('[in_i].[lbf_av]'), name: 'Beam', min: '20,5', max: '200' });
    if (!read.ok) throw new Error('the form should read');
    expect(draftOfTool(tool(read.about), '[in_i].[lbf_av]')).toMatchObject({ min: '20.5', max: '200' });
  });

  test('what is emptied is cleared, and a figure that only went through another unit is not changed', () => {
    const known = tool({
      ...{ minNm: 2, maxNm: 24, tolerancePercent: 4, lastCheckMs: 5, checkBasis: 'laboratory' },
      ...{ lever: { value: 21, unit: 'cm', typed: '21 cm' }, note: 'stiff' },
    });
    const changed = (change: Partial<ReturnType<typeof emptyTool>>) => {
      const read = readTool({ ...draftOfTool(known, '[in_i].[lbf_av]'), ...change });
      return read.ok && changedTool(known, read.about);
    };
    expect(changed({})).toEqual({});
    expect(changed({ min: '', lever: '', note: ' ', lastCheckMs: null })).toEqual({
      cleared: ['minNm', 'lastCheckMs', 'lever', 'note'],
    });
    // 1 in·lbf = 0.112984829 N·m, exact by definition.
    expect(changed({ max: '100' })).toEqual({ maxNm: expect.closeTo(11.2984829, 6) });
  });

  test('empty fields stay unknown', () => {
    const read = readTool({ ...emptyTool('N.m'), name: ' Beam ' });
    expect(read).toEqual({ ok: true, about: { name: 'Beam', checkBasis: 'unknown' } });
  });

  test.each(['min', 'max', 'tolerance', 'everyDays'] as const)('%s that is no number is marked', (field) => {
    expect(readTool({ ...emptyTool('N.m'), name: 'Beam', [field]: 'much' })).toMatchObject({
      ok: false,
      wrong: field,
    });
  });

  test('the scale is told in the unit chosen', () => {
    expect(scaleText({ minNm: 2, maxNm: 24 }, 'N.m')).toBe('2 to 24 N·m');
    expect(scaleText({}, 'N.m')).toBe('Scale not known');
  });
});

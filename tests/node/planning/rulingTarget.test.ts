import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Target, TargetSource } from '../../../src/journal/entries.ts';
import type { TorqueUnit } from '../../../src/mechanics/units.ts';
import { mostNm, rulingTarget } from '../../../src/planning/rulingTarget.ts';

const torque = (value: number, unit: TorqueUnit = 'N.m') => ({ value, unit, typed: String(value) });
const target = (source: TargetSource, value: number, more: Partial<Target> = {}): Target => ({
  source,
  torque: torque(value),
  ...more,
});

describe('the ruling target (common practice, no source: the weaker of two mating parts sets the limit)', () => {
  test('no target, no figure', () => {
    expect(rulingTarget([])).toEqual({ ok: false, reason: 'no-figure' });
    expect(rulingTarget([{ source: 'none' }])).toEqual({ ok: false, reason: 'no-figure' });
  });

  test.each<[string, Target[], number, string]>([
    ['one printed figure', [target('printed-on-the-part', 5)], 5, 'part-maker'],
    [
      'the lower of two makers',
      [target('printed-on-the-part', 6), target('mating-part', 5)],
      5,
      'part-maker',
    ],
    [
      'a document below a print',
      [target('printed-on-the-part', 6), target('makers-document', 5.5)],
      5.5,
      'part-maker',
    ],
    [
      'a maker above a lower table',
      [target('general-table', 4), target('makers-document', 8)],
      8,
      'part-maker',
    ],
    [
      'a table before judgement',
      [target('own-judgement', 3), target('general-table', 4)],
      4,
      'general-table',
    ],
    ['judgement before no source', [target('none', 2), target('own-judgement', 3)], 3, 'own-judgement'],
    ['a figure without a source', [target('none', 2)], 2, 'unsourced'],
    [
      'a range yields to a figure below its upper end',
      [target('printed-on-the-part', 12, { upTo: torque(14) }), target('mating-part', 13)],
      13,
      'part-maker',
    ],
    [
      'a range stands before a figure above its upper end',
      [target('printed-on-the-part', 12, { upTo: torque(14) }), target('mating-part', 20)],
      12,
      'part-maker',
    ],
    [
      'units are compared as torques: 40 in·lbf is 4.52 N·m (exact definitions of pound, inch and gravity)',
      [target('printed-on-the-part', 5), { source: 'mating-part', torque: torque(40, '[in_i].[lbf_av]') }],
      40,
      'part-maker',
    ],
  ])('%s', (_, targets, value, standing) => {
    const ruling = rulingTarget(targets);
    expect(ruling).toMatchObject({ ok: true, standing, target: { torque: { value } } });
    expect(ruling.ok && ruling.overruled).toHaveLength(targets.length - 1);
  });

  test('the order in which figures were written down changes nothing, and no maker allows less than the ruling one', () => {
    const sources = fc.constantFrom<TargetSource>(
      'printed-on-the-part',
      'makers-document',
      'mating-part',
      'general-table',
      'own-judgement',
    );
    const some = fc.array(
      fc
        .record({ source: sources, value: fc.integer({ min: 1, max: 60 }) })
        .map(({ source, value }) => target(source, value)),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(some, (targets) => {
        const ruling = rulingTarget(targets);
        const turned = rulingTarget([...targets].reverse());
        if (!ruling.ok || !turned.ok) throw new Error('figures were given');
        expect(mostNm(turned.target)).toBe(mostNm(ruling.target));
        const makers = ['printed-on-the-part', 'makers-document', 'mating-part'];
        const limits = targets
          .filter(({ source }) => makers.includes(source))
          .map((given) => given.torque?.value ?? Number.NaN);
        if (limits.length > 0) expect(mostNm(ruling.target)).toBe(Math.min(...limits));
      }),
    );
  });
});

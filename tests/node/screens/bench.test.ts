import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StepState } from '../../../src/journal/rows.ts';
import {
  anyCounted,
  type BoltCount,
  boltBack,
  boltTight,
  nextPass,
  uncounted,
} from '../../../src/practice/bench/boltCount.ts';
import {
  leftBehind,
  neighbour,
  type PlaceInPlan,
  stepAfter,
  stepInHand,
} from '../../../src/practice/bench/stepInHand.ts';
import { appliedDoubt } from '../../../src/practice/joint/appliedDoubt.ts';
import { AWAY_MS, interrupted } from '../../../src/screens/bench/sitting.ts';
import { threadDiameterMm } from '../../../src/standards/screws/threadDiameter.ts';
import { sourceText, targetFigureText } from '../../../src/words/targetWords.ts';

/** Steps by their states: o open, d done, s skipped. */
const list = (states: string) =>
  [...states].map((sign, index) => ({
    stepId: String(index),
    state: ({ o: 'open', d: 'done', s: 'skipped' } as Record<string, StepState>)[sign] ?? 'open',
  }));
const END: PlaceInPlan = { at: 'end' };
const at = (index: number): PlaceInPlan => ({ at: 'step', index });

describe('where work goes on', () => {
  test.each<[string, string, string | undefined, PlaceInPlan]>([
    ['an empty list ends at once', '', undefined, END],
    ['the first open step', 'doo', undefined, at(1)],
    ['the step that was open', 'ooo', '2', at(2)],
    ['an opened step that is done by now gives way', 'odo', '1', at(0)],
    ['a skipped step is not gone back to', 'so', undefined, at(1)],
    ['an opened step that left the list', 'do', 'gone', at(1)],
    ['all done', 'dds', undefined, END],
  ])('%s', (_, states, open, place) => {
    expect(stepInHand(list(states), open)).toEqual(place);
  });

  test.each<[string, string, number, PlaceInPlan]>([
    ['the next open one', 'dodo', 0, at(1)],
    ['over done and skipped ones', 'ddso', 0, at(3)],
    ['nothing open behind leads to the end, though something is open before', 'od', 1, END],
  ])('after a step: %s', (_, states, index, place) => {
    expect(stepAfter(list(states), index)).toEqual(place);
  });

  test.each<[string, PlaceInPlan, 1 | -1, PlaceInPlan]>([
    ['on', at(0), 1, at(1)],
    ['behind the last comes the end', at(2), 1, END],
    ['back from the end', END, -1, at(2)],
    ['before the first there is nothing', at(0), -1, at(0)],
  ])('neighbour: %s', (_, from, by, place) => {
    expect(neighbour(list('oso'), from, by)).toEqual(place);
  });

  test('what was passed without being done is told by its place, counted from 1', () => {
    expect(leftBehind(list('odoos'), 3)).toEqual([1, 3, 5]);
    expect(leftBehind(list('dd'), 2)).toEqual([]);
  });
});

describe('bolts counted off', () => {
  test.each<[string, BoltCount, BoltCount]>([
    ['one tight', boltTight({ pass: 1, tight: 3 }, 4), { pass: 1, tight: 4 }],
    ['not more than there are', boltTight({ pass: 1, tight: 4 }, 4), { pass: 1, tight: 4 }],
    ['one back', boltBack({ pass: 1, tight: 1 }, 4), { pass: 1, tight: 0 }],
    ['back into the pass before', boltBack({ pass: 2, tight: 0 }, 4), { pass: 1, tight: 4 }],
    ['nothing to take back', boltBack(uncounted, 4), uncounted],
    ['once more round', nextPass({ pass: 1, tight: 4 }), { pass: 2, tight: 0 }],
  ])('%s', (_, count, expected) => {
    expect(count).toEqual(expected);
  });

  test('as many taps back as forth lead to where it began, over any number of passes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 72 }), fc.integer({ min: 0, max: 300 }), (of, taps) => {
        let count = uncounted;
        for (let tap = 0; tap < taps; tap++)
          count = count.tight === of ? boltTight(nextPass(count), of) : boltTight(count, of);
        expect(anyCounted(count)).toBe(taps > 0);
        expect((count.pass - 1) * of + count.tight).toBe(taps);
        // A full pass and the empty one behind it are one and the same work, so that step back is free.
        for (let tap = 0; tap < taps; tap++) {
          if (count.tight === 0) count = boltBack(count, of);
          count = boltBack(count, of);
        }
        expect(count).toEqual(uncounted);
      }),
    );
  });
});

describe('an interruption is asked about', () => {
  const last = { stepId: 's', seenAtMs: 1_000_000, pageMs: 7 };
  test.each<[string, Parameters<typeof interrupted>[0], string, number, number, boolean]>([
    ['nothing remembered', undefined, 's', 0, 0, true],
    ['another page than before', last, 's', last.seenAtMs, 8, true],
    ['away for two minutes, and no longer', last, 's', last.seenAtMs + AWAY_MS, 7, false],
    ['away for longer', last, 's', last.seenAtMs + AWAY_MS + 1, 7, true],
    ['a step opened elsewhere meanwhile', last, 'other', last.seenAtMs + AWAY_MS + 1, 7, false],
  ])('%s', (_, sitting, stepId, nowMs, pageMs, asked) => {
    expect(interrupted(sitting, stepId, nowMs, pageMs)).toBe(asked);
  });
});

describe('a torque is doubted before it is logged', () => {
  test('what fits the bolt and the figure is not', () => {
    expect(appliedDoubt(5, { diameterMm: 5, mostNm: 5 })).toBeUndefined();
    expect(appliedDoubt(5, {})).toBeUndefined();
  });
  test('20 N·m on M5: above 1.5 times the 10.4 N·m that a public torque table gives M5 in class 12.9', () => {
    expect(appliedDoubt(20, { diameterMm: 5 })).toMatchObject({ about: 'size' });
  });
  test('above the figure by more than a torque tool may err (ISO 6789, from memory: 6 % up to 10 N·m)', () => {
    expect(appliedDoubt(5.3, { diameterMm: 5, mostNm: 5 })).toBeUndefined();
    expect(appliedDoubt(5.31, { diameterMm: 5, mostNm: 5 })).toEqual({ about: 'target', mostNm: 5 });
  });
});

describe('the diameter behind a thread as it was written', () => {
  test.each<[string, string[], number | undefined]>([
    ['M5 of the thread table', ['M5'], 5],
    ['several of one size', ['M5', 'M5'], 5],
    ['of several sizes none', ['M5', 'M6'], undefined],
    ['a pitch is no diameter', ['M10 × 1,25'], 10],
    ['a metric thread of no table', ['m7'], 7],
    ['9/16 in is 14.2875 mm (an inch is 25.4 mm, exact)', ['9/16'], 14.2875],
    ['words', ['long bolt'], undefined],
    ['no fastener', [], undefined],
  ])('%s', (_, written, mm) => {
    const found = threadDiameterMm(written.map((thread) => ({ thread })));
    if (mm === undefined) expect(found).toBeUndefined();
    else expect(found).toBeCloseTo(mm, 9);
  });
});

describe('a target in words', () => {
  const nm = (typed: string) => ({
    value: Number.parseFloat(typed.replace(',', '.')),
    unit: 'N.m' as const,
    typed,
  });
  test.each<[string, string, string | undefined, string]>([
    ['a range', '12', '14', '12 to 14'],
    ['as typed, with its comma', '5,2', undefined, '5,2'],
    ['the unit typed behind it is printed elsewhere', '5,2 Nm', undefined, '5,2'],
  ])('%s', (_, low, high, text) => {
    expect(targetFigureText({ torque: nm(low), ...(high ? { upTo: nm(high) } : {}) })).toBe(text);
  });
  test('says whose figure it is, and where it can be read again', () => {
    expect(sourceText({ source: 'printed-on-the-part' }, 'Stem')).toBe('Stem: printed on the part');
    expect(sourceText({ source: 'makers-document', reference: ' page 4 ' })).toBe(
      "From the maker's document, page 4",
    );
  });
});

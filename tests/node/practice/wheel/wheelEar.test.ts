import { expect, test } from 'vitest';
import { typedTension } from '../../../../src/drafts/wheelReadingDraft.ts';
import { wheelByEar } from '../../../../src/practice/wheel/wheelEar.ts';
import type { WheelSketch } from '../../../../src/practice/wheel/wheelFigures.ts';
import { partialsHz } from '../../../fixtures/wheels/pluckedSpoke.ts';

const mm = (value: number) => ({ value, unit: 'mm' as const, typed: String(value) });
const side = (flange: number) => ({
  spokes: 18,
  crosses: 3,
  pcd: mm(45),
  flange: mm(flange),
  bought: mm(184),
});
/** Case 1 of the handbook on wheels: 20-inch rear, 36 spokes. */
const wheel: WheelSketch = {
  ...{ drilling: 'even', head: 'elbow', firstSide: 'drive' },
  ...{ leftSide: side(34), driveSide: side(20), erds: [mm(384)] },
  target: { value: 1200, unit: 'N', typed: '1200' },
};

test('184 mm of 2 mm at 597.45 Hz is 1000 N, by a beam solved in the tests', () => {
  const byEar = wheelByEar(wheel)!;
  const hz = partialsHz(184, 2, 1000, 1)[0]!;
  expect(byEar.read(0, hz)).toMatchObject({ ok: true, calibrated: false });
  const typed = typedTension(hz.toFixed(2), 'Hz', undefined, (pitch) => byEar.read(0, pitch));
  expect(typed?.ok && typed.tensionN).toBeCloseTo(1000, 0);
});

test('each side is listened to for its own tension: 1200 N, and 714 N on the slack side', () => {
  const byEar = wheelByEar(wheel)!;
  expect(byEar.expectedN(0)).toBe(1200);
  expect(byEar.expectedN(1)).toBeCloseTo(714, 0);
  const [low, high] = [byEar.window(1, 714), byEar.window(0, 1200)];
  expect(low.highHz).toBeLessThan(high.highHz);
});

test('the outer piece is what the lacing leaves: 0.3408 of the spoke lies inside the crossing', () => {
  const outer = wheelByEar({ ...wheel, ear: { ends: 'clamped-pinned', sounds: 'outer' } })!;
  const hz = partialsHz(184 * (1 - 0.34079), 2, 1000, 1)[0]!;
  const read = outer.read(0, hz);
  expect(read.ok && read.tensionN).toBeCloseTo(1000, 0);
});

test('without the sizes of rim and hub a pitch is no tension, and the sentence says so', () => {
  const { erds: _erds, ...bare } = wheel;
  expect(wheelByEar(bare)).toBeUndefined();
  expect(typedTension('600', 'Hz', undefined, undefined)).toEqual({
    ok: false,
    sentence: 'Enter the sizes of rim and hub first: a pitch needs the spoke’s length.',
  });
});

test('typed pitches no spoke has are refused with a sentence', () => {
  const byEar = wheelByEar(wheel)!;
  const say = (text: string) => typedTension(text, 'Hz', undefined, (hz) => byEar.read(0, hz));
  for (const text of ['0', '60', '3000', '99999']) expect(say(text), text).toMatchObject({ ok: false });
});

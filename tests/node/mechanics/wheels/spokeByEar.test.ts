import { describe, expect, test } from 'vitest';
import {
  listeningWindow,
  readPitch,
  type SpokeEar,
  soundingSpoke,
  USUAL_EAR,
} from '../../../../src/mechanics/wheels/spokeByEar.ts';
import { buttedPieces } from '../../../../src/mechanics/wheels/spokeCrossing.ts';
import { pitchHz } from '../../../../src/mechanics/wheels/spokePitch.ts';

const spoke = { pieces: buttedPieces(180, 2), crossing: 0.3408 };
const outer: SpokeEar = { ...USUAL_EAR, sounds: 'outer' };

test('the outer piece of 180 mm beyond 0.3408 is 118.7 mm; free or as a pair the whole spoke sounds', () => {
  expect(soundingSpoke(outer, spoke).pieces[0]!.lengthMm).toBeCloseTo(118.656, 3);
  expect(soundingSpoke(USUAL_EAR, spoke).pieces).toEqual(spoke.pieces);
  expect(soundingSpoke({ ...USUAL_EAR, sounds: 'pair' }, spoke).pieces).toEqual(spoke.pieces);
  expect(soundingSpoke(outer, { ...spoke, crossing: null }).pieces).toEqual(spoke.pieces);
});

test('180 mm at 612.29 Hz: 1000 N, between about 830 and 1160', () => {
  const answer = readPitch(USUAL_EAR, spoke, 612.29);
  if (!answer.ok) throw new Error(answer.reason);
  expect(answer.tensionN).toBeCloseTo(1000, 0);
  expect(answer.calibrated).toBe(false);
  expect(answer.band.lo).toBeGreaterThan(800);
  expect(answer.band.hi).toBeLessThan(1200);
});

test('two known tensions make the calibration that counts then; one does not', () => {
  const known = [700, 1100].map((tensionN) => ({ tensionN, hz: 1.03 * pitchHz(spoke, tensionN) }));
  const answer = readPitch({ ...USUAL_EAR, known }, spoke, 1.03 * pitchHz(spoke, 900));
  if (!answer.ok) throw new Error(answer.reason);
  expect(answer.calibrated).toBe(true);
  expect(Math.abs(answer.tensionN - 900)).toBeLessThan(5);
  expect(answer.band.hi / answer.band.mid).toBeLessThan(1.04);
  expect(readPitch({ ...USUAL_EAR, known: known.slice(1) }, spoke, 612.29)).toMatchObject({
    ok: true,
    calibrated: false,
  });
});

test('a pitch no such spoke has is refused', () => {
  expect(readPitch(USUAL_EAR, spoke, 60)).toEqual({ ok: false, reason: 'too-low-for-spoke' });
  expect(readPitch(USUAL_EAR, spoke, 3000)).toEqual({ ok: false, reason: 'too-high-for-spoke' });
  const known = [700, 1100].map((tensionN) => ({ tensionN, hz: pitchHz(spoke, tensionN) }));
  expect(readPitch({ ...USUAL_EAR, known }, spoke, 60)).toEqual({ ok: false, reason: 'too-low-for-spoke' });
});

describe('touching pair, handbook: mode of two strings that touch at 0.3408 of 180 mm', () => {
  // The pair read as one spoke gives the mean of the two within 1 %, and 2.5 % where they differ by 400 N.
  test.each([
    [1000, 1000, 557.6, 0.002],
    [1000, 900, 543.1, 0.005],
    [1000, 800, 527.2, 0.01],
    [1000, 600, 489.9, 0.04],
  ])('%d and %d N', (one, other, hz, off) => {
    const limp = {
      ...soundingSpoke({ ...USUAL_EAR, ends: 'pinned-pinned' }, spoke),
      wire: { gpa: 50, densityKgM3: 7900 },
    };
    // The handbook's figures are of limp strings: compared by the ratio to an even pair.
    const mean = pitchHz(limp, (one + other) / 2) / pitchHz(limp, 1000);
    expect(Math.abs((hz / 557.6 / mean) ** 2 - 1)).toBeLessThan(off);
  });
  test('trap: a pair taken for one spoke hides what the two differ by', () => {
    const hz = pitchHz(spoke, 900);
    const answer = readPitch({ ...USUAL_EAR, sounds: 'pair' }, spoke, hz);
    expect(answer.ok && answer.tensionN).toBeCloseTo(900, 0);
  });
});

test('the window of the outer piece leaves the tone of the pair below it, and the pair’s window that of the outer piece above', () => {
  const [pair, piece] = [listeningWindow(USUAL_EAR, spoke, 1000), listeningWindow(outer, spoke, 1000)];
  expect(pair.lowHz).toBeCloseTo(417, 0);
  expect(piece.lowHz).toBeGreaterThan(pitchHz(spoke, 1000));
  expect(pitchHz(soundingSpoke(outer, spoke), 1000)).toBeGreaterThan(pair.highHz);
  expect(listeningWindow(USUAL_EAR, spoke, 5000)).toEqual(listeningWindow(USUAL_EAR, spoke, 1800));
});

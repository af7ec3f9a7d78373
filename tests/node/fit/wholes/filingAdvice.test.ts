import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axlePositions } from '../../../../src/fit/wholes/axlePosition.ts';
import { filingAdvice, LEAST_READING_MM } from '../../../../src/fit/wholes/filingAdvice.ts';
import { filingWords } from '../../../../src/words/slotWords.ts';
import { rigidAxlePositionsMm } from '../../../fixtures/rigidChain.ts';

const drive = { ringTeeth: 36, sprocketTeeth: 15 };

describe('what to file off the front of a slot', () => {
  test('36 × 15, 383 to 396 mm, 86 pitches: the example, share by share', () => {
    const advice = filingAdvice({ frontMm: 383, rearMm: 396 }, drive, 86, 0.3, 0.75);
    expect(advice.fileMm).toBe(2.3);
    expect(advice.missingMm).toBeCloseTo(1.187, 3);
    const { missingMm, slackMm, readingMm, marginMm, fileMm } = advice;
    expect(fileMm - (missingMm + slackMm + readingMm + marginMm)).toBeGreaterThanOrEqual(-1e-9);
    expect(fileMm - (missingMm + slackMm + readingMm + marginMm)).toBeLessThan(0.1);
  });

  // The rigid-link simulation of the fixtures is a second way to where the axle stands, sharing no formula with the advice.
  test('[F4] by rigid links too, the chain goes in with air before it, at the worst of reading and file', () => {
    const { fileMm, slackMm } = filingAdvice({ frontMm: 383, rearMm: 396 }, drive, 86, 0.3, 0.75);
    const seats = rigidAxlePositionsMm(36, 15, 86, 4);
    const worstFrontMm = 383 + 0.3 - fileMm + 0.3;
    expect(Math.min(...seats) - worstFrontMm).toBeGreaterThanOrEqual(slackMm - 0.05);
  });

  test('[F4] over random slots, the promised chain has its slack after the cut, however the reading and the file were off', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 22, max: 52 }),
        fc.integer({ min: 11, max: 22 }),
        fc.double({ min: 360, max: 450, noNaN: true }),
        fc.double({ min: 4, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.boolean(),
        (ringTeeth, sprocketTeeth, frontMm, lengthMm, readingMm, wrong, cut, halfLink) => {
          const read = { frontMm, rearMm: frontMm + lengthMm };
          const found = axlePositions(read, ringTeeth, sprocketTeeth, { halfLink, readingMm });
          if (!found.ok || !found.filing) return;
          const { fileMm, pitches, marginMm, leftMm } = found.filing;
          const offMm = Math.max(LEAST_READING_MM, readingMm);
          // The slot as it is, and the file as it went.
          const trueFrontMm = frontMm + wrong * offMm;
          const filedMm = trueFrontMm - fileMm + cut * marginMm;
          const after = axlePositions(
            { frontMm: filedMm, rearMm: read.rearMm + 40 },
            ringTeeth,
            sprocketTeeth,
            {
              halfLink,
            },
          );
          if (!after.ok) throw new Error(after.reason);
          const stop = after.stops.find((one) => one.pitches === pitches);
          expect(stop?.slackFits).toBe(true);
          expect(stop?.settingMm.lo).toBeGreaterThanOrEqual(filedMm - 1e-6);
          // What is said to be left is left.
          const roomMm = (stop?.settingMm.hi ?? Number.NaN) - filedMm;
          expect(roomMm).toBeGreaterThanOrEqual(leftMm.least - 1e-6);
          expect(roomMm).toBeLessThanOrEqual(leftMm.most + 1e-6);
        },
      ),
      { numRuns: 150 },
    );
  });

  test('[F4] what is advised says what it is made of and what is left, and that a worn chain comes out where it does', () => {
    const roomy = axlePositions({ frontMm: 383, rearMm: 396 }, 36, 15);
    if (!roomy.ok) throw new Error(roomy.reason);
    expect(filingWords(roomy, 0.75)).toEqual([
      'File 2.3 mm more off the front, both sides alike, for 86 links.',
      'Of that 1.2 mm is to get it in, 0.4 mm is for slack, 0.3 mm for the error of the reading, 0.3 mm for the file.',
      'Left in front of the axle: 0.4 to 1.6 mm.',
      'At the rear a chain worn by 0.75 % still has 9.8 mm.',
    ]);
    const short = axlePositions({ frontMm: 383, rearMm: 385 }, 36, 15, { wearPercent: 3 });
    if (!short.ok) throw new Error(short.reason);
    expect(filingWords(short, 3).at(-1)).toContain(
      'Not this chain: a chain worn by 3 % comes out at the rear',
    );
  });
});

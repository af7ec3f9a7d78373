import { describe, expect, test } from 'vitest';
import { leftHanded } from '../../../../src/standards/screws/leftHand.ts';

describe('what tightens anti-clockwise', () => {
  // Pedals: workshop thread list and an axle-and-pedal thread page. Cups: ISO 6696. Lockring: magazine on fixed hubs.
  test.each([
    ['pedal', '9/16-20', 'right', ['The left pedal']],
    ['lockring', '1.29-24', 'right', ['The lockring']],
    ['bottom-bracket', 'M36-24', 'right', []],
    ['bottom-bracket', 'M47x1', 'right', ['The drive-side cup']],
    ['stem-steerer', 'M5', 'right', []],
    ['other', 'M8', 'left', ['The M8 thread']],
  ] as const)('[T10] %s, %s, written down as %s: %o', (kind, thread, hand, left) =>
    expect(leftHanded(kind, [{ thread, hand }])).toEqual(left),
  );
  test('[T10] is said once, and by its words where they are known', () => {
    const one = { thread: 'M8', hand: 'left' as const, words: 'left arm bolt' };
    expect(leftHanded('crank', [one, one])).toEqual(['left arm bolt']);
    expect(leftHanded('crank', [])).toEqual([]);
  });
});

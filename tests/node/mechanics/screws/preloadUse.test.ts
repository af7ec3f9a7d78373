import { expect, test } from 'vitest';
import { exactly } from '../../../../src/mechanics/band.ts';
import { preloadUse, proofLoadN, ultimateLoadN } from '../../../../src/mechanics/screws/preloadUse.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

test('examples: M5 in 8.8', () => {
  expect(preloadUse({ lo: 3500, mid: 5000, hi: 6500 }, 8230).verdict).toBe('high');
  expect(proofLoadN(14.2, 580)).toBeCloseTo(8236, 9);
  expect(ultimateLoadN(14.2, 800)).toBe(11360);
});

test.each([
  [0.29, 'low'],
  [0.3, 'ordinary'],
  [0.75, 'ordinary'],
  [0.76, 'high'],
  [0.9, 'high'],
  [0.91, 'near-proof'],
  [1, 'near-proof'],
  [1.01, 'partly-beyond'],
])('an upper end at %d of the proof load is %s', (share, verdict) => {
  expect(preloadUse({ lo: 0.1, mid: 0.2, hi: share }, 1)).toMatchObject({
    share: { lo: 0.1, mid: 0.2, hi: share },
    verdict,
  });
});

// A band that only reaches past the proof load is no reason to stop; one that is mostly beyond it is.
test.each([
  [0.5, 1, 0, 'near-proof'],
  [0.5, 1.5, 0.5, 'partly-beyond'],
  [0.6, 1.1, 0.2, 'partly-beyond'],
  [0.8, 1.3, 0.6, 'beyond-proof'],
  [1.1, 1.3, 1, 'beyond-proof'],
  [1.2, 1.2, 1, 'beyond-proof'],
])('from %d to %d of the proof load, %d of the band is beyond: %s', (lo, hi, beyond, verdict) => {
  const use = preloadUse({ lo, mid: (lo + hi) / 2, hi }, 1);
  expect(use.beyond).toBeCloseTo(beyond, 12);
  expect(use.verdict).toBe(verdict);
});

refusesBadNumbers({ proofN: 'positive' }, (_, value) => preloadUse(exactly(1000), value));
refusesBadNumbers({ stressAreaMm2: 'positive', proofMPa: 'positive' }, (name, value) =>
  name === 'proofMPa' ? proofLoadN(14.2, value) : proofLoadN(value, 580),
);
refusesBadNumbers({ tensileMPa: 'positive' }, (_, value) => ultimateLoadN(14.2, value));

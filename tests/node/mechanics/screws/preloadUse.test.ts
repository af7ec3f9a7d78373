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
  [1.01, 'beyond-proof'],
])('an upper end at %d of the proof load is %s', (share, verdict) => {
  expect(preloadUse({ lo: 0.1, mid: 0.2, hi: share }, 1)).toEqual({
    share: { lo: 0.1, mid: 0.2, hi: share },
    verdict,
  });
});

refusesBadNumbers({ proofN: 'positive' }, (_, value) => preloadUse(exactly(1000), value));
refusesBadNumbers({ stressAreaMm2: 'positive', proofMPa: 'positive' }, (name, value) =>
  name === 'proofMPa' ? proofLoadN(14.2, value) : proofLoadN(value, 580),
);
refusesBadNumbers({ tensileMPa: 'positive' }, (_, value) => ultimateLoadN(14.2, value));

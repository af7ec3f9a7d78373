import { expect, test } from 'vitest';
import { magpiePile } from '../../../../src/demo/magpiePile.ts';
import { type Finding, finding } from '../../../../src/fit/finding.ts';
import type { FitOutcome } from '../../../../src/fit/verdict.ts';
import { fitMarks } from '../../../../src/practice/zones/fitMarks.ts';

const about = (topic: string, outcome: FitOutcome, ...partIds: string[]): Finding =>
  finding(
    topic,
    partIds.map((partId) => ({ partId, faceId: topic })),
    { outcome, because: '', source: 'made up', known: 'proposal' },
  );

test('the worst of a zone is marked, and how often', () => {
  const found = [
    about('a', 'fits', 'stem', 'fork'),
    about('b', 'not-known', 'stem', 'bar'),
    about('c', 'not-known', 'headset', 'fork'),
    about('d', 'fits-with', 'seatpost', 'frame'),
    about('e', 'does-not-fit', 'front-hub-a', 'rim-front'),
    about('f', 'not-known', 'front-hub-b', 'rim-front'),
  ];
  expect(fitMarks(found, magpiePile, new Set())).toEqual({
    'fork-and-bars': { state: 'unknown', count: 2, words: '2 not known' },
    saddle: { state: 'bridged', count: 1, words: '1 with something between' },
    'front-wheel': { state: 'wrong', count: 1, words: '1 do not fit' },
  });
});

test('what was accepted counts as fitting, and a frame has no zone of its own', () => {
  const one = about('a', 'does-not-fit', 'stem', 'frame');
  expect(fitMarks([one], magpiePile, new Set([one.findingId]))).toEqual({
    'fork-and-bars': { state: 'done', count: 1, words: '1 fit' },
  });
});

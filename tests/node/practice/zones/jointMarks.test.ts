import { expect, test } from 'vitest';
import {
  dueMarks,
  jointMarks,
  jointsByZone,
  partsByZone,
} from '../../../../src/practice/zones/jointMarks.ts';

const screw = [{ thread: 'M5', count: 2, hand: 'right' as const }];
const joint = (
  jointId: string,
  kind: 'stem-steerer' | 'bar-clamp' | 'bead',
  state: 'open' | 'hand-tight' | 'torqued' | 'apart',
) => ({
  jointId,
  kind,
  name: kind,
  partIds: [] as string[],
  state,
  fasteners: kind === 'bead' ? [] : screw,
  targets: [],
});

test('example of the docstring: a hand-tight joint is counted where it sits', () => {
  expect(jointMarks([joint('a', 'stem-steerer', 'hand-tight')], [])).toEqual({
    'fork-and-bars': { state: 'open', count: 1, words: '1 joint not tight' },
  });
});

test('open is said while one is left; what is apart does not count, what wants no wrench is done', () => {
  const stem = joint('a', 'stem-steerer', 'torqued');
  const bar = joint('b', 'bar-clamp', 'open');
  expect(jointMarks([stem, bar], [])['fork-and-bars']).toEqual({
    state: 'open',
    count: 1,
    words: '1 joint not tight',
  });
  expect(jointMarks([stem, { ...bar, state: 'apart' }], [])['fork-and-bars']).toEqual({
    state: 'done',
    count: 1,
    words: '1 joint done',
  });
  expect(jointMarks([{ ...stem, state: 'apart' }], [])).toEqual({});
  expect(jointMarks([joint('c', 'bead', 'open')], [])).toEqual({
    'rear-wheel': { state: 'done', count: 1, words: '1 joint done' },
  });
});

test('re-checks that are due are counted at their joints', () => {
  const joints = [
    joint('a', 'stem-steerer', 'torqued'),
    joint('b', 'bar-clamp', 'torqued'),
    joint('c', 'bead', 'open'),
  ];
  expect(dueMarks(['a', 'b', undefined, 'gone'], joints, [])).toEqual({
    'fork-and-bars': { state: 'due', count: 2, words: '2 re-checks due' },
  });
  expect(dueMarks([], joints, [])).toEqual({});
});

test('every joint is in one zone, every part in one or in none', () => {
  const joints = [joint('a', 'stem-steerer', 'open'), joint('c', 'bead', 'open')];
  expect([...jointsByZone(joints, []).values()].flat().map(({ jointId }) => jointId)).toEqual(['a', 'c']);
  const parts = [
    { partId: 'f', kind: 'frame', name: 'Frame' },
    { partId: 's', kind: 'saddle', name: 'Saddle' },
  ];
  expect([...partsByZone(parts)]).toEqual([['saddle', [parts[1]]]]);
});

import { describe, expect, test } from 'vitest';
import { recheckSchedule } from '../../../src/standards/checks/recheckSchedule.ts';
import { type Founded, founded } from '../../../src/standards/known.ts';
import { cureGrid } from '../../../src/standards/screws/cureGrid.ts';
import { embedmentSource } from '../../../src/standards/screws/embedment.ts';
import { clampFriction } from '../../../src/standards/screws/friction.ts';
import { nutFactorDefaults } from '../../../src/standards/screws/nutFactors.ts';
import { engagementRules } from '../../../src/standards/screws/threadEngagement.ts';
import { toolClasses } from '../../../src/standards/screws/toolClasses.ts';
import { jointTests } from '../../../src/standards/screws/torqueTests.ts';
import { jointWorkings } from '../../../src/workings/joint/jointWorkings.ts';
import { barInStem } from '../workings/joint/facts.ts';

const tables: [string, readonly Founded[]][] = [
  ['nut factors', nutFactorDefaults],
  ['clamp friction', Object.values(clampFriction)],
  ['test torques', jointTests],
  ['tool classes', toolClasses],
  ['thread engagement', engagementRules],
  ['embedment', [embedmentSource]],
  ['cure', [cureGrid]],
  ['re-check spans', recheckSchedule],
];
const words = { 0: 'no printed origin', 1: 'one origin', 2: 'two origins or more' } as const;

test('example', () =>
  expect(founded('VDI 2230-1, from memory', 'memory', 0).source).toBe(
    'VDI 2230-1, from memory (no printed origin)',
  ));

// Where a figure can hurt, the number of its origins is part of the source a screen shows.
describe.each(tables)('%s', (_, rows) => {
  test('every figure says how many origins print it', () => {
    for (const { source, origins } of rows) expect(source).toContain(`(${words[origins]})`);
  });
  test('what no document prints is never called read in print', () => {
    for (const { origins, known, source } of rows)
      expect(known === 'seen' && origins === 0, source).toBe(false);
  });
});

test('a working of a joint shows the origins of what went into it', () => {
  const sourceOf = (id: string) => jointWorkings(barInStem).find((line) => line.id === id)?.working?.source;
  expect(sourceOf('preload')).toMatch(/K: .*\(two origins or more\)\. w: .*\(one origin\)/);
  expect(sourceOf('slip')).toMatch(/µ: .*\(two origins or more\)/);
  expect(sourceOf('margin')).toMatch(/\(one origin\)/);
  expect(sourceOf('settling')).toMatch(/\(no printed origin\)/);
});

import { expect, test } from 'vitest';
import { field, loud, type SheetLine, sheetText } from '../../../src/documents/sheetLine.ts';
import { sheetLines } from '../../../src/documents/sheetLines.ts';
import { riddenText, sheetOfRelease } from '../../../src/documents/sheetOfRelease.ts';
import { cautions } from '../../../src/standards/checks/releaseRules.ts';
import { done } from '../logbook/openTestLogbook.ts';
import { typed } from '../words/history/everyEntry.ts';
import { builtBike, circumstances, NINE } from './builtBike.ts';

const HOUR_MS = 3_600_000;
const textsOf = (lines: SheetLine[], label: string) =>
  lines.flatMap((line) => (line.is === 'field' && line.label === label ? [line.text] : []));

test('a sheet of an earlier instant knows nothing of what came later', async () => {
  const { asBuilt, logbook } = await builtBike();
  const early = sheetLines(await asBuilt(NINE + HOUR_MS / 2), circumstances);
  expect(textsOf(early, 'Work done')).toEqual(['no torque on record']);
  expect(textsOf(early, 'State')).toEqual(['not released']);
  expect(textsOf(early, 'Use so far')).toEqual(['0 rides, 0 km, 0 minutes']);
  expect(sheetLines(await asBuilt(NINE - HOUR_MS), circumstances)).toEqual([]);
  logbook.close();
});

// Hours and minutes as a clock counts them.
test.each([
  [{ count: 2, km: 12.5, minutes: 90 }, '2 rides, 12.5 km, 1 hour and 30 minutes'],
  [{ count: 1, km: 3, minutes: 60 }, '1 ride, 3 km, 1 hour'],
  [{ count: 15, km: 238, minutes: 1600 }, '15 rides, 238 km, 26 hours and 40 minutes'],
])('total time %o reads %s', (ridden, words) => expect(riddenText(ridden)).toBe(words));

test('what was open at a release stands out where it keeps the bike from riding, as it does today', async () => {
  const { asBuilt, logbook, clock } = await builtBike();
  const built = await asBuilt(clock.nowMs);
  const [release] = built.releases;
  if (!release) throw new Error('no release');
  const open = [
    { what: 'recheck-overdue' as const, words: 'a re-check', blocks: false },
    { what: 'defect' as const, words: 'a crack', blocks: true },
  ];
  const lines = sheetOfRelease({ ...release, open }, built, 'UTC');
  expect(lines.slice(-2)).toEqual([field('Open then', 'a re-check'), loud('Open then', 'a crack')]);
  logbook.close();
});

test('what keeps the bike from riding and what is due stand before what only comes', async () => {
  const { asBuilt, logbook, clock } = await builtBike();
  const built = await asBuilt(clock.nowMs);
  const [recheck] = built.rechecks;
  if (!recheck) throw new Error('no re-check');
  const lines = sheetLines(
    {
      ...built,
      open: [
        { what: 'step-open', words: 'a step', blocks: false },
        { what: 'defect', words: 'a crack', blocks: true },
      ],
      rechecks: [
        { ...recheck, title: 'Later', dueAtMs: built.atMs + 1 },
        { ...recheck, title: 'Now', dueAtMs: built.atMs },
      ],
    },
    circumstances,
  );
  const at = (text: string) => lines.findIndex((line) => line.text.startsWith(text));
  expect(at('a crack')).toBeLessThan(at('a step'));
  expect(at('Now: due')).toBeLessThan(at('Later: '));
  logbook.close();
});

test('a cure stands on the sheet as its wait stands: longer for the cold, or cut short', async () => {
  const { asBuilt, logbook, clock } = await builtBike();
  const locker = { grade: 'medium', surface: 'steel', primer: false, waitMs: 24 * HOUR_MS };
  const put = await done(logbook, { type: 'apply-locker', jointId: 'j1', ...locker });
  const [waitId = ''] = put.map((entry) => (entry.type === 'locker-applied' ? entry.waitId : ''));
  await done(logbook, { type: 'change-wait', waitId, waitMs: 48 * HOUR_MS, why: 'cold in here' });
  const lockerAt = async (atMs: number) => textsOf(sheetLines(await asBuilt(atMs), circumstances), 'Locker');
  const fromMs = clock.nowMs;
  expect(await lockerAt(fromMs + 30 * HOUR_MS)).toEqual([expect.stringMatching(/curing until 5 May 2026/)]);
  expect(await lockerAt(fromMs + 49 * HOUR_MS)).toEqual([expect.stringMatching(/cured since 5 May 2026/)]);
  clock.nowMs += 2 * HOUR_MS;
  await done(logbook, { type: 'end-wait', waitId, outcome: 'cut-short' });
  expect(await lockerAt(fromMs + 49 * HOUR_MS)).toEqual([
    expect.stringMatching(/cure ended early 3 May 2026/),
  ]);
  logbook.close();
});

test('target, applied and found stand as three values, each as it was typed', async () => {
  const { asBuilt, logbook, clock } = await builtBike();
  await done(logbook, {
    type: 'find-torque',
    jointId: 'j1',
    outcome: 'moved',
    way: 'tightening',
    movedAt: typed('4,1', 'N.m'),
  });
  const lines = sheetLines(await asBuilt(clock.nowMs), circumstances);
  expect(textsOf(lines, 'Target')[0]).toContain('5 N·m, printed on the part');
  expect(textsOf(lines, 'Work done')[0]).toContain('5,2 N·m');
  expect(textsOf(lines, 'Found')[0]).toContain('moved before the target was reached at 4,1 N·m');
  // 43.11: later work ends what an earlier signature said.
  expect(textsOf(lines, 'State')[0]).toMatch(/^release revoked on 3 May 2026/);
  logbook.close();
});

test('a part that has left is not on the sheet, and what it was joined to stands as taken apart only while all of it is here', async () => {
  const { asBuilt, logbook, clock } = await builtBike();
  await done(logbook, { type: 'take-joint-apart', jointId: 'j1', why: 'paint' });
  const apart = sheetLines(await asBuilt(clock.nowMs), circumstances);
  expect(textsOf(apart, 'Stem on steerer')).toEqual(['paint']);
  clock.nowMs += HOUR_MS;
  await done(logbook, { type: 'move-part', partId: 'p2', to: { on: 'shelf' } });
  const moved = sheetLines(await asBuilt(clock.nowMs), circumstances);
  const named = moved.flatMap((line) =>
    line.is === 'heading' ? line.text : line.is === 'field' ? line.label : [],
  );
  expect(named).toContain('Frame (P-001)');
  expect(named.filter((text) => text.includes('Stem'))).toEqual([]);
  logbook.close();
});

test('the caution stands on the sheet once, and the plain text holds every line', async () => {
  const { asBuilt, logbook, clock } = await builtBike();
  const lines = sheetLines(await asBuilt(clock.nowMs), circumstances);
  expect(lines.filter(({ is }) => is === 'caution')).toEqual([{ is: 'caution', text: cautions.release }]);
  const text = sheetText(lines);
  for (const line of lines) expect(text).toContain(line.text);
  expect(text.split(cautions.release)).toHaveLength(2);
  expect(text).not.toMatch(/undefined|NaN|\[object/);
  logbook.close();
});

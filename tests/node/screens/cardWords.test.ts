import { describe, expect, test } from 'vitest';
import { asItReads } from '../../../src/journal/effective.ts';
import type { Entry } from '../../../src/journal/entries.ts';
import type { BikeRow, JointRow } from '../../../src/journal/rows.ts';
import type { HistoryLine } from '../../../src/logbook.ts';
import { torqueTimes } from '../../../src/practice/joint/torqueTimes.ts';
import { releaseState } from '../../../src/practice/release/releaseState.ts';
import { jointMark } from '../../../src/screens/joint/jointMark.ts';
import { lateText } from '../../../src/words/lateText.ts';
import { partLine } from '../../../src/words/partLine.ts';

const release = { releaseId: 'r2', atMs: 5, statement: 'ride', open: 1 } as const;
const revoked = { releaseId: 'r2', atMs: 9, entryId: 'e', because: 'torque-applied' } as const;

describe('where a release stands', () => {
  test.each<[string, Pick<BikeRow, 'release' | 'revoked'>, object]>([
    ['never', {}, { is: 'never' }],
    ['stands', { release }, { is: 'stands', atMs: 5, open: 1 }],
    ['revoked', { release, revoked }, { is: 'revoked', revokedAtMs: 9, why: 'a torque was logged since' }],
    ['an older one revoked', { release, revoked: { ...revoked, releaseId: 'r1' } }, { is: 'stands' }],
    ['withdrawn', { release: { ...release, withdrawn: 'cold feet' } }, { is: 'withdrawn', why: 'cold feet' }],
    [
      'a statement against riding',
      { release: { ...release, statement: 'not-to-ride' } },
      { is: 'not-to-ride' },
    ],
    [
      'revoked by an entry without words of its own',
      { release, revoked: { ...revoked, because: 'note-added' } },
      { why: 'work was logged since' },
    ],
  ])('%s', (_, bike, state) => {
    expect(releaseState({ ...bike, grave: [] })).toMatchObject(state);
  });
});

test('a problem with which it must not be ridden stands before everything that was signed', () => {
  const grave = [{ defectId: 'd', words: 'Crack in the fork' }];
  expect(releaseState({ grave })).toEqual({ is: 'problem', words: 'Crack in the fork', more: 0 });
  expect(releaseState({ release, grave })).toMatchObject({ is: 'problem' });
  expect(
    releaseState({ release, grave }, ['Crack in the fork', 'Worn grip, and its limit is over']),
  ).toMatchObject({ more: 1 });
  // A bike that is only being built is no bike with a problem.
  expect(releaseState({ grave: [] })).toEqual({ is: 'never' });
});

test.each([
  [60_000, '1 min late'],
  [5 * 3_600_000, '5 h 00 late'],
  [86_400_000 * 1.5, '1 d 12 h late'],
  [86_400_000 * 182.75, '182 days late'],
])('%i ms are told as %s', (lateMs, words) => {
  expect(lateText(lateMs)).toBe(words);
});

const joint = (about: Partial<JointRow>): JointRow => ({
  ...{
    key: 'joint/j',
    is: 'joint',
    jointId: 'j',
    bikeId: 'b',
    madeAtMs: 0,
    lastMs: 0,
    lastId: '',
    state: 'open',
  },
  ...{ appliedTimes: 0, moved: 0, name: 'Stem', kind: 'stem-steerer', partIds: [], between: [] },
  ...{ fasteners: [{ thread: 'M5', count: 2, hand: 'right' }], targets: [], matters: true },
  ...about,
});
const five = { value: 5.2, unit: 'N.m', typed: '5,2' } as const;

describe('the mark of a joint', () => {
  test.each<[string, Partial<JointRow>, object]>([
    ['open', {}, { state: 'open', word: 'No torque yet' }],
    ['hand-tight', { state: 'hand-tight' }, { state: 'open', word: 'Hand-tight only' }],
    ['apart', { state: 'apart' }, { state: 'void', word: 'Taken apart' }],
    [
      'torqued, as it was typed',
      {
        state: 'torqued',
        applied: { entryId: 'e', atMs: 0, applied: five, bolts: 2, passes: 1, marked: false },
      },
      { state: 'done', word: '5,2 N·m' },
    ],
    ['a tyre on its rim', { kind: 'bead', fasteners: [] }, { state: undefined, word: 'No torque needed' }],
    ['a bearing without a torque', { kind: 'bottom-bracket' }, { state: undefined }],
    [
      'a bearing with a torque asked for',
      { kind: 'bottom-bracket', targets: [{ source: 'makers-document', torque: five }] },
      { state: 'open' },
    ],
  ])('%s', (_, about, mark) => {
    expect(jointMark(joint(about))).toMatchObject(mark);
  });
});

describe('the torques of a joint over time', () => {
  const head = { v: 1, writtenAtMs: 0, zone: 'UTC', jointId: 'j', bikeId: 'b', matters: true } as const;
  const line = (entry: object, fixes: HistoryLine['fixes'] = []): HistoryLine => ({
    seq: 1,
    entry: entry as Entry,
    now: asItReads(entry as Entry, fixes),
    fixes,
  });
  const applied = (id: string, happenedAtMs: number, value: number) => ({
    ...head,
    ...{ type: 'torque-applied', id, happenedAtMs, bolts: 1, passes: 1, entered: 'tap' },
    applied: { value, unit: 'N.m', typed: String(value) },
  });
  const met = {
    ...head,
    ...{ type: 'torque-found', id: 'f', happenedAtMs: 2, outcome: 'moved', way: 'tightening' },
    movedAt: { value: 44, unit: '[in_i].[lbf_av]', typed: '44' },
  };
  const fix = (becomes: Record<string, unknown> | null) => [
    { by: 'x', atMs: 9, reason: 'slip', undo: false, becomes },
  ];

  test('come oldest first and in one unit: 44 in·lbf are 4.97 N·m (exact by definition)', () => {
    expect(torqueTimes([line(applied('b', 3, 6)), line(met), line(applied('a', 1, 5))], 'N.m')).toEqual([
      { atMs: 1, value: 5, what: 'applied' },
      { atMs: 2, value: 4.97, what: 'found' },
      { atMs: 3, value: 6, what: 'applied' },
    ]);
  });

  test('one struck out is left out, one corrected reads as corrected', () => {
    const struck = line(applied('a', 1, 5), fix(null));
    const corrected = line(applied('b', 3, 60), fix({ applied: { value: 6, unit: 'N.m', typed: '6' } }));
    expect(struck.now).toBeUndefined();
    expect(torqueTimes([struck, corrected], 'N.m')).toEqual([{ atMs: 3, value: 6, what: 'applied' }]);
  });

  test('a re-check that met no movement has no figure', () => {
    expect(torqueTimes([line({ ...met, outcome: 'held', movedAt: undefined })], 'N.m')).toEqual([]);
  });
});

test.each([
  [[], 'F-004, stem'],
  [[1], 'F-004, stem, changed once'],
  [[1, 2], 'F-004, stem, changed 2 times'],
])('a part with changes %j', (changes, words) => {
  expect(partLine({ label: 'F-004', kind: 'stem', changes: changes as never })).toBe(words);
});

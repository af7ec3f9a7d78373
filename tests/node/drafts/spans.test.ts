import { describe, expect, test } from 'vitest';
import {
  draftOfSpan,
  intervalWords,
  ownSpan,
  readSpan,
  type Schedule,
  scheduleKeys,
  scheduleWords,
  tableSpan,
  withSpan,
} from '../../../src/drafts/spans.ts';
import { shippedOf } from '../../../src/screens/settings/shipped.ts';
import { recheckRows, recheckSchedule } from '../../../src/standards/checks/recheckSchedule.ts';

const rotorPull = recheckRows('rotor', false).find(({ instruction }) => instruction === 'retorque')!;

describe('own spans', () => {
  test('a pull and a look at the mark share their figures, whichever the joint can bear', () => {
    expect(scheduleKeys({ jointKind: 'rotor', instruction: 'retorque' }, 0)).toEqual([
      'rotor:retorque:0',
      'rotor:look-at-mark:0',
    ]);
    const cured = recheckRows('rotor', true).find(({ instruction }) => instruction === 'look-at-mark')!;
    const schedule = withSpan(undefined, rotorPull, 0, { days: 14 });
    expect(schedule[`rotor:${cured.instruction}:0`]).toEqual({ days: 14 });
  });

  test('given up, they leave no trace, and others stay', () => {
    const other: Schedule = { 'pedal:retorque:0': { rides: 2 } };
    const set = withSpan(other, rotorPull, 1, { km: 80 });
    expect(ownSpan(set, rotorPull, 1)).toEqual({ km: 80 });
    expect(withSpan(set, rotorPull, 1, 'table')).toEqual(other);
  });

  test.each([
    [
      { rides: '1', km: '', days: '14' },
      { rides: 1, days: 14 },
    ],
    [{ rides: '', km: '12,5', days: '' }, { km: 12.5 }],
    [{ rides: '0', km: '', days: '' }, { rides: 0 }],
    [{ rides: '', km: ' ', days: '' }, 'table'],
    [{ rides: '1,5', km: '', days: '' }, { wrong: 'rides' }],
    [{ rides: '', km: '0', days: '' }, { wrong: 'km' }],
    [{ rides: '', km: '', days: 'soon' }, { wrong: 'days' }],
  ])('%j reads as %j', (draft, read) => {
    expect(readSpan({ ...draft, ended: false })).toEqual(read);
  });

  test('nothing more is kept as such, comes back as such, and is told once', () => {
    expect(readSpan({ rides: '3', km: '', days: '', ended: true })).toBeNull();
    const ended = withSpan(undefined, rotorPull, 1, null);
    expect(ended).toEqual({ 'rotor:retorque:1': null, 'rotor:look-at-mark:1': null });
    expect(draftOfSpan(ownSpan(ended, rotorPull, 1))).toMatchObject({ ended: true });
    expect(draftOfSpan(ownSpan(ended, rotorPull, 2))).toMatchObject({ ended: false });
    expect(scheduleWords(ended, rotorPull)).toBe('1 ride or 10 km or 30 days; then once only');
    expect(withSpan(ended, rotorPull, 1, 'table')).toEqual({});
  });

  test.each([
    [{ rides: 1, days: 30 }, '1 ride or 30 days'],
    [{ rides: 0 }, 'before the next ride'],
    [{ km: 500, days: 1 }, '500 km or 1 day'],
    [undefined, 'Once only'],
  ])('%j is told as %s', (span, words) => {
    expect(intervalWords(span)).toBe(words);
  });

  test('every line of the table can be told for its first turn', () => {
    for (const row of recheckSchedule) expect(intervalWords(tableSpan(row, 0))).not.toMatch(/Nothing/);
  });
});

describe('the version on this phone', () => {
  test.each([
    ['pinchbolt:1760000000000:0a1b2c3d4e5f', { version: '0a1b2c3d4e5f', sinceMs: 1760000000000 }],
    ['another-app:1:0a', undefined],
    ['pinchbolt:soon:0a', undefined],
  ])('%s', (name, shipped) => {
    expect(shippedOf(name)).toEqual(shipped);
  });
});

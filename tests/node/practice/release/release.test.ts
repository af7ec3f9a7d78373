import { describe, expect, test } from 'vitest';
import type { OpenItem } from '../../../../src/journal/entries.ts';
import { answeredCount, answersOf, confirmedItems } from '../../../../src/practice/release/checkAnswers.ts';
import { defectKind } from '../../../../src/practice/release/defectKind.ts';
import { inReadingOrder } from '../../../../src/practice/release/openOrder.ts';
import { groupMark } from '../../../../src/screens/release/groupMark.ts';
import { openHref } from '../../../../src/screens/release/openHref.ts';
import { neverDeferred } from '../../../../src/standards/checks/releaseRules.ts';
import { rideCheck } from '../../../../src/standards/checks/rideCheck.ts';
import { statementText } from '../../../../src/words/statements.ts';

const item = (what: OpenItem['what'], blocks: boolean, jointId?: string): OpenItem => ({
  what,
  words: `${what}`,
  blocks,
  ...(jointId ? { jointId } : {}),
});

describe('open items as they are read', () => {
  test('what keeps the bike off the road stands above everything else, whatever its kind', () => {
    const items = [
      item('recheck-overdue', false),
      item('check-open', true),
      item('step-skipped', false),
      item('unsealed', false),
      item('uncured', true),
      item('no-torque-source', false),
      item('hand-tight', true),
    ];
    expect(inReadingOrder(items).map(({ what }) => what)).toEqual([
      'hand-tight',
      'uncured',
      'check-open',
      'no-torque-source',
      'unsealed',
      'step-skipped',
      'recheck-overdue',
    ]);
  });

  test.each([
    [item('hand-tight', true, 'j1'), '#/joint/j1'],
    [item('unsealed', false, 'j1'), '#/seal/j1'],
    [item('recheck-overdue', false, 'j1'), '#/rechecks/b1'],
    [item('step-open', false), '#/plan/b1'],
    [item('defect', true), '#/bike/b1'],
    [item('fit-finding', false), '#/fit/b1'],
    [item('check-open', true), undefined],
  ])('$0.what leads to %s', (open, href) => {
    expect(openHref(open, 'b1')).toBe(href);
  });
});

describe('a group of the check before riding', () => {
  const [group] = rideCheck;
  if (!group) throw new Error('the check has no groups');
  const all = Object.fromEntries(group.items.map(({ id }) => [id, { ok: true as const }]));
  const [first] = group.items;
  const found = { ...all, [first?.id ?? '']: { ok: false as const, words: 'loose' } };

  test('is answered when every item is', () => {
    expect(answeredCount(group, {})).toBe(0);
    expect(answeredCount(group, all)).toBe(group.items.length);
  });

  test('is confirmed with its answers in its own order, and read back as they were', () => {
    const items = confirmedItems(group, found);
    expect(items.map(({ itemId }) => itemId)).toEqual(group.items.map(({ id }) => id));
    expect(answersOf({ atMs: 0, items })).toEqual(found);
  });

  test('a finding stays louder than a confirmation', () => {
    const at = () => 'today';
    expect(groupMark(undefined, at).state).toBe('open');
    expect(groupMark({ atMs: 0, items: confirmedItems(group, all) }, at)).toEqual({
      state: 'done',
      word: 'Confirmed today',
    });
    expect(groupMark({ atMs: 0, items: confirmedItems(group, found) }, at)).toEqual({
      state: 'held',
      word: '1 finding',
    });
  });
});

test('a statement of an older version is shown as it was written', () => {
  expect(statementText({ statement: 'ride' })).toBe('Cleared to ride');
  expect(statementText({ statement: 'of another age' })).toBe('of another age');
});

describe('a finding written down as a defect', () => {
  // Common practice, no source: what a thing is called follows from what was looked at.
  test.each([
    [{ id: 'walk-brakes', area: 'brakes', neverDefer: true }, 'brake'],
    [{ id: 'rear-rim', area: 'wheels', neverDefer: true }, 'tyre-or-rim'],
    [{ id: 'fork', area: 'steering', neverDefer: true }, 'crack'],
    [{ id: 'stem', area: 'steering', neverDefer: true }, 'steering'],
    [{ id: 'crank-arms', area: 'drive', neverDefer: true }, 'crank-or-pedal'],
    [{ id: 'chain', area: 'drive', neverDefer: false }, 'other'],
    [{ id: 'rack-and-guards', area: 'other', neverDefer: true }, 'other'],
    [{ id: 'rear-hub', area: 'wheels', neverDefer: true }, 'other'],
  ] as const)('%o is a defect of the kind %s', (item, kind) => expect(defectKind(item)).toBe(kind));

  test('every kind it gives is one of those that are never put off, or none of them', () => {
    const known = ['other', ...neverDeferred.map(({ id }) => id)];
    for (const { items } of rideCheck) for (const one of items) expect(known).toContain(defectKind(one));
  });

  test('each item it singles out is an item of the check', () => {
    const ids = rideCheck.flatMap(({ items }) => items.map(({ id }) => id));
    for (const id of ['front-axle', 'rear-spokes', 'front-tyre', 'fork', 'head-tube', 'frame', 'dropouts'])
      expect(ids).toContain(id);
  });
});

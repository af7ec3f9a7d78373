import { expect, test } from 'vitest';
import type { DueLine } from '../../../src/logbook.ts';
import { stillDue, withAnew } from '../../../src/reminders/unseen.ts';

const line = (id: string, dueAtMs = 1000): DueLine => ({
  ...{ key: `wait/${id}`, is: 'wait', id, bikeId: 'b1', bikeName: 'Magpie', jointId: 'j1', kind: 'cure' },
  ...{ title: 'Rotor on front hub', dueAtMs, startedAtMs: 0 },
});

test.each<[string, DueLine[], DueLine[], DueLine[]]>([
  ['nothing', [], [], []],
  ['the first', [], [line('w1')], [line('w1')]],
  ['another stands before the unseen one', [line('w1')], [line('w2')], [line('w2'), line('w1')]],
  [
    'the same one due again stands once, with its new time',
    [line('w1')],
    [line('w1', 2000)],
    [line('w1', 2000)],
  ],
])('what fell due anew: %s', (_name, unseen, anew, told) => expect(withAnew(unseen, anew)).toEqual(told));

test.each<[string, DueLine[], DueLine[], DueLine[]]>([
  ['nothing', [], [], []],
  ['what is settled is no longer told', [line('w1'), line('w2')], [line('w2')], [line('w2')]],
  ['what was due before is not told again', [line('w1')], [line('w1'), line('w2')], [line('w1')]],
])('what is still due: %s', (_name, unseen, overdue, left) =>
  expect(stillDue(unseen, overdue)).toEqual(left),
);

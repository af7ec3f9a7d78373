import { describe, expect, test } from 'vitest';
import type { JointRow, RecheckRow, WaitRow } from '../../../src/journal/rows.ts';
import { checkTitle, titleToday } from '../../../src/journal/titleToday.ts';
import { nm } from '../logbook/aBike.ts';

const joint = (about: Partial<JointRow>) =>
  ({ name: 'Rear rotor', state: 'torqued', targets: [], ...about }) as JointRow;
const wait = (waitKind: WaitRow['waitKind'], title: string) => ({ is: 'wait', waitKind, title }) as WaitRow;
const recheck = (kind: RecheckRow['kind'], title: string) => ({ is: 'recheck', kind, title }) as RecheckRow;

test('checkTitle', () => expect(checkTitle('Stem', 'Headset play')).toBe('Stem: headset play'));

describe('a wait', () => {
  test.each<[WaitRow['waitKind'], string, string]>([
    // The first locker entries held the grade alone.
    ['cure', 'medium', 'Rear rotor'],
    ['seal', 'Back bead', 'Rear rotor'],
    ['adhesive', 'Glue under the left grip', 'Glue under the left grip'],
    ['other', 'Frame lies in the sun', 'Frame lies in the sun'],
  ])('%s, set as “%s”, reads “%s”', (kind, set, reads) => {
    expect(titleToday(wait(kind, set), joint({})).title).toBe(reads);
  });
});

describe('a re-check', () => {
  const figure = { targets: [{ source: 'makers-document' as const, torque: nm(5) }] };
  const locked = { atMs: 0, grade: 'medium', waitId: 'w1' } as JointRow['locked'] & object;

  test.each<[string, Partial<JointRow>, string]>([
    ['Rotor: pull to the target', figure, 'Rear rotor: torque check'],
    ['Rotor: pull to the target', { state: 'hand-tight' }, 'Rear rotor: hand check, no torque figure'],
    ['Rotor: tight by hand? No figure is known', figure, 'Rear rotor: torque check'],
    [
      'Rotor: pull to the target, with a tool that shows right',
      { applied: {} as JointRow['applied'] & object },
      'Rear rotor: pull to what was applied, with a tool that shows right',
    ],
    ['Look at the tab washers', figure, 'Look at the tab washers'],
  ])('by torque, set as “%s”, with %j reads “%s”', (set, about, reads) => {
    expect(titleToday(recheck('retorque', set), joint(about)).title).toBe(reads);
  });

  test('[R3] set while the joint was dry, it asks for no pull once threadlocker holds it', () => {
    const set = recheck('retorque', 'Rotor: pull to the target');
    expect(titleToday(set, joint({ ...figure, locked })).title).toBe(
      'Rear rotor: check paint mark, do not turn',
    );
  });

  test('of another kind it takes the name of today and asks what it asked', () => {
    const set = recheck('headset', 'Front: upper: headset play');
    expect(titleToday(set, joint({ name: 'Headset' })).title).toBe('Headset: headset play');
    expect(titleToday(recheck('inspect', 'Fork: cut at the crown'), joint({})).title).toBe(
      'Fork: cut at the crown',
    );
  });

  test('of no joint it stays as it is', () => {
    const set = recheck('inspect', 'Fork: cut at the crown');
    expect(titleToday(set, undefined)).toBe(set);
  });
});

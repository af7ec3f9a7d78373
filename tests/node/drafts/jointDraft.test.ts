import { describe, expect, test } from 'vitest';
import {
  changedJoint,
  draftOf,
  emptyJoint,
  firstFasteners,
  type JointDraft,
  readJoint,
  type TargetDraft,
  toggleBetween,
  withKind,
  withThread,
} from '../../../src/drafts/jointDraft.ts';
import { likelyFirst } from '../../../src/practice/joint/likelyParts.ts';

const target: TargetDraft = {
  source: 'printed-on-the-part',
  ...{ typed: '5', upTo: '', unit: 'N.m', partId: '', reference: '' },
};
const stem: JointDraft = { ...withKind(emptyJoint, 'stem-steerer'), partIds: ['stem', 'fork'] };

describe('hands of threads', () => {
  test.each([
    // Scope of ISO 6696 and the pedal threads of a workshop thread list; the Italian cup from a bottom bracket thread page.
    ['1.37-24', 'drive', 'left'],
    ['1.37-24', 'non-drive', 'right'],
    ['M36-24', 'drive', 'right'],
    ['9/16-20', 'non-drive', 'left'],
    ['9/16-20', 'drive', 'right'],
  ] as const)('%s on the %s side tightens %s (ISO 6696 scope, thread pages)', (thread, side, hand) => {
    const row = { thread: '', count: '1', hand: 'right', words: '', side } as const;
    expect(withThread(row, thread).hand).toBe(hand);
  });

  test('before a thread is named, the left pedal is left-handed (common practice, no source)', () => {
    expect(firstFasteners('pedal').map(({ side, hand }) => [side, hand])).toEqual([
      ['drive', 'right'],
      ['non-drive', 'left'],
    ]);
  });

  // Common practice and a magazine on fixed hubs: backwards pedalling must tighten it, on either side.
  test('the lockring of a fixed hub is left-handed, and right-handed on one driven from the left', () => {
    const [lockring] = firstFasteners('lockring');
    expect(lockring).toMatchObject({ hand: 'left', side: 'drive' });
    for (const thread of ['1.29-24', '1.32-24']) {
      expect(withThread(lockring!, thread).hand).toBe('left');
      expect(withThread({ ...lockring!, side: 'non-drive' }, thread).hand).toBe('right');
    }
  });

  test('a thread of no table leaves the hand as it was', () => {
    const row = { thread: '', count: '1', hand: 'left', words: '', side: 'drive' } as const;
    expect(withThread(row, '35 × 1.1')).toMatchObject({ thread: '35 × 1.1', hand: 'left' });
  });
});

describe('choosing a kind', () => {
  test('names the joint and counts its screws: six on a rotor (common practice, no source)', () => {
    expect(withKind(emptyJoint, 'rotor')).toMatchObject({
      name: 'Rotor on hub',
      fasteners: [{ count: '6', hand: 'right' }],
    });
  });

  test('what the person wrote stays when the kind changes', () => {
    const own: JointDraft = {
      ...withKind(emptyJoint, 'rotor'),
      name: 'Front rotor',
      ownName: true,
      fasteners: [{ thread: 'M5', count: '5', hand: 'right', words: '' }],
    };
    expect(withKind(own, 'caliper')).toMatchObject({ name: 'Front rotor', fasteners: [{ count: '5' }] });
  });
});

describe('what goes between', () => {
  test('dry and grease exclude each other, a shim does not', () => {
    const shim = { kind: 'shim', partId: 's' } as const;
    expect(toggleBetween([{ kind: 'dry' }, shim], { kind: 'grease' })).toEqual([shim, { kind: 'grease' }]);
    expect(toggleBetween([{ kind: 'grease' }, shim], { kind: 'dry' })).toEqual([shim, { kind: 'dry' }]);
  });

  test('a second tap takes it away again, and only the one meant', () => {
    const two = [
      { kind: 'shim', partId: 'a' },
      { kind: 'shim', partId: 'b' },
    ] as const;
    expect(toggleBetween(two, { kind: 'shim', partId: 'a' })).toEqual([{ kind: 'shim', partId: 'b' }]);
  });
});

describe('reading the form', () => {
  test('a decimal comma is taken, and the characters are kept', () => {
    const read = readJoint({ ...stem, targets: [{ ...target, typed: '5,2', upTo: '6,5' }] });
    expect(read).toMatchObject({
      ok: true,
      about: {
        targets: [{ torque: { value: 5.2, typed: '5,2', unit: 'N.m' }, upTo: { value: 6.5, typed: '6,5' } }],
      },
    });
  });

  test.each([
    ['no digits', { typed: 'five' }],
    ['two separators', { typed: '1,234.5' }],
    ['a pressure', { typed: '5 bar' }],
    ['a range upside down', { typed: '6', upTo: '5' }],
    ['a range without width', { typed: '6', upTo: '6' }],
  ])('a target with %s is marked, and nothing is taken', (_, change) => {
    const read = readJoint({ ...stem, targets: [target, { ...target, ...change }] });
    expect(read.ok).toBe(false);
    expect(!read.ok && Object.keys(read.trouble.targets)).toEqual(['1']);
  });

  test('a range is judged in one unit: 5 N·m up to 50 in·lbf typed with its unit (1 in·lbf = 0.113 N·m, exact by definition)', () => {
    const read = readJoint({ ...stem, targets: [{ ...target, typed: '5', upTo: '50 in lbf' }] });
    expect(read.ok).toBe(true);
    expect(readJoint({ ...stem, targets: [{ ...target, typed: '6', upTo: '50 in lbf' }] }).ok).toBe(false);
  });

  test.each(['0', '', '2,5', 'four', '-1'])('%s fasteners are not a count', (count) => {
    const read = readJoint({ ...stem, fasteners: [{ thread: 'M5', count, hand: 'right', words: '' }] });
    expect(!read.ok && Object.keys(read.trouble.fasteners)).toEqual(['0']);
  });

  test('no source found is a target without a figure', () => {
    const read = readJoint({ ...stem, targets: [{ ...target, source: 'none', typed: '' }] });
    expect(read.ok && read.about.targets).toEqual([{ source: 'none' }]);
  });

  test('nothing chosen yet', () => {
    expect(readJoint(emptyJoint)).toMatchObject({
      ok: false,
      trouble: { kind: 'Choose what kind of joint it is.' },
    });
  });

  test('laying a joint out and reading it again changes nothing', () => {
    const full: JointDraft = {
      ...stem,
      between: [{ kind: 'shim', partId: 's' }, { kind: 'grease' }],
      targets: [
        { ...target, typed: '44', unit: '[in_i].[lbf_av]', partId: 'stem', reference: 'page 3' },
        target,
      ],
      note: 'by the mark',
    };
    const first = readJoint(full);
    if (!first.ok) throw new Error('the form should read');
    const again = readJoint(draftOf({ ...first.about, matters: true }));
    expect(again).toEqual(first);
  });
});

describe('parts that usually meet', () => {
  const parts = [
    { partId: '1', kind: 'saddle' },
    { partId: '2', kind: 'stem' },
    { partId: '3', kind: 'fork' },
  ];

  test('stand first; one chosen against custom stands with them', () => {
    const { likely, others } = likelyFirst(parts, 'stem-steerer', ['1']);
    expect(likely.map(({ partId }) => partId)).toEqual(['1', '2', '3']);
    expect(others).toEqual([]);
  });

  test('with none of them on the bike, every part is offered', () => {
    expect(likelyFirst(parts, 'rotor', []).likely).toHaveLength(3);
  });
});

test('editing a joint sends only what was touched, also where a stored figure reads back otherwise', () => {
  const read = readJoint({ ...stem, targets: [target], note: 'left as found' });
  if (!read.ok) throw new Error('the joint cannot be read');
  // An older version kept the name with a blank behind it.
  const joint = { ...read.about, name: 'Stem on steerer ', matters: true };
  expect(changedJoint(joint, read.about)).toEqual({});
  expect(changedJoint(joint, { ...read.about, note: 'greased' })).toEqual({ note: 'greased' });
  expect(changedJoint(joint, { ...read.about, note: '' })).toEqual({ cleared: ['note'] });
});

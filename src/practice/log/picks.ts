import type { PartKind } from '../../fit/partKinds.ts';
import type { Id } from '../../journal/entries.ts';
import { isBonded } from '../../planning/unsetBonds.ts';
import type { JointKind } from '../../standards/jointKinds.ts';
import { jointKindRow, wantsTorque } from '../../standards/jointKinds.ts';
import type { LineKind } from './lineDraft.ts';
import type { AtHand } from './named.ts';

/** Something to tap in place of typing where a line belongs. */
export interface Pick {
  words: string;
  /** Of a joint or part that the bike has; empty for one that is made with the line. */
  id: Id;
}

/** What is tightened most often, and where threadlocker usually goes. Common practice, no source. */
const tightened: readonly JointKind[] = [
  ...([
    'stem-steerer',
    'bar-clamp',
    'seatpost',
    'saddle-rails',
    'crank',
    'pedal',
    'rotor',
    'caliper',
  ] as const),
  ...([
    'front-axle',
    'rear-axle',
    'thru-axle',
    'lever-clamp',
    'chainring',
    'crank-pinch',
    'brake-mount',
  ] as const),
];
const locked: readonly JointKind[] = [
  ...(['rotor', 'caliper', 'brake-mount', 'chainring', 'mudguard', 'rack', 'saddle-rails', 'pedal'] as const),
];

/** Parts that are cut or filed, and parts that come to a bike, most often first. Common practice, no source. */
const cutParts: readonly { kind: PartKind; words: string }[] = [
  { kind: 'frame', words: 'Frame' },
  { kind: 'fork', words: 'Fork' },
  { kind: 'bar', words: 'Bar' },
  { kind: 'seatpost', words: 'Seatpost' },
  { kind: 'stem', words: 'Stem' },
  { kind: 'cranks', words: 'Cranks' },
  { kind: 'rear-hub', words: 'Rear hub' },
];
const cutRank = (kind: string): number => {
  const at = cutParts.findIndex((one) => one.kind === kind);
  return at < 0 ? cutParts.length : at;
};
const newParts = [
  'Saddle',
  'Stem',
  'Bar',
  'Seatpost',
  'Fork',
  'Cranks',
  'Pedals',
  'Front hub',
  'Rear hub',
  'Tyre',
];

/** Where on a part it is usually changed. Common practice, no source. */
const spots: readonly (readonly [part: RegExp, spots: readonly string[]])[] = [
  [/frame/i, ['Dropout', 'Head tube', 'Seat tube', 'BB shell', 'Brake mount', 'Bridge']],
  [/fork/i, ['Steerer', 'Dropout', 'Crown', 'Brake mount']],
  [/bar/i, ['Ends', 'Clamp']],
  [/post/i, ['Lower end', 'Tube']],
  [/stem/i, ['Steerer clamp', 'Bar clamp', 'Quill']],
  [/crank|ring/i, ['Spider', 'Arm', 'Bolt circle']],
  [/hub|axle/i, ['Axle end', 'Axle flats', 'Flange']],
  [/rim/i, ['Valve hole', 'Brake track']],
];

/** @example spotsOn('Frame')[0] //=> 'Dropout' */
export const spotsOn = (part: string): readonly string[] =>
  spots.find(([pattern]) => pattern.test(part))?.[1] ?? ['End', 'Edge', 'Hole'];

/** What usually goes wrong, as a word to tap. */
export const usualProblems = [
  'Came loose',
  'Cracked',
  'Bent',
  'Slips',
  'Creaks',
  'Rubs',
  'Leaks',
  'Worn',
] as const;

/**
 * What can be tapped as the place of a line: what the bike has first, then what it has not and is usual.
 * @param typed what was typed so far; only what has it in its name stays
 * @example picksFor('torque', { joints: [], parts: [], steps: [], tools: [] }, 'stem')[0] //=> { words: 'Stem on steerer', id: '' }
 */
export function picksFor(kind: LineKind, { joints, parts }: AtHand, typed: string): Pick[] {
  const together = joints.filter(({ state }) => state !== 'apart');
  const newest = together.toSorted((a, b) => b.lastMs - a.lastMs);
  const has = new Set(together.map(({ kind: known }) => known));
  const missing = (kinds: readonly JointKind[]): Pick[] =>
    kinds.filter((one) => !has.has(one)).map((one) => ({ words: jointKindRow(one).label, id: '' }));
  const ofJoints = (fits: (joint: AtHand['joints'][number]) => boolean): Pick[] =>
    newest.filter(fits).map(({ jointId, name }) => ({ words: name, id: jointId }));
  const ofParts = (some: AtHand['parts']) =>
    some.map(({ partId, name }): Pick => ({ words: name, id: partId }));
  const fresh = (words: readonly string[]): Pick[] => words.map((one) => ({ words: one, id: '' }));
  const all = {
    torque: () => [...ofJoints(wantsTorque), ...missing(tightened)],
    locker: () => [
      ...ofJoints((joint) => locked.includes(joint.kind) || isBonded(joint)),
      ...missing(locked),
      ...ofJoints((joint) => !locked.includes(joint.kind) && !isBonded(joint) && wantsTorque(joint)),
    ],
    tyre: () => {
      const beads = ofJoints((joint) => joint.kind === 'bead');
      return beads.length > 1 ? beads : [...beads, ...fresh(['Rear tyre', 'Front tyre'])];
    },
    cut: () => [
      ...ofParts(parts.toSorted((a, b) => cutRank(a.kind) - cutRank(b.kind))),
      ...fresh(
        cutParts.filter((one) => !parts.some((part) => part.kind === one.kind)).map(({ words }) => words),
      ),
    ],
    part: () => fresh(newParts),
    problem: () => [...ofJoints(() => true), ...ofParts(parts)],
    ride: () => [],
    note: () => [...ofJoints(() => true), ...ofParts(parts)],
  }[kind]();
  const wanted = typed.trim().toLowerCase();
  const seen = new Set<string>();
  return all.filter(({ words }) => {
    const key = words.toLowerCase();
    if (seen.has(key) || !key.includes(wanted)) return false;
    seen.add(key);
    return true;
  });
}

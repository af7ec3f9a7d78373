import type { JointKind } from './jointKinds.ts';
import type { Sourced } from './known.ts';

/** What is to be done at a joint beside putting it together and tightening it. Stored in the journal: never renamed. */
export type WorkId =
  | 'tension'
  | 'true'
  | 'dish'
  | 'play'
  | 'turns'
  | 'count'
  | 'slack'
  | 'bleed'
  | 'cable'
  | 'pads';

/** How a joint shows at a re-check whether it holds. */
export type MetAgain = 'pull' | 'look' | 'rock' | 'spin' | 'listen';

export interface WorkStep {
  readonly work: WorkId;
  readonly kind: 'adjust' | 'check';
  /** What follows the name of the joint in the title of the step. */
  readonly what: string;
  readonly how: string;
}

export interface JointWorkRow extends Sourced {
  /** How the faces come together. A headset that drops in is fitted, see `dropsIn`. */
  readonly together: 'fit' | 'press' | 'seat';
  /** What that is called, where it has a name of its own. */
  readonly called?: string;
  /** Never tightened by a wrench alone, whatever is screwed in it. */
  readonly noWrench?: true;
  readonly first?: readonly WorkStep[];
  readonly afterwards?: readonly WorkStep[];
  readonly metAgain: MetAgain;
  /** What to do at a re-check, where no figure and no paint mark tells. */
  readonly again?: string;
  /** What counts as well. */
  readonly countsToo?: string;
}

const practice: Sourced = { source: 'common practice, no source', known: 'proposal' };
const spokes: Sourced = { source: '16 CFR 1512.11, wheels', known: 'seen' };
const steering: Sourced = {
  source: 'ISO 4210-2:2014 excerpt: steering free, without tight spots or slack',
  known: 'seen',
};

const step = (work: WorkId, kind: WorkStep['kind'], what: string, how: string): WorkStep => ({
  ...{ work, kind, what, how },
});

const mark = 'A paint mark that still lines up';
const bolted = { together: 'fit', metAgain: 'pull', countsToo: mark, ...practice } as const;

/** What has to be done at each kind of joint, in its order, and how the joint is met again. */
export const jointWork: Readonly<Record<JointKind, JointWorkRow>> = {
  spokes: {
    ...{ together: 'fit', called: 'lace', noWrench: true, metAgain: 'listen', ...spokes },
    afterwards: [
      step(
        'tension',
        'adjust',
        'tension',
        'Bring each side up evenly, turn by turn. Squeeze pairs, then go round again.',
      ),
      step('true', 'adjust', 'true', 'Sideways and up and down, in small turns. Keep the tension level.'),
      step(
        'dish',
        'check',
        'dish',
        'Turn the wheel round in the frame or on a gauge: the rim sits in the middle both ways.',
      ),
    ],
    countsToo: 'A tension meter on each side',
  },
  bead: {
    ...{ together: 'seat', noWrench: true, metAgain: 'look', ...practice },
    countsToo: 'A pressure reading a day later',
  },
  rotor: bolted,
  freewheel: {
    ...{ together: 'fit', metAgain: 'spin', ...practice },
    again: 'Turn the pedals backwards, then push. It clicks evenly, drives at once and does not wobble.',
  },
  sprocket: bolted,
  lockring: bolted,
  'crown-race': {
    ...{ together: 'press', metAgain: 'look', ...practice },
    again: 'Look for a gap under the race all round.',
    countsToo: 'Bars that swing freely, without a tight spot',
  },
  headset: {
    ...{ together: 'press', noWrench: true, metAgain: 'rock', ...steering },
    afterwards: [step('play', 'adjust', 'no play, turns freely', '')],
  },
  fork: {
    ...{ together: 'fit', metAgain: 'rock', ...practice },
    again:
      'Look at legs, crown and steerer for cracks, dents and lifted paint, then rock it with the wheel held.',
  },
  'stem-quill': bolted,
  'stem-steerer': bolted,
  'bottom-bracket': {
    ...{ together: 'fit', metAgain: 'spin', ...practice },
    afterwards: [
      step(
        'turns',
        'check',
        'turns freely',
        'Turn the spindle by hand: no knock sideways, no grinding, no tight spot.',
      ),
    ],
    again: 'Push the cranks sideways: no knock. Chain off, spin them: no grinding.',
  },
  'brake-mount': bolted,
  seatpost: { ...bolted, countsToo: 'A height mark that stays where it was' },
  'saddle-rails': bolted,
  'front-axle': bolted,
  'thru-axle': bolted,
  'rear-axle': bolted,
  chainring: bolted,
  crank: bolted,
  'crank-pinch': bolted,
  pedal: bolted,
  chain: {
    ...{ together: 'fit', called: 'joining link or pin', noWrench: true, metAgain: 'look', ...practice },
    first: [
      step(
        'count',
        'check',
        'count of links',
        'Count them, a half link counts. Write the number down with the chain.',
      ),
    ],
    afterwards: [
      step(
        'slack',
        'adjust',
        'slack',
        'Turn the cranks a whole round: 10 to 15 mm up and down at the tightest place.',
      ),
    ],
    again:
      'Joining link shut, no stiff link. Measure the wear over 12 links; see that there is slack all round.',
  },
  'bar-clamp': bolted,
  'lever-clamp': bolted,
  grip: bolted,
  caliper: {
    ...bolted,
    afterwards: [
      step(
        'bleed',
        'adjust',
        'bleed, or set the cable',
        'The lever stops hard, clear of the bar, and stays there under ten long pulls.',
      ),
      step('pads', 'adjust', 'pad clearance', 'Spin the wheel: no rub. Both pads reach the rotor together.'),
    ],
  },
  'cable-anchor': {
    ...{ together: 'fit', metAgain: 'look', ...practice },
    afterwards: [
      step(
        'cable',
        'adjust',
        'cable length',
        'Pull the lever hard ten times, take up what it gave, and look that the cable did not slip.',
      ),
    ],
    again: 'Pull hard: the cable does not slip. Look for broken strands at both ends.',
  },
  mudguard: bolted,
  rack: bolted,
  other: bolted,
};

/** How the play of a headset is taken up. */
export type HeadsetCap = 'locknut' | 'threaded-cap' | 'cap';

const locknut =
  'Screw the upper race down until there is no play and the fork still swings freely. Hold it and tighten the locknut against it.';
const cap = (how: string) =>
  `Stem bolts loose. ${how} until there is no play and the fork still swings freely. Then align the stem and tighten its bolts.`;

/** What to do against play, by how it is taken up. Common practice, no source. */
export const headsetWords: Readonly<Record<HeadsetCap, string>> = {
  locknut,
  'threaded-cap': cap('Screw the cap into the thread of the steerer'),
  cap: cap('Turn the top cap, or where no cap is to be seen the ring or screw under the stem,'),
};

/** How a joint is met again, in a word or two. @example metAgainWords.pull //=> 'torque check' */
export const metAgainWords: Readonly<Record<MetAgain, string>> = {
  pull: 'torque check',
  look: 'look',
  rock: 'rock it',
  spin: 'spin it',
  listen: 'pluck and listen',
};

import type { IconName } from '../../controls/Icon.tsx';
import type { SealMark } from '../../journal/entries.ts';
import type { SealRow } from '../../journal/rows.ts';
import type { SealNext } from '../../practice/seal/sealOrder.ts';

export interface SealText {
  icon: IconName;
  /** The order on the card. */
  order: string;
  /** How it is done, in a sentence or two. */
  how: string;
}

/** Each piece of work as it stands on the card. */
export const sealTexts: Record<SealNext, SealText> = {
  seated: {
    icon: 'tyre',
    order: 'Seat it dry',
    how: 'No sealant yet. Inflate until both beads pop out, then check the bead line both sides.',
  },
  sealant: {
    icon: 'drop',
    order: 'Put the sealant in',
    how: 'Through the valve, or over the bead. Count what goes in.',
  },
  'spun-and-shaken': {
    icon: 'wheel',
    order: 'Spin it and shake it',
    how: 'About two minutes: spin, shake from side to side, turn it over, again.',
  },
  'laid-left': {
    icon: 'down',
    order: 'Lay it on its left side',
    how: 'Flat on a bucket, left side down, so that the sealant pools against that wall.',
  },
  'laid-right': {
    icon: 'down',
    order: 'Lay it on its right side',
    how: 'Turn it over, right side down, for as long as the left.',
  },
  soaped: {
    icon: 'lookup',
    order: 'Soap it',
    how: 'Soapy water on bead, valve, spoke holes and side walls. Where do bubbles grow?',
  },
  reading: {
    icon: 'scale',
    order: 'Read the pressure',
    how: 'The same gauge each time, and how warm it is: a cold tyre reads lower without losing air.',
  },
  verdict: {
    icon: 'pencil',
    order: 'Your verdict',
    how: 'Your call. One reading cannot show a leak: take another first.',
  },
  wait: {
    icon: 'hourglass',
    order: 'Leave it alone',
    how: 'Waiting. Look again when the timer ends.',
  },
  settled: {
    icon: 'check',
    order: 'Judged to hold',
    how: 'Nothing to do. You can still log readings, top-ups and burps.',
  },
};

/** Seating with sealant in already: nothing is dry any more. */
export const seatedAgain: SealText = {
  icon: 'tyre',
  order: 'Seat it again',
  how: 'The sealant is in. Pump until both beads are home, then follow the bead line all round, on both sides.',
};

/** A mark named in a word or two, for its tile and for the undo bar. */
export const markNames: Record<SealMark['mark'], string> = {
  seated: 'Seated',
  'dry-reading': 'Dry reading',
  sealant: 'Sealant',
  'spun-and-shaken': 'Spun, shaken',
  'laid-left': 'On its left',
  'laid-right': 'On its right',
  soaped: 'Soaped',
  reading: 'Pressure',
  burped: 'Burped',
  pumped: 'Pumped up',
  'let-down': 'Let down',
  riding: 'Riding pressure',
  verdict: 'Verdict',
};

type Soaped = Extract<SealMark, { mark: 'soaped' }>;

/** Where bubbles can stand, in the order the soap goes on. */
export const bubbleWords: Record<Soaped['bubbles'], string> = {
  none: 'No bubbles',
  bead: 'At the bead',
  valve: 'At the valve',
  'spoke-holes': 'At spoke holes',
  sidewall: 'Through the side wall',
};

type SealVerdict = NonNullable<SealRow['verdict']>;

export const verdictWords: Record<SealVerdict, string> = {
  holds: 'Holds',
  'still-sealing': 'Still sealing',
  leaks: 'Leaks',
  'will-not-seat': 'Will not seat',
};

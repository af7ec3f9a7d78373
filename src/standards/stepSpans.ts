import type { JointKind } from './jointKinds.ts';
import type { Sourced } from './known.ts';
import type { Worked } from './workOrder.ts';

/** How long a piece of work takes one pair of hands, min: quick, usual, slow. */
export type SpanMin = readonly [quick: number, usual: number, slow: number];

/** What is known of a span beforehand. */
export interface StepSpanRow extends Sourced {
  readonly span: SpanMin;
}

const row = (quick: number, usual: number, slow: number): StepSpanRow => ({
  span: [quick, usual, slow],
  source: 'common practice, no source',
  known: 'proposal',
});

/** By what is done, where the kind of joint makes no difference. */
export const workSpans: Readonly<Record<Worked | 'measure' | 'cut' | 'check' | 'adjust', StepSpanRow>> = {
  get: row(2, 5, 15),
  bond: row(5, 10, 15),
  together: row(3, 8, 20),
  locker: row(2, 4, 8),
  torque: row(2, 4, 8),
  tension: row(30, 60, 120),
  true: row(20, 40, 90),
  dish: row(5, 10, 20),
  play: row(3, 6, 15),
  turns: row(1, 3, 8),
  count: row(5, 10, 20),
  slack: row(5, 10, 20),
  bleed: row(20, 35, 75),
  cable: row(10, 20, 40),
  pads: row(5, 12, 30),
  measure: row(3, 6, 15),
  cut: row(15, 30, 75),
  check: row(2, 5, 10),
  adjust: row(3, 8, 20),
};

/** Putting together takes longer, or less long, at these joints. */
export const togetherSpans: Readonly<Partial<Record<JointKind | 'sleeve', StepSpanRow>>> = {
  spokes: row(40, 60, 120),
  bead: row(10, 20, 45),
  'crown-race': row(5, 10, 20),
  headset: row(10, 20, 40),
  'bottom-bracket': row(10, 15, 30),
  sleeve: row(15, 25, 45),
  freewheel: row(2, 4, 8),
  pedal: row(2, 4, 8),
  grip: row(2, 5, 10),
  mudguard: row(20, 35, 75),
  rack: row(15, 30, 60),
};

/** What goes on by itself after a step, min. */
export const ownWaits = {
  /** A tyre without a tube is looked at again before it is trusted. */
  settles: row(30, 60, 240),
  /** Threadlocker and compound: a day at room temperature, as `lockerWait` has it at the least. */
  cures: row(1440, 1440, 1440),
} as const;

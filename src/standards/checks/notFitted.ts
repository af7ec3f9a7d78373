import type { Sourced } from '../known.ts';

/** What "not fitted" means at one item of the pre-ride check. */
export interface NotFittedRow extends Sourced {
  /** What is not there, as a release names it. */
  readonly thing: string;
  /** Whether a bike can be ridden without it; without a wheel or a fork it is no bike yet. */
  readonly without: 'rides' | 'stands';
  /** What to mind before riding without it. */
  readonly caution?: string;
}

/** Two brakes is what the standards and most traffic laws ask for. */
export const brakesCaution =
  'Most places ask by law for two brakes that work on their own. Look up the rules of the place you ride in.';

const brakes: Sourced & { caution: string } = {
  source: 'ISO 4210-2:2014 excerpt: two brakes that work independently; 16 CFR 1512.5',
  known: 'seen',
  caution: brakesCaution,
};
const practice: Sourced = { source: 'common practice, no source', known: 'proposal' };

const brake = (thing: string): NotFittedRow => ({ thing, without: 'rides', ...brakes });
const may = (thing: string, caution?: string): NotFittedRow => ({
  ...{ thing, without: 'rides', ...practice },
  ...(caution ? { caution } : {}),
});
const must = (thing: string): NotFittedRow => ({ thing, without: 'stands', ...practice });

/**
 * By item of the pre-ride check, what is missing where it is not fitted. What is done, and is no thing, stands not here:
 * the drop and the short ride are for every bike.
 */
export const notFitted: Readonly<Record<string, NotFittedRow>> = {
  'front-axle': must('front axle'),
  'front-hub': must('front hub'),
  'front-spokes': may('spokes of the front wheel'),
  'front-rim': must('front rim'),
  'front-tyre': must('front tyre'),
  'front-brake': brake('front brake'),
  'front-rotor': brake('front rotor or brake cable'),
  fork: must('fork'),
  headset: must('headset'),
  stem: must('stem'),
  bar: must('bar'),
  grips: may('grips', 'A bare bar end cuts: close both ends.'),
  levers: brake('brake levers'),
  'head-tube': must('head tube'),
  frame: must('frame'),
  'bottom-bracket': may('bottom bracket'),
  'crank-arms': may('cranks'),
  pedals: may('pedals'),
  chainring: may('chainring'),
  chain: may('chain'),
  'saddle-clamp': may('saddle'),
  'post-depth': may('seatpost'),
  'post-clamp': may('seatpost clamp'),
  'rack-and-guards': may('rack, mudguards or bags'),
  'rear-axle': must('rear axle'),
  'rear-hub': must('rear hub'),
  'rear-spokes': may('spokes of the rear wheel'),
  'rear-rim': must('rear rim'),
  'rear-tyre': must('rear tyre'),
  'rear-brake': brake('rear brake'),
  'rear-rotor': brake('rear rotor or brake cable'),
  sprockets: may('sprocket'),
  dropouts: must('dropouts'),
  'walk-brakes': brake('any brake'),
  marks: may(
    'paint marks',
    'Without paint marks a turned bolt is not seen: check each with a wrench before riding.',
  ),
  'local-rules': may('lights, reflectors or bell', 'Look up the rules of the place you ride in.'),
};

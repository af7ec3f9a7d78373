import type { JointArea } from '../jointKinds.ts';
import type { Sourced } from '../known.ts';

/** A state in which the bike stays where it is; no signature makes it rideable. */
export interface NeverDeferred extends Sourced {
  readonly id: string;
  readonly area: JointArea;
  readonly words: string;
}

const ownJudgement: Sourced = {
  source: "our suggestion; owners' manuals name brake, steering and wheel failure as causes of severe injury",
  known: 'proposal',
};

export const neverDeferred: readonly NeverDeferred[] = [
  {
    id: 'brake',
    area: 'brakes',
    words: 'A brake that does not hold, leaks, or has a loose fixing',
    source: 'ISO 4210-2:2014 excerpt: two brakes that work independently',
    known: 'seen',
  },
  {
    id: 'steering',
    area: 'steering',
    words: 'Bar, stem or headset that slips, binds or knocks',
    source: 'ISO 4210-2:2014 excerpt: steering free, without tight spots or slack',
    known: 'seen',
  },
  {
    id: 'wheel-retention',
    area: 'wheels',
    words: 'An axle that is not fully home and locked',
    source: '16 CFR 1512.12: no movement of the axle',
    known: 'seen',
  },
  {
    id: 'spokes',
    area: 'wheels',
    words: 'A spoke missing or a wheel gone slack',
    source: '16 CFR 1512.11: no missing spokes',
    known: 'seen',
  },
  {
    id: 'crack',
    area: 'steering',
    words: 'A crack, or the suspicion of one, in frame, fork, bar, stem or post',
    ...ownJudgement,
  },
  { id: 'crank-or-pedal', area: 'drive', words: 'A crank or pedal that moves on its seat', ...ownJudgement },
  {
    id: 'seat',
    area: 'saddle',
    words: 'A saddle or post that slips, or a post whose minimum-insertion line shows',
    source: '16 CFR 1512.15: mark at two post diameters, clamps that hold',
    known: 'seen',
  },
  { id: 'bead', area: 'wheels', words: 'A tyre bead that will not seat or will not stay', ...ownJudgement },
  {
    id: 'tyre-or-rim',
    area: 'wheels',
    words: 'A tyre cut to the casing, or a rim cracked, bulged or worn out',
    source: 'rim wear notes: replace at 1.0 mm of wall or on any bulge',
    known: 'seen',
  },
  {
    id: 'cure',
    area: 'other',
    words: 'Threadlocker or adhesive that has not reached riding strength on a safety-critical joint',
    ...ownJudgement,
  },
];

export type CautionTopic =
  | 'release'
  | 'brakes'
  | 'steering'
  | 'carbon'
  | 'one-way-change'
  | 'tyre'
  | 'somebody-else';

/** Said once, where it counts. */
export const cautions: Record<CautionTopic, string> = {
  release:
    'This lists what was logged, not the state of the bike. A tick means logged. Have the work checked by a qualified mechanic, follow the rules of the place you ride in, and start with a short slow ride.',
  brakes:
    'A brake that fails can kill. The figure of the part maker goes first; let a qualified mechanic see an adapted mount or a brake bled for the first time.',
  steering:
    'A bar, stem or fork can fail without warning. Take the lower figure of the two parts that meet, and have cut or changed parts seen by a qualified mechanic.',
  carbon:
    'Carbon damage is often hidden. After a crash, a crush or an unknown past, set the part aside until a qualified mechanic has inspected it; keep heat away from it.',
  'one-way-change':
    'Filing, cutting, drilling, brazing or bending is permanent and changes the strength. No torque is suggested for this part; ask the maker or a qualified mechanic.',
  tyre: 'Eye protection on, face away from the wheel, never above the lowest marked limit. A tyre that holds air at rest may still burp in a corner.',
  'somebody-else':
    'You are responsible for a bike you build, lend or sell. For another person or a child, have it checked by a qualified mechanic and hand over this record with everything that is open.',
};

import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import { contradictionFindings } from '../contradictions.ts';
import type { Finding } from '../finding.ts';
import type { PartKind } from '../partKinds.ts';
import type { PilePart } from '../pile.ts';
import { chainLengthFindings } from './chainLengthFinding.ts';
import { chainlineFindings } from './chainlineFinding.ts';
import { teethFindings } from './leastTeeth.ts';
import { pressureFindings } from './pressureFinding.ts';
import { rotorWearFindings } from './rotorWearFinding.ts';
import { slidingDiscFindings } from './slidingDisc.ts';
import { steererFindings } from './steererFinding.ts';

type Judge = (parts: readonly PilePart[]) => Finding[];

/** What follows from a part alone, whatever lies beside it. */
export const ofOnePart: readonly Judge[] = [contradictionFindings, teethFindings, rotorWearFindings];

/** What parts tell only together. */
export interface Whole {
  /** The faces it looks at, on parts of any kind or of the one named: no other part changes its answer. */
  reads: readonly (readonly [kind: FaceKind, on?: PartKind])[];
  findings: Judge;
}

/** What follows from two parts beyond the faces they meet with: judged pair by pair, or all pairs at once. */
export const ofTwoParts: readonly Whole[] = [
  { reads: [['rim-seat'], ['tyre-bead']], findings: pressureFindings },
];

/** What only several parts tell. */
export const ofSeveralParts: readonly Whole[] = [
  {
    reads: [
      ['steerer'],
      ['head-tube-upper'],
      ['headset-cup-upper'],
      ['headset-cup-lower'],
      ['steerer-clamp'],
    ],
    findings: steererFindings,
  },
  {
    reads: [['spider'], ['driver-mount'], ['hub-spacing', 'rear-hub'], ['axle-slot', 'frame']],
    findings: chainlineFindings,
  },
  {
    reads: [['ring-teeth'], ['sprocket-teeth'], ['chain'], ['axle-slot', 'frame']],
    findings: chainLengthFindings,
  },
  {
    reads: [['disc-mount', 'frame'], ['axle-slot', 'frame'], ['caliper-mount']],
    findings: slidingDiscFindings,
  },
];

import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import type { DriveThreadRow } from '../../standards/interfaces/driveThreads.ts';
import { driveThreads } from '../../standards/interfaces/driveThreads.ts';
import { taperCross } from '../../standards/interfaces/spindles.ts';
import type { Known } from '../../standards/known.ts';
import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { traitOf } from '../faces/reading.ts';
import { standardOf } from '../faces/standardOf.ts';
import type { Judgement } from '../verdict.ts';

interface NamedPair {
  topic: string;
  first: FaceKind;
  second: FaceKind;
  risk: string;
  source: string;
  known: Known;
  /** What names alone do not settle. */
  special?: (first: Face, second: Face) => Judgement | undefined;
}

/** Two faces that mate when they carry the same name, and otherwise not. */
function namedRule({ special, ...pair }: NamedPair): Rule {
  return {
    ...pair,
    judge: (first, second) => {
      const settled = special?.(first, second);
      if (settled) return settled;
      const rows = [standardOf(first), standardOf(second)];
      const [one, two] = rows;
      if (!one || !two)
        return unknown('Which thread, spline or pattern one of the two has is not known yet.', [
          ...(one ? [] : [askFor(first, 'standard')]),
          ...(two ? [] : [askFor(second, 'standard')]),
        ]);
      if (one.id === two.id) return { meets: 'yes', because: `Both are ${one.label}.` };
      return { meets: 'no', because: `${two.label} does not go with ${one.label}.` };
    },
  };
}

const driveRow = (face: Face): DriveThreadRow | undefined =>
  driveThreads.find((row) => row.id === face.standard);

/** Threads, splines and patterns known by name. */
export const namedRules: readonly Rule[] = [
  namedRule({
    topic: 'crank-on-square',
    first: 'taper-hole',
    second: 'taper',
    risk: 'A crank that bottoms out before it is tight will come loose and be ruined.',
    source: taperCross.source,
    known: taperCross.known,
    special: (hole, end) =>
      hole.standard && end.standard && hole.standard !== end.standard
        ? {
            meets: 'yes',
            because: 'JIS and ISO tapers have the same angle but different sizes.',
            notes: [
              `The crank sits about ${mmText(taperCross.slideMm)} ${hole.standard === 'jis-taper' ? 'further in' : 'further out'}: chainline and contact on the square change.`,
            ],
          }
        : undefined,
  }),
  namedRule({
    topic: 'sprocket-on-hub',
    first: 'driver-mount',
    second: 'sprocket-mount',
    risk: 'A thread that is nearly the same strips under the first hard start.',
    source: 'bicycle encyclopaedia, freewheel threads page',
    known: 'seen',
    special: (hub, sprocket) => {
      const row = driveRow(hub);
      return sprocket.standard && row?.nearly?.includes(sprocket.standard)
        ? unknown(
            'The two threads are neighbours and hold each other weakly: spin it on by hand, all the way.',
            [askFor(hub, 'diameterMm'), askFor(sprocket, 'boreMm')],
          )
        : undefined;
    },
  }),
  namedRule({
    topic: 'pedal-in-crank',
    first: 'pedal-hole',
    second: 'pedal-spindle',
    risk: 'A pedal forced into the wrong thread or side ruins the crank and comes out while riding.',
    source: 'touring site’s notes on pedal threads',
    known: 'seen',
    special: (hole, pedal) => {
      const side = traitOf(hole, 'side') ?? 'both';
      const stamped = traitOf(pedal, 'side') ?? 'both';
      return side !== 'both' && stamped !== 'both' && side !== stamped
        ? {
            meets: 'no',
            because: `A ${stamped} pedal has the wrong hand for the ${side} crank.`,
            final: true,
          }
        : undefined;
    },
  }),
  namedRule({
    topic: 'rotor-on-hub',
    first: 'rotor-seat',
    second: 'rotor-mount',
    risk: 'A rotor that comes loose locks the wheel.',
    source: 'rider’s page comparing rotor mounts',
    known: 'seen',
  }),
];

import { rollerCircleMm } from '../../mechanics/drive/pitchDiameter.ts';
import { positive } from '../../mechanics/range.ts';
import { driveThreads } from '../../standards/interfaces/driveThreads.ts';
import { ringMounts } from '../../standards/interfaces/ringMounts.ts';
import { mmText } from '../bridges/rule.ts';
import { readingOf } from '../faces/reading.ts';
import { type Finding, finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { askAt } from '../placed.ts';

/** Seat radius under a tooth: half a roller and its play below the pitch circle. */
const ROLLER_SEAT_MM = 3.88;
/** Metal the listed rings have at least between bolt circle and roller seat; it was fitted to the table. */
const BOSS_MM = 7;

/**
 * Metal between the bolt circle and the bottom of the teeth.
 * @param teethCount teeth of the ring, whole, 6 to 120
 * @param boltCircleMm bolt circle, mm, > 0
 * @throws RangeError when an argument is out of bounds
 * @example ringBossMm(32, 104) //=> 8.9
 */
export function ringBossMm(teethCount: number, boltCircleMm: number): number {
  positive({ boltCircleMm });
  return rollerCircleMm(teethCount) / 2 - ROLLER_SEAT_MM - boltCircleMm / 2;
}

/**
 * Fewest teeth a ring on a bolt circle can have: from the table, or for an unlisted circle within one tooth.
 * @param boltCircleMm bolt circle, mm, 30…200
 * @throws RangeError when the circle is out of bounds
 * @returns the usual fewest; `rareTeethCount` where rings with fewer are known to exist
 * @example leastRingTeeth(104, 4) //=> { teethCount: 32, listed: true, rareTeethCount: 30 }
 */
export function leastRingTeeth(
  boltCircleMm: number,
  boltsCount: number,
): { teethCount: number; listed: boolean; rareTeethCount?: number } {
  if (!(boltCircleMm >= 30 && boltCircleMm <= 200)) throw new RangeError(`no bolt circle: ${boltCircleMm}`);
  const row = ringMounts.find(({ id }) => id === `${boltCircleMm}/${boltsCount}`);
  if (row?.leastTeethCount) {
    const { leastTeethCount: teethCount, rareTeethCount } = row;
    return { teethCount, listed: true, ...(rareTeethCount === undefined ? {} : { rareTeethCount }) };
  }
  let teethCount = 8;
  while (ringBossMm(teethCount, boltCircleMm) < BOSS_MM) teethCount++;
  return { teethCount, listed: false };
}

function ring(part: PilePart): Finding[] {
  const mount = part.faces.find(({ kind }) => kind === 'ring-mount');
  const teeth = part.faces.find(({ kind }) => kind === 'ring-teeth');
  if (!mount || !teeth) return [];
  const circle = readingOf(mount, 'boltCircleMm');
  const bolts = readingOf(mount, 'boltsCount');
  const count = readingOf(teeth, 'teethCount');
  if (!circle || !bolts || !count) return [];
  const least = leastRingTeeth(circle.mid, bolts.mid);
  const refs = [mount, teeth].map(({ faceId }) => ({ partId: part.partId, faceId }));
  const rest = {
    source: least.listed
      ? 'bicycle encyclopaedia, chainring bolt circle pages'
      : 'geometry of roller seat and bolt circle',
    known: least.listed ? 'seen' : 'computed',
  } as const;
  const words = `The ring has ${count.mid} teeth; ${least.teethCount} is the fewest on ${bolts.mid} bolts of a ${mmText(circle.mid)} circle`;
  if (count.mid >= least.teethCount)
    return [finding('ring-teeth', refs, { outcome: 'fits', because: `${words}.`, ...rest })];
  if (count.mid >= (least.rareTeethCount ?? least.teethCount))
    return [
      finding('ring-teeth', refs, {
        outcome: 'fits',
        because: `${words} as a rule; rings of ${least.rareTeethCount} exist.`,
        notes: [
          'Unusual: its bolts thread into the ring or it sits out of the plane. Lay the chain on and turn it over every bolt.',
        ],
        ...rest,
      }),
    ];
  if (!least.listed && count.mid >= least.teethCount - 1)
    return [
      finding('ring-teeth', refs, {
        outcome: 'not-known',
        because: `${words}, give or take one.`,
        asks: [askAt(part.partId, mount, 'boltCircleMm', true)],
        ...rest,
      }),
    ];
  return [
    finding('ring-teeth', refs, {
      outcome: 'does-not-fit',
      because: `${words}: the chain would run on the bolts.`,
      ...rest,
    }),
  ];
}

function sprocket(part: PilePart): Finding[] {
  const mount = part.faces.find(({ kind }) => kind === 'sprocket-mount');
  const teeth = part.faces.find(({ kind }) => kind === 'sprocket-teeth');
  const row = driveThreads.find(({ id }) => id === mount?.standard);
  const count = teeth && readingOf(teeth, 'teethCount');
  if (!mount || !teeth || !row || !count || row.leastTeethCount === null) return [];
  const refs = [mount, teeth].map(({ faceId }) => ({ partId: part.partId, faceId }));
  const { source, known } = row;
  const rarely = row.rareTeethCount !== undefined && count.mid >= row.rareTeethCount;
  if (count.mid < row.leastTeethCount && !rarely)
    return [
      finding('sprocket-teeth', refs, {
        outcome: 'does-not-fit',
        because: `No sprocket of ${count.mid} teeth sits on ${row.label}; ${row.leastTeethCount} is the least.`,
        source,
        known,
      }),
    ];
  const small = row.usualTeethCount !== undefined && count.mid < row.usualTeethCount;
  return [
    finding('sprocket-teeth', refs, {
      outcome: 'fits',
      because: `A sprocket of ${count.mid} teeth sits on ${row.label}.`,
      notes:
        count.mid < row.leastTeethCount
          ? [
              `Unusual: an ordinary body begins with ${row.leastTeethCount} teeth, bodies made for ${row.rareTeethCount} exist. Look at the hub's own.`,
            ]
          : small
            ? [
                `Most freewheels under ${row.usualTeethCount} teeth carry the small 30 mm thread: measure this one before you screw it on.`,
              ]
            : [],
      source,
      known,
    }),
  ];
}

/** Rings too small for their bolts, and sprockets too small for their thread. */
export const teethFindings = (parts: readonly PilePart[]): Finding[] =>
  parts.flatMap((part) => [...ring(part), ...sprocket(part)]);

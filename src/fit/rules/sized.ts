import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import type { Known } from '../../standards/known.ts';
import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf, type SizeReading } from '../faces/reading.ts';
import type { Judgement } from '../verdict.ts';

/** Gap limits: hole minus rod, mm, both ends belonging to the fit. */
export type GapZone = readonly [leastMm: number, mostMm: number];

export interface SizedPair {
  topic: string;
  /** Kind of face, its size, and what a mechanic calls it. */
  hole: readonly [kind: FaceKind, key: string, word: string];
  rod: readonly [kind: FaceKind, key: string, word: string];
  gap: GapZone;
  risk: string;
  source: string;
  known: Known;
  /** May settle the pair before sizes do, or change the limits. */
  special?: (hole: Face, rod: Face, gapMm: number) => Judgement | undefined;
  /** What can still be done when the rod is too thick. */
  tight?: (hole: Face, rod: Face, sizes: { hole: SizeReading; rod: SizeReading }) => Partial<Judgement>;
}

/** Sizes are given to hundredths; sums of them must not fail on the last bit of a double. */
const HAIR_MM = 1e-6;

/** A rod in a hole: the one judgement behind clamps, posts, steerers, slots and sleeves. */
export function sizedRule(pair: SizedPair): Rule {
  const [holeKind, holeKey, holeWord] = pair.hole;
  const [rodKind, rodKey, rodWord] = pair.rod;
  const [least, most] = pair.gap;

  function unmeasured(holeKnown: boolean, rodKnown: boolean): string {
    if (!holeKnown && !rodKnown) return `Neither the ${holeWord} nor the ${rodWord} has a size yet.`;
    return `The ${holeKnown ? rodWord : holeWord} has no size yet.`;
  }

  function judge(hole: Face, rod: Face): Judgement {
    const holeSize = readingOf(hole, holeKey);
    const rodSize = readingOf(rod, rodKey);
    const asks = [...(holeSize ? [] : [askFor(hole, holeKey)]), ...(rodSize ? [] : [askFor(rod, rodKey)])];
    if (!holeSize || !rodSize)
      return unknown(unmeasured(holeSize !== undefined, rodSize !== undefined), asks);

    const gapMm = {
      lo: holeSize.lo - rodSize.hi,
      mid: holeSize.mid - rodSize.mid,
      hi: holeSize.hi - rodSize.lo,
    };
    const special = pair.special?.(hole, rod, gapMm.mid);
    if (special) return { gapMm, ...special };
    const rodTold = `The ${mmText(rodSize.mid)} ${rodWord}`;
    const holeTold = `the ${mmText(holeSize.mid)} ${holeWord}`;
    const notes = [
      ...(holeSize.weak
        ? [`Check the ${mmText(holeSize.mid)} with a caliper: the table’s figure is unverified.`]
        : []),
      ...(rodSize.weak
        ? [`Check the ${mmText(rodSize.mid)} with a caliper: the table’s figure is unverified.`]
        : []),
    ];
    if (gapMm.lo >= least - HAIR_MM && gapMm.hi <= most + HAIR_MM)
      return { meets: 'yes', because: `${rodTold} sits in ${holeTold}.`, gapMm, notes };
    if (gapMm.hi < least - HAIR_MM) {
      const rest = pair.tight?.(hole, rod, { hole: holeSize, rod: rodSize }) ?? {};
      return {
        meets: 'no',
        because:
          gapMm.mid < 0
            ? `${rodTold} does not go into ${holeTold}: it is ${mmText(-gapMm.mid)} too thick.`
            : `${rodTold} leaves ${mmText(gapMm.mid)} of play in ${holeTold}; it needs ${mmText(least)} at least.`,
        gapMm,
        notes,
        ...rest,
      };
    }
    if (gapMm.lo > most + HAIR_MM)
      return {
        meets: 'no',
        because: `${rodTold} is too thin for ${holeTold}: ${mmText(gapMm.mid)} of play.`,
        gapMm,
        notes,
      };
    return {
      ...unknown(`${rodTold} and ${holeTold} lie too close to the limit for this caliper to tell.`, [
        ...(holeSize.from === 'measured' ? [askFor(hole, holeKey, true)] : []),
        ...(rodSize.from === 'measured' ? [askFor(rod, rodKey, true)] : []),
      ]),
      gapMm,
      notes,
    };
  }

  return {
    topic: pair.topic,
    first: holeKind,
    second: rodKind,
    risk: pair.risk,
    source: pair.source,
    known: pair.known,
    judge,
  };
}

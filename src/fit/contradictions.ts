import { type FaceKind, faceKinds } from '../standards/faceKinds.ts';
import type { Face } from './face.ts';
import { type Finding, finding } from './finding.ts';
import type { PilePart } from './pile.ts';
import { measuredBand } from './reading.ts';
import { askFor, mm } from './rule.ts';
import { spanOf, standardOf } from './standardOf.ts';

export type Contradiction =
  | {
      reason: 'measured-beside-standard';
      key: string;
      measuredMm: number;
      standardMm: readonly [number, number];
    }
  | { reason: 'measured-beside-printed'; key: string; measuredMm: number; printedMm: number }
  | { reason: 'order'; key: string; beforeKey: string };

/** How far a part of a standard may be off before its name is doubted, mm: wear, paint and a hasty caliper. */
const DOUBT_MM = 0.25;

/** Sizes that have to come in this order. */
const ordered: Partial<Record<FaceKind, readonly [smaller: string, larger: string]>> = {
  'axle-slot': ['nearestMm', 'farthestMm'],
  'disc-mount': ['nativeRotorMm', 'largestRotorMm'],
};

/**
 * Where a face says two things that cannot both be true.
 * @returns an empty list when it does not contradict itself
 * @example contradictions(isoShellMeasuredAs41)[0]?.reason //=> 'measured-beside-standard'
 */
export function contradictions(face: Face): Contradiction[] {
  const found: Contradiction[] = [];
  const spans = standardOf(face)?.faces[face.kind] ?? {};
  for (const [key, measured] of Object.entries(face.measured)) {
    const { lo, mid, hi } = measuredBand(measured);
    const span = spans[key];
    const printed = face.nominal[key];
    if (span !== undefined) {
      const standardMm = spanOf(span);
      if (lo > standardMm[1] + DOUBT_MM || hi < standardMm[0] - DOUBT_MM)
        found.push({ reason: 'measured-beside-standard', key, measuredMm: mid, standardMm });
    } else if (printed !== undefined && (lo > printed + DOUBT_MM || hi < printed - DOUBT_MM))
      found.push({ reason: 'measured-beside-printed', key, measuredMm: mid, printedMm: printed });
  }
  const [smaller, larger] = ordered[face.kind] ?? [];
  if (smaller && larger) {
    const [low, high] = [smaller, larger].map((key) => {
      const measured = face.measured[key];
      return measured ? measuredBand(measured).mid : face.nominal[key];
    });
    if (low !== undefined && high !== undefined && low > high)
      found.push({ reason: 'order', key: smaller, beforeKey: larger });
  }
  return found;
}

function sentence(face: Face, found: Contradiction): string {
  const labelOf = (key: string) =>
    faceKinds[face.kind].dimensions.find((row) => row.key === key)?.label ?? key;
  switch (found.reason) {
    case 'measured-beside-standard': {
      const [lo, hi] = found.standardMm;
      const standard = lo === hi ? mm(lo) : `${mm(lo)} to ${mm(hi)}`;
      return `The ${labelOf(found.key)} measures ${mm(found.measuredMm)}, but ${face.standard} has ${standard}: one of the two is wrong.`;
    }
    case 'measured-beside-printed':
      return `The ${labelOf(found.key)} measures ${mm(found.measuredMm)} where ${mm(found.printedMm)} is printed.`;
    case 'order':
      return `The ${labelOf(found.key)} cannot be more than the ${labelOf(found.beforeKey)}.`;
  }
}

/** Faces of the pile that contradict themselves, as open questions. */
export const contradictionFindings = (parts: readonly PilePart[]): Finding[] =>
  parts.flatMap(({ partId, faces }) =>
    faces.flatMap((face) =>
      contradictions(face).map((found) =>
        finding(`contradiction-${found.key}`, [{ partId, faceId: face.faceId }], {
          outcome: 'not-known',
          because: sentence(face, found),
          asks: [askFor(face, found.key)],
          source: 'the face itself',
          known: 'computed',
        }),
      ),
    ),
  );

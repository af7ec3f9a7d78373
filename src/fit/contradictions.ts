import { bareNumber } from '../mechanics/numberText.ts';
import { type LengthUnit, unitLabel } from '../mechanics/units.ts';
import type { FaceKind } from '../standards/faces/faceKinds.ts';
import { mmText } from './bridges/rule.ts';
import { CONTRADICTION } from './contradictionTopic.ts';
import type { Face, Measured } from './faces/face.ts';
import { dimensionOf, isPlausible } from './faces/plausible.ts';
import { readDimension } from './faces/readDimension.ts';
import { measuredBand } from './faces/reading.ts';
import { spanOf, standardOf, standardsFor } from './faces/standardOf.ts';
import { type Finding, finding } from './finding.ts';
import type { PilePart } from './pile.ts';
import { askAt } from './placed.ts';

export type Contradiction =
  | {
      reason: 'implausible';
      key: string;
      /** As it was typed, in the unit of the key. */
      size: number;
      /** What was probably meant, in the unit of the key; null when nothing plausible is near. */
      suggestion: number | null;
    }
  | {
      reason: 'measured-beside-standard';
      key: string;
      measuredMm: number;
      standardMm: readonly [number, number];
      /** Standards of the table the measured size would suit, by id. */
      suits: readonly string[];
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

/** A size again as a hand would type it, so that the same reading can say what was probably meant. */
function textOf({ value, unit }: Pick<Measured, 'value' | 'unit'>): string {
  const bare = unit === '1' || unit === 'bar' || unit === 'mm';
  return bare ? String(value) : `${value} ${unitLabel[unit satisfies LengthUnit]}`;
}

function implausible(face: Face, key: string, size: number, text: string): Contradiction[] {
  if (isPlausible(face.kind, key, size)) return [];
  const read = readDimension(face.kind, key, text);
  return [{ reason: 'implausible', key, size, suggestion: read.ok ? null : read.suggestion }];
}

/** Standards of the same kind of face that a measured size suits. */
function suitsOf(face: Face, key: string, lo: number, hi: number): string[] {
  return standardsFor(face.kind)
    .filter(({ faces }) => {
      const span = faces[face.kind]?.[key];
      if (span === undefined) return false;
      const [from, to] = spanOf(span);
      return lo <= to && hi >= from;
    })
    .map(({ id }) => id);
}

function ofMeasured(face: Face, key: string, measured: Measured): Contradiction[] {
  const { lo, mid, hi } = measuredBand(measured);
  const strange = implausible(face, key, mid, textOf(measured));
  if (strange.length > 0) return strange;
  const span = standardOf(face)?.faces[face.kind]?.[key];
  const printed = face.nominal[key];
  if (span !== undefined) {
    const standardMm = spanOf(span);
    if (lo > standardMm[1] + DOUBT_MM || hi < standardMm[0] - DOUBT_MM)
      return [
        {
          reason: 'measured-beside-standard',
          key,
          measuredMm: mid,
          standardMm,
          suits: suitsOf(face, key, lo, hi),
        },
      ];
  } else if (printed !== undefined && (lo > printed + DOUBT_MM || hi < printed - DOUBT_MM))
    return [{ reason: 'measured-beside-printed', key, measuredMm: mid, printedMm: printed }];
  return [];
}

/**
 * Where a face says what cannot be, or two things that cannot both be true.
 * @returns an empty list when it does not contradict itself
 * @example contradictions(isoShellMeasuredAs41)[0]?.reason //=> 'measured-beside-standard'
 */
export function contradictions(face: Face): Contradiction[] {
  const found = [
    ...Object.entries(face.measured).flatMap(([key, measured]) => ofMeasured(face, key, measured)),
    ...Object.entries(face.nominal).flatMap(([key, size]) => implausible(face, key, size, String(size))),
  ];
  const [smaller, larger] = ordered[face.kind] ?? [];
  if (smaller && larger) {
    const [low, high] = [smaller, larger].map((key) => {
      const measured = face.measured[key];
      return measured ? measuredBand(measured).mid : face.nominal[key];
    });
    if (low !== undefined && high !== undefined && low > high)
      found.push({ reason: 'order', key: smaller, beforeKey: larger });
  }
  // A size that is both printed and measured out of all bounds is one thing to mend.
  return found.filter(({ key }, at) => found.findIndex((other) => other.key === key) === at);
}

const labelOf = (face: Face, key: string): string => dimensionOf(face.kind, key)?.label ?? key;

/** A size with the unit its key ends in. */
function sizeText(key: string, value: number): string {
  if (key.endsWith('Mm')) return mmText(value);
  return key.endsWith('Bar') ? `${bareNumber(value)} bar` : bareNumber(value);
}

function sentence(face: Face, found: Contradiction): string {
  const label = labelOf(face, found.key);
  switch (found.reason) {
    case 'implausible': {
      const row = dimensionOf(face.kind, found.key);
      const range = row ? ` Such parts have ${bareNumber(row.min)} to ${sizeText(found.key, row.max)}.` : '';
      const meant =
        found.suggestion === null
          ? 'Measure it again.'
          : `Perhaps ${sizeText(found.key, found.suggestion)} was meant.`;
      return `The ${label} is entered as ${sizeText(found.key, found.size)}, which cannot be.${range} ${meant}`;
    }
    case 'measured-beside-standard': {
      const [lo, hi] = found.standardMm;
      const standard = lo === hi ? mmText(lo) : `${bareNumber(lo)} to ${mmText(hi)}`;
      const suits = found.suits.map(
        (id) => standardsFor(face.kind).find((row) => row.id === id)?.label || id,
      );
      const meant =
        suits.length > 0
          ? `By its size it would be ${suits.join(', or ')}.`
          : 'No standard here has that size: leave the standard out, or measure again.';
      return `The ${label} measures ${mmText(found.measuredMm)}, but ${standardOf(face)?.label || face.standard} has ${standard}. ${meant}`;
    }
    case 'measured-beside-printed':
      return `The ${label} measures ${mmText(found.measuredMm)} where ${mmText(found.printedMm)} is printed. The measured size is used; take the printed one out, or measure again.`;
    case 'order':
      return `The ${label} cannot be more than the ${labelOf(face, found.beforeKey)}. Perhaps the two are swapped.`;
  }
}

/** Faces of the pile that contradict themselves, as open questions. */
export const contradictionFindings = (parts: readonly PilePart[]): Finding[] =>
  parts.flatMap(({ partId, faces }) =>
    faces.flatMap((face) =>
      contradictions(face).map((found) =>
        finding(`${CONTRADICTION}${found.key}`, [{ partId, faceId: face.faceId }], {
          outcome: 'not-known',
          because: sentence(face, found),
          asks: [askAt(partId, face, found.key)],
          source: 'the sizes entered',
          known: 'computed',
        }),
      ),
    ),
  );

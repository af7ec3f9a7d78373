import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import type { Bridge } from '../bridges/bridge.ts';
import { mates } from '../bridges/mates.ts';
import { mmText } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf } from '../faces/reading.ts';
import type { Finding, PlacedAsk } from '../finding.ts';
import { faceInPlace, type PilePart } from '../pile.ts';
import { askAt, asksOfPair } from '../placed.ts';

/** A piece between two parts that also changes how wide one of the two is. */
interface Widening {
  /** The joint the piece goes into, and the joint of the same parts whose width it changes. */
  by: string;
  of: string;
  /** The face that changes, and its width. */
  wide: readonly [FaceKind, key: string];
  /** Where the piece itself is measured. */
  piece: readonly [FaceKind, key: string];
  /** The width with the pieces in place, mm. */
  width: (bareMm: number, pieceMm: readonly number[]) => number;
  sentence: (pieceMm: readonly number[]) => string;
  unmeasured: string;
  later: string;
}

const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0);

const widenings: readonly Widening[] = [
  {
    by: 'bottom-bracket-in-shell',
    of: 'crank-width',
    wide: ['shell', 'widthMm'],
    piece: ['bb-cup', 'flangeMm'],
    width: (bareMm, flangesMm) => bareMm + 2 * sum(flangesMm),
    sentence: (flangesMm) => `The flanges of the adapter add ${mmText(sum(flangesMm))} on each side.`,
    unmeasured: 'An adapter goes into the shell, and its flange width is not measured.',
    later: 'The flanges of the adapter make the shell wider: measure them when it is there.',
  },
  {
    by: 'axle-in-slot',
    of: 'hub-between-ends',
    wide: ['hub-spacing', 'spacingMm'],
    piece: ['axle', 'overCapsMm'],
    width: (_bareMm, overCapsMm) => overCapsMm.at(-1) ?? Number.NaN,
    sentence: (overCapsMm) =>
      `Over its end caps the hub measures ${mmText(overCapsMm.at(-1) ?? Number.NaN)}.`,
    unmeasured: 'The hub needs other end caps, and its width over them is not measured.',
    later: 'End caps change the width of the hub: measure over them when they are there.',
  },
];

/** The way over a joint that will be gone: one of pieces that are there, or else the best. */
function wayOf({ bridges }: Finding): Bridge | undefined {
  const inHand = ({ links }: Bridge): boolean =>
    links.length > 0 && links.every(({ adapter }) => adapter.partId !== null);
  return bridges.find(inHand) ?? bridges[0];
}

const sameParts = (one: Finding, other: Finding): boolean =>
  one.faces.every(({ partId }) => other.faces.some((face) => face.partId === partId));

/** The finding judged again with one of its faces as wide as the piece makes it. */
function judgedAnew(
  finding: Finding,
  parts: readonly PilePart[],
  widening: Widening,
  sizesMm: readonly number[],
): Finding {
  const [kind, key] = widening.wide;
  const faces = finding.faces.flatMap(({ partId, faceId }) => {
    const part = parts.find((one) => one.partId === partId);
    const face = part?.faces.find((one) => one.faceId === faceId);
    return part && face ? [faceInPlace(part, face)] : [];
  });
  const widened = faces.map((face): Face => {
    const bareMm = face.kind === kind ? readingOf(face, key)?.mid : undefined;
    if (bareMm === undefined) return face;
    const { [key]: _bare, ...measured } = face.measured;
    return { ...face, measured, nominal: { ...face.nominal, [key]: widening.width(bareMm, sizesMm) } };
  });
  const [one, other] = widened;
  const verdict = one && other && mates(one, other);
  if (!verdict) return finding;
  const { gapMm: _gap, asks, ...answer } = verdict;
  const [ours, theirs] = finding.faces;
  return {
    ...finding,
    ...answer,
    asks: ours && theirs ? asksOfPair(asks, { ...ours, kind: one.kind }, theirs) : [],
    because: `${widening.sentence(sizesMm)} ${answer.because}`,
  };
}

/**
 * A width as it will be with what goes between in place: flanges of an adapter in the bottom bracket shell,
 * end caps of a hub. Where the piece was not measured, the width is an open question.
 * @param finding any finding; those about no such width come back as they are
 * @param all the findings of the pile
 */
export function withWidthBetween(
  finding: Finding,
  all: readonly Finding[],
  parts: readonly PilePart[],
): Finding {
  const widening = widenings.find(({ of }) => of === finding.topic);
  const joint = all.find(
    (other) => other.topic === widening?.by && other.bridges.length > 0 && sameParts(finding, other),
  );
  const pieces = (joint && wayOf(joint)?.links.filter(({ adapter }) => adapter.sort === 'adapter')) ?? [];
  if (!widening || pieces.length === 0) return finding;
  const [kind, key] = widening.piece;
  const measured = pieces.flatMap(({ adapter, near, far }) => {
    const face = [near, far].find((one) => one.kind === kind);
    return face ? [{ partId: adapter.partId, face, sizeMm: readingOf(face, key)?.mid }] : [];
  });
  const sizesMm = measured.flatMap(({ sizeMm }) => (sizeMm === undefined ? [] : [sizeMm]));
  const refs = measured.flatMap(({ partId, face }) =>
    partId === null ? [] : [{ partId, faceId: face.faceId }],
  );
  const faces = [...finding.faces, ...refs];
  if (sizesMm.length === measured.length) return { ...judgedAnew(finding, parts, widening, sizesMm), faces };
  const asks: PlacedAsk[] = measured.flatMap(({ partId, face, sizeMm }) =>
    partId === null || sizeMm !== undefined ? [] : [askAt(partId, face, key)],
  );
  return {
    ...finding,
    faces,
    outcome: 'not-known',
    because: widening.unmeasured,
    bridges: [],
    asks,
    notes: asks.length > 0 ? [] : [widening.later],
  };
}

import { type Bridging, bridgingPart } from './bridges/shelfAdapter.ts';
import type { Face } from './faces/face.ts';
import { bridgingKinds, type PartKind } from './partKinds.ts';

/** A part as the fit check sees it. */
export interface PilePart {
  partId: string;
  kind: PartKind;
  name: string;
  faces: readonly Face[];
  /** Which wheel it belongs to, where a bike has two of the kind. */
  position?: 'front' | 'rear';
  /** For choosing among equals; left out when it was not weighed. */
  massG?: number;
  /** Already fitted and adjusted on this bike: preferred among equals. */
  adjusted?: boolean;
}

/** A face and whose it is. */
export interface FaceRef {
  partId: string;
  faceId: string;
}

const ends: Partial<Record<PartKind, 'front' | 'rear'>> = {
  frame: 'rear',
  fork: 'front',
  'front-hub': 'front',
  'rear-hub': 'rear',
};

/** The end of the bike a part belongs to, or undefined when it may be either or neither. */
export const endOf = (part: Pick<PilePart, 'kind' | 'position'>): 'front' | 'rear' | undefined =>
  ends[part.kind] ?? part.position;

/** Whether two parts can come to touch: a rear hub never meets a fork. */
export function mayTouch(one: PilePart, other: PilePart): boolean {
  const [a, b] = [endOf(one), endOf(other)];
  return a === undefined || b === undefined || a === b;
}

/** A face with what its place on the bike tells: an end that was not typed follows from the part it is on. */
export function faceInPlace(part: PilePart, face: Face): Face {
  const end = endOf(part);
  const placed = face.kind === 'axle-slot' || face.kind === 'end-spacing' || face.kind === 'disc-mount';
  return placed && end && !face.traits?.['end'] ? { ...face, traits: { ...face.traits, end } } : face;
}

/** The parts of a pile that go between others. */
export const shelfOf = (parts: readonly PilePart[]): Bridging[] =>
  parts
    .filter((part) => bridgingKinds.includes(part.kind))
    .map(bridgingPart)
    .filter((bridging) => bridging !== undefined);

import type { FaceKindRow } from './faceKind.ts';
import { driveFaces } from './faceKindsDrive.ts';
import { frameFaces } from './faceKindsFrame.ts';
import { steeringFaces } from './faceKindsSteering.ts';
import { wheelFaces } from './faceKindsWheel.ts';

const all = { ...steeringFaces, ...frameFaces, ...driveFaces, ...wheelFaces };

/** The kinds of places where parts meet. Stored in the journal: a kind is never renamed. */
export type FaceKind = keyof typeof all;

/** Per kind: what to measure, in the order of the hand, where the caliper goes, what is plausible. */
export const faceKinds: Record<FaceKind, FaceKindRow> = all;

export const faceKindIds = Object.keys(all) as FaceKind[];

import type { FaceKind } from '../../standards/faces/faceKinds.ts';

/** What touches the part: the jaws from outside or inside, the depth rod, or a rule laid along it. */
export type CaliperEnd = 'outside' | 'inside' | 'rod' | 'rule';

export interface CaliperShape {
  end: CaliperEnd;
  /** What is measured lies between these, on a drawing 220 wide; for the rod they count downwards. */
  from: number;
  to: number;
  /** Height a rule lies at, or the rod stands at from the left. */
  at?: number;
  /** Metal, cut or seen from the end. */
  metal: string;
  /** Taken out of the metal again. */
  hole?: string;
  /** How deep the jaws reach. */
  reach?: number;
}

const zigzag = (out: number, times: number): string => `l${-out} 5l${out} 5`.repeat(times);
const zigzagUp = (out: number, times: number): string => `l${out}-5l${-out}-5`.repeat(times);

/** A part drawn once for every way a caliper is laid on it. */
export const caliperShapes = {
  tube: { end: 'outside', from: 74, to: 146, metal: 'M110 30a36 36 0 1 0 0 72 36 36 0 1 0 0-72z', reach: 72 },
  thread: {
    end: 'outside',
    ...{ from: 74, to: 146, reach: 78 },
    metal: `M74 40${zigzag(-5, 6)}H146${zigzagUp(-5, 6)}z`,
  },
  square: { end: 'outside', from: 80, to: 140, metal: 'M80 40h60v60h-60z', reach: 76 },
  rail: { end: 'outside', from: 96, to: 124, metal: 'M110 52a14 14 0 1 0 0 28 14 14 0 1 0 0-28z', reach: 76 },
  plate: { end: 'outside', from: 101, to: 119, metal: 'M101 42h18v68h-18z', reach: 76 },
  tooth: { end: 'outside', from: 96, to: 124, metal: 'M96 106V58l8-16h12l8 16v48z', reach: 76 },
  length: { end: 'outside', from: 54, to: 166, metal: 'M54 50h112v46h-112z', reach: 80 },
  hub: {
    end: 'outside',
    ...{ from: 60, to: 160, reach: 72 },
    metal:
      'M24 72h172v10H24zM60 64h12v26H60zM148 64h12v26h-12zM76 44h8v66h-8zM136 44h8v66h-8zM84 66h52v22H84z',
  },
  bore: {
    end: 'inside',
    ...{ from: 76, to: 144, reach: 74 },
    metal: 'M110 18a48 48 0 1 0 0 96 48 48 0 1 0 0-96z',
    hole: 'M110 32a34 34 0 1 0 0 68 34 34 0 1 0 0-68z',
  },
  clamp: {
    end: 'inside',
    ...{ from: 80, to: 140, reach: 60 },
    metal: 'M110 10a42 42 0 1 0 0 84 42 42 0 1 0 0-84zM90 84h40v28H90z',
    hole: 'M110 22a30 30 0 1 0 0 60 30 30 0 1 0 0-60zM107 78h6v36h-6z',
  },
  threadedHole: {
    end: 'inside',
    ...{ from: 78, to: 142, reach: 82 },
    metal: `M28 40H78${zigzag(5, 6)}H28zM192 40H142${zigzag(-5, 6)}H192z`,
  },
  slot: {
    end: 'inside',
    ...{ from: 88, to: 132, reach: 68 },
    metal: 'M30 108V40H88V66a22 22 0 0 0 44 0V40H190V108z',
  },
  gap: {
    end: 'inside',
    ...{ from: 64, to: 156, reach: 82 },
    metal: 'M26 40H64V106H26zM194 40H156V106H194z',
  },
  rim: {
    end: 'inside',
    ...{ from: 64, to: 156, reach: 64 },
    metal: 'M46 38H64V66Q110 92 156 66V38H174V80Q110 124 46 80z',
  },
  height: { end: 'rod', from: 46, to: 90, at: 130, metal: 'M44 46H112V90H180V108H44z' },
  bolts: {
    end: 'rule',
    ...{ from: 84, to: 136, at: 38 },
    metal: 'M110 8a52 52 0 1 0 0 104 52 52 0 1 0 0-104z',
    hole: 'M84 32a6 6 0 1 0 0 12 6 6 0 1 0 0-12zM136 32a6 6 0 1 0 0 12 6 6 0 1 0 0-12zM84 76a6 6 0 1 0 0 12 6 6 0 1 0 0-12zM136 76a6 6 0 1 0 0 12 6 6 0 1 0 0-12zM110 44a16 16 0 1 0 0 32 16 16 0 1 0 0-32z',
  },
  holes: {
    end: 'rule',
    ...{ from: 68, to: 134, at: 44 },
    metal: 'M46 44h128v44h-128z',
    hole: 'M76 58a8 8 0 1 0 0 16 8 8 0 1 0 0-16zM142 58a8 8 0 1 0 0 16 8 8 0 1 0 0-16z',
  },
  centres: {
    end: 'rule',
    ...{ from: 62, to: 164, at: 62 },
    metal: 'M62 28a34 34 0 1 0 0 68 34 34 0 1 0 0-68zM164 44a18 18 0 1 0 0 36 18 18 0 1 0 0-36z',
  },
} as const satisfies Record<string, CaliperShape>;

export type CaliperShapeName = keyof typeof caliperShapes;

const ofKey: Readonly<Record<string, CaliperShapeName>> = {
  diameterMm: 'tube',
  boreMm: 'bore',
  boltCircleMm: 'bolts',
  holeSpacingMm: 'holes',
  stackMm: 'height',
  flangeMm: 'height',
  overCapsMm: 'hub',
  toothCentreMm: 'height',
  rotorGapMm: 'height',
  insertionMm: 'length',
  lengthMm: 'length',
  heightMm: 'length',
  systemWidthMm: 'length',
  tipMm: 'square',
  thicknessMm: 'plate',
  railMm: 'rail',
  railHeightMm: 'rail',
  innerWidthMm: 'rim',
  nearestMm: 'centres',
  farthestMm: 'centres',
  chainlineMm: 'centres',
};

/** Where a face wants its size taken in another way than most. */
const ofFace: Readonly<Partial<Record<FaceKind, Readonly<Record<string, CaliperShapeName>>>>> = {
  shell: { boreMm: 'threadedHole', widthMm: 'length' },
  'sprocket-mount': { boreMm: 'threadedHole' },
  'pedal-hole': { boreMm: 'threadedHole' },
  'bb-cup': { diameterMm: 'thread' },
  'driver-mount': { diameterMm: 'thread' },
  'pedal-spindle': { diameterMm: 'thread' },
  'valve-stem': { diameterMm: 'thread' },
  'steerer-clamp': { boreMm: 'clamp' },
  'bar-clamp': { boreMm: 'clamp', widthMm: 'length' },
  'lever-clamp': { boreMm: 'clamp' },
  'seat-clamp': { boreMm: 'clamp' },
  'valve-hole': { diameterMm: 'bore' },
  'axle-slot': { widthMm: 'slot' },
  'end-spacing': { spacingMm: 'gap' },
  'hub-spacing': { spacingMm: 'hub' },
  'hub-holes': { holeMm: 'bore' },
  'tyre-room': { widthMm: 'gap' },
  'tyre-bead': { widthMm: 'tube' },
  chain: { chainWidthMm: 'gap' },
  'ring-teeth': { chainWidthMm: 'tooth' },
  'sprocket-teeth': { chainWidthMm: 'tooth' },
};

/**
 * The drawing that shows how a size of a face is taken.
 * @param key dimension key of `faceKinds`
 * @returns undefined for what is counted or only printed
 * @example caliperShapeFor('steerer', 'diameterMm') //=> 'tube'
 */
export const caliperShapeFor = (kind: FaceKind, key: string): CaliperShapeName | undefined =>
  ofFace[kind]?.[key] ?? ofKey[key];

import type { Sourced } from './known.ts';

export type JointArea = 'steering' | 'brakes' | 'wheels' | 'drive' | 'saddle' | 'other';

/**
 * How the state of a joint shows: `turn` by pulling its fastener towards the target, `play` by rocking,
 * `look` by eye alone, `tension` by sound or gauge, `pressure` by a tyre gauge and the bead line.
 */
export type InspectAs = 'turn' | 'play' | 'look' | 'tension' | 'pressure';

export interface JointKindRow extends Sourced {
  readonly kind: string;
  readonly label: string;
  readonly area: JointArea;
  /** Failure can throw the rider: work on it revokes a release. */
  readonly matters: boolean;
  /** Fasteners to expect until the builder counts them; 0 where nothing is screwed. */
  readonly defaultFastenerCount: number;
  /** Sensible place in a build; lower comes first. Gaps leave room for new kinds. */
  readonly buildOrder: number;
  readonly inspectAs: InspectAs;
}

const practice = { source: 'common practice, no source', known: 'proposal' } as const;
const lockedByStandard = {
  source: 'ISO 4210-2:2014 excerpt, list of screws that need a locking device',
  known: 'seen',
} as const;
const retention = { source: '16 CFR 1512.12, wheel retention', known: 'seen' } as const;
const spokesComplete = { source: '16 CFR 1512.11, wheels', known: 'seen' } as const;

/** A row whose kind stays a literal, so that the kinds below become a union. */
const row = <K extends string>(
  kind: K,
  label: string,
  area: JointArea,
  weight: 'matters' | 'lesser',
  defaultFastenerCount: number,
  buildOrder: number,
  inspectAs: InspectAs,
  ground: Sourced = practice,
) => ({
  kind,
  label,
  area,
  matters: weight === 'matters',
  defaultFastenerCount,
  buildOrder,
  inspectAs,
  ...ground,
});

/** Every kind of joint a bike has here, in the order of a build. The source is the ground for `matters`. */
export const jointKinds = [
  row('spokes', 'Spokes', 'wheels', 'matters', 32, 10, 'tension', spokesComplete),
  row('bead', 'Tyre on rim', 'wheels', 'matters', 0, 20, 'pressure'),
  row('rotor', 'Rotor on hub', 'brakes', 'matters', 6, 30, 'turn', lockedByStandard),
  row('freewheel', 'Freewheel', 'drive', 'lesser', 0, 40, 'look'),
  row('sprocket', 'Sprocket', 'drive', 'lesser', 1, 42, 'turn'),
  // Matters because on a fixed wheel, or under a rotor, the lockring is part of a brake.
  row('lockring', 'Lockring', 'drive', 'matters', 1, 44, 'turn'),
  row('crown-race', 'Crown race', 'steering', 'matters', 0, 50, 'look'),
  row('headset', 'Headset', 'steering', 'matters', 1, 60, 'play'),
  row('fork', 'Fork', 'steering', 'matters', 0, 70, 'look'),
  row('stem-quill', 'Quill stem in steerer', 'steering', 'matters', 1, 80, 'turn'),
  row('stem-steerer', 'Stem on steerer', 'steering', 'matters', 2, 82, 'turn'),
  row('bottom-bracket', 'Bottom bracket', 'drive', 'lesser', 2, 90, 'play'),
  row('brake-mount', 'Brake mount or adapter', 'brakes', 'matters', 2, 100, 'turn', lockedByStandard),
  row('seatpost', 'Seatpost clamp', 'saddle', 'matters', 1, 110, 'turn'),
  row('saddle-rails', 'Saddle rails', 'saddle', 'matters', 2, 115, 'turn', lockedByStandard),
  row('front-axle', 'Front axle nuts', 'wheels', 'matters', 2, 120, 'turn', retention),
  row('thru-axle', 'Thru-axle', 'wheels', 'matters', 1, 122, 'turn', retention),
  row('rear-axle', 'Rear axle nuts', 'wheels', 'matters', 2, 124, 'turn', retention),
  row('chainring', 'Chainring', 'drive', 'lesser', 5, 130, 'turn'),
  row('crank', 'Crank on spindle', 'drive', 'matters', 1, 140, 'turn'),
  row('crank-pinch', 'Crank pinch bolts', 'drive', 'matters', 2, 142, 'turn'),
  row('pedal', 'Pedals', 'drive', 'matters', 2, 150, 'turn'),
  row('chain', 'Chain', 'drive', 'lesser', 0, 160, 'look'),
  row('bar-clamp', 'Bar in stem', 'steering', 'matters', 4, 170, 'turn'),
  row('lever-clamp', 'Lever on bar', 'brakes', 'matters', 1, 180, 'turn'),
  row('grip', 'Grip', 'steering', 'matters', 1, 185, 'turn'),
  row('caliper', 'Caliper', 'brakes', 'matters', 2, 190, 'turn', lockedByStandard),
  row('cable-anchor', 'Cable anchor', 'brakes', 'matters', 1, 200, 'look'),
  // A stay that fails can lock the front wheel.
  row('mudguard', 'Mudguard', 'other', 'matters', 4, 210, 'turn', lockedByStandard),
  row('rack', 'Rack', 'other', 'lesser', 4, 220, 'turn'),
  row('other', 'Another joint', 'other', 'lesser', 1, 230, 'turn'),
] satisfies readonly JointKindRow[];

export type JointKind = (typeof jointKinds)[number]['kind'];

const byKind = new Map<string, JointKindRow>(jointKinds.map((row) => [row.kind, row]));

/**
 * The row of one kind of joint.
 * @throws RangeError when there is no such kind
 * @example jointKindRow('rotor').defaultFastenerCount //=> 6
 */
export function jointKindRow(kind: JointKind): JointKindRow & { readonly kind: JointKind } {
  const row = byKind.get(kind);
  if (!row) throw new RangeError(`no such kind of joint: ${kind}`);
  return row as JointKindRow & { readonly kind: JointKind };
}

/** What its fasteners are called where they are no bolts. Common practice, no source. */
const counted: Partial<Record<JointKind, string>> = {
  ...{
    spokes: 'nipple',
    freewheel: 'freewheel',
    lockring: 'lockring',
    'bottom-bracket': 'cup',
    pedal: 'pedal',
  },
  ...{ 'front-axle': 'nut', 'rear-axle': 'nut', 'thru-axle': 'axle' },
};

/**
 * What the fasteners of a kind of joint are counted as; the plural takes an s.
 * @example countedAs('pedal') //=> 'pedal'
 */
export const countedAs = (kind: JointKind): string => counted[kind] ?? 'bolt';

/**
 * Whether a joint wants a wrench: it has fasteners that turn, or a torque was given for it. A tyre on its rim
 * does not.
 * @example wantsTorque({ kind: 'rotor', fasteners: [{ thread: 'M5', count: 6 }], targets: [] }) //=> true
 */
export function wantsTorque(joint: {
  kind: JointKind;
  fasteners: readonly unknown[];
  targets: readonly { torque?: unknown }[];
}): boolean {
  const screwed = joint.fasteners.length > 0 && jointKindRow(joint.kind).inspectAs === 'turn';
  return screwed || joint.targets.some(({ torque }) => torque !== undefined);
}

import type { ClampAbout, Fastener, JointAbout } from '../../journal/entries.ts';
import type { JointRow } from '../../journal/rows.ts';
import { parseNumber, parseTyped, type QuantityRefusal } from '../../mechanics/quantity.ts';
import { type LengthUnit, type Typed, unitsOf } from '../../mechanics/units.ts';
import { isBonded } from '../../planning/unsetBonds.ts';
import type { JointKind } from '../../standards/jointKinds.ts';
import { NO_MARK, propertyClasses } from '../../standards/screws/propertyClasses.ts';
import { bandsFor } from '../../standards/screws/torqueBands.ts';
import { clampFaces } from './jointFactsOf.ts';

/** What the computations of a joint ask for, as it is being typed; '' is not known. */
export interface Measures {
  variant: string;
  screw: string;
  propertyClass: string;
  female: string;
  onThread: string;
  grip: string;
  construction: string;
  tubeArm: string;
  boltArm: string;
  shim: string;
  rise: string;
  reach: string;
  extension: string;
  angle: string;
  bore: string;
  outside: string;
  unit: LengthUnit;
}

export type MeasureKey = Exclude<keyof Measures, 'unit'>;

interface ChoiceRow {
  key: MeasureKey;
  label: string;
  hint: string;
  options: readonly { value: string; label: string }[];
}
interface LengthRow {
  key: MeasureKey;
  label: string;
  hint: string;
  /** Whether it may count downwards or backwards. */
  signed?: true;
  /** A bare number with this mark behind its label. */
  bare?: true;
}
export type MeasureRow = ChoiceRow | LengthRow;

const named = (...pairs: [value: string, label: string][]) =>
  pairs.map(([value, label]) => ({ value, label }));

/** Asked where figures are printed for more than one make of such a joint. */
function makeRows(kind: JointKind): MeasureRow[] {
  const bands = bandsFor(kind);
  if (bands.length < 2) return [];
  return [
    {
      key: 'variant',
      label: 'Make of joint',
      hint: 'Each has a printed torque of its own.',
      options: bands.map(({ variant }) => ({ value: variant, label: variant })),
    },
  ];
}

const screwRows: readonly MeasureRow[] = [
  {
    key: 'screw',
    label: 'Bolt material',
    hint: 'Magnet test: steel sticks, stainless hardly, aluminium and titanium not.',
    options: named(
      ['steel', 'Steel'],
      ['stainless', 'Stainless steel'],
      ['aluminium', 'Aluminium'],
      ['titanium', 'Titanium'],
    ),
  },
  {
    key: 'propertyClass',
    label: 'Grade on its head',
    hint: 'No grade can mean 4.6 to 5.8; stainless, A2-50.',
    options: [
      { value: NO_MARK, label: 'No grade' },
      ...propertyClasses.map((row) => ({ value: row.propertyClass, label: row.propertyClass })),
    ],
  },
  {
    key: 'female',
    label: 'Threaded into',
    hint: 'A magnet at the mouth of the hole.',
    options: named(
      ['steel', 'Steel'],
      ['stainless', 'Stainless steel'],
      ['aluminium', 'Aluminium'],
      ['magnesium', 'Magnesium'],
      ['titanium', 'Titanium'],
      ['brass', 'Brass'],
      ['plastic', 'Plastic'],
    ),
  },
  {
    key: 'onThread',
    label: 'On the thread',
    hint: 'Take one out and wipe it on a white cloth.',
    options: named(
      ['none', 'Nothing, dry'],
      ['oil', 'Oil'],
      ['grease', 'Grease'],
      ['anti-seize', 'Anti-seize'],
      ['threadlocker-wet', 'Threadlocker'],
      ['wax', 'Wax'],
      ['moly', 'Molybdenum paste'],
    ),
  },
  { key: 'grip', label: 'Clamped length', hint: 'Underside of the head to the face with the thread.' },
];

const clampRows: readonly MeasureRow[] = [
  {
    key: 'construction',
    label: 'The clamp closes by',
    hint: 'Look at it from the end of the tube.',
    options: named(
      ['two-piece', 'Two halves, screws on both sides'],
      ['one-slit-flexible', 'One slit, thin body'],
      ['one-slit-stiff', 'One slit, thick body'],
    ),
  },
  {
    key: 'shim',
    label: 'Shim',
    hint: 'Only where there is one.',
    options: named(
      ['slit', 'Slit from end to end'],
      ['closed', 'A closed ring'],
      ['bonded', 'Bonded to the tube'],
    ),
  },
];
const armRows: readonly MeasureRow[] = [
  { key: 'tubeArm', label: 'Closed side to tube', hint: 'To the middle of the tube.' },
  { key: 'boltArm', label: 'Closed side to screw', hint: 'To the middle of the screw.' },
];
const barRows: readonly MeasureRow[] = [
  {
    key: 'rise',
    label: 'Hands above the clamp',
    hint: 'Middle of the grip; below it is minus.',
    signed: true,
  },
  {
    key: 'reach',
    label: 'Hands in front of the clamp',
    hint: 'Swept back is minus.',
    signed: true,
  },
];
const extensionRows: readonly MeasureRow[] = [
  {
    key: 'extension',
    label: 'Extension on the wrench',
    hint: 'Middle of the square to the middle of the screw.',
  },
  {
    key: 'angle',
    label: 'Its angle, degrees',
    hint: '0 straight out, 90 across, 180 folded back.',
    bare: true,
  },
];

const diameterRows: readonly MeasureRow[] = [
  { key: 'bore', label: 'Bore, measured', hint: 'Twice, a quarter turn apart.' },
  { key: 'outside', label: 'Outside of what goes in, measured', hint: 'Twice, a quarter turn apart.' },
];
/** Joints whose faces are pressed or slipped into one another. */
const pressed: readonly JointKind[] = ['headset', 'crown-race', 'bottom-bracket', 'other'];

/** The questions that make sense for a joint, in the order a hand answers them. */
export function rowsFor(
  { kind, fasteners, between }: Pick<JointRow, 'kind' | 'fasteners' | 'between'>,
  construction: string,
): MeasureRow[] {
  const into = pressed.includes(kind) || isBonded({ between }) ? diameterRows : [];
  if (fasteners.length === 0) return [...into];
  return [
    ...into,
    ...makeRows(kind),
    ...screwRows,
    ...(clampFaces[kind] ? clampRows : []),
    ...(clampFaces[kind] && construction === 'one-slit-stiff' ? armRows : []),
    ...(kind === 'bar-clamp' ? barRows : []),
    ...extensionRows,
  ];
}

/** What is recorded, laid out for typing. */
export function measuresOf({ fasteners, clamp, bar, extension, diameters }: JointRow): Measures {
  const [first] = fasteners;
  return {
    variant: first?.variant ?? '',
    screw: first?.screw ?? '',
    propertyClass: first?.propertyClass ?? '',
    female: first?.female ?? '',
    onThread: first?.onThread ?? '',
    construction: clamp?.construction ?? '',
    shim: clamp?.shim ?? '',
    // Each keeps its own unit in its own words, so that one unit of the form cannot change another's meaning.
    ...{
      grip: lengthText(first?.grip),
      tubeArm: lengthText(clamp?.tubeArm),
      boltArm: lengthText(clamp?.boltArm),
    },
    ...{
      rise: lengthText(bar?.rise),
      reach: lengthText(bar?.reach),
      extension: lengthText(extension?.length),
    },
    angle: extension ? String(extension.angleDeg) : '',
    bore: lengthText(diameters?.bore),
    outside: lengthText(diameters?.outside),
    unit: 'mm',
  };
}

const unitWords: Record<LengthUnit, string> = { mm: 'mm', cm: 'cm', '[in_i]': 'in' };
/** As typed, with its unit behind it unless it is there already. */
const lengthText = (typed: Typed<LengthUnit> | undefined): string =>
  typed === undefined
    ? ''
    : /[a-z"″]/i.test(typed.typed)
      ? typed.typed
      : `${typed.typed} ${unitWords[typed.unit]}`;

export type ReadMeasures =
  | { ok: true; about: Pick<JointAbout, 'fasteners' | 'clamp' | 'bar' | 'extension' | 'diameters'> }
  | { ok: false; wrong: Partial<Record<MeasureKey, QuantityRefusal>> };

/**
 * What was typed, as the logbook takes it; what is left empty is not known of the screws any more.
 * @param joint the joint it belongs to, whose fasteners it completes
 * @example readMeasures({ …, grip: '8,5' }, joint) //=> fasteners with grip { value: 8.5, unit: 'mm', typed: '8,5' }
 */
export function readMeasures(measures: Measures, joint: Pick<JointRow, 'fasteners'>): ReadMeasures {
  const wrong: Partial<Record<MeasureKey, QuantityRefusal>> = {};
  const length = (key: MeasureKey, below?: 'allow'): Typed<LengthUnit> | undefined => {
    if (measures[key].trim() === '') return undefined;
    const read = parseTyped(measures[key], unitsOf.length, measures.unit, below);
    if (read.ok) return read.quantity;
    wrong[key] = read.reason;
    return undefined;
  };
  const grip = length('grip');
  const [tubeArm, boltArm] = [length('tubeArm'), length('boltArm')];
  const [rise, reach] = [length('rise', 'allow'), length('reach', 'allow')];
  const extension = length('extension');
  const [bore, outside] = [length('bore'), length('outside')];
  const angle = measures.angle.trim() === '' ? undefined : parseNumber(measures.angle, 'allow');
  if (angle && !angle.ok) wrong.angle = angle.reason;
  for (const [one, other] of [
    ['rise', 'reach'],
    ['reach', 'rise'],
    ['extension', 'angle'],
    ['bore', 'outside'],
    ['outside', 'bore'],
  ] as const)
    if (measures[one].trim() === '' && measures[other].trim() !== '') wrong[one] = 'empty';
  if (measures.construction === '' && measures.shim !== '') wrong.construction = 'empty';
  if (Object.keys(wrong).length > 0) return { ok: false, wrong };
  const { variant, screw, propertyClass, female, onThread, construction, shim } = measures;
  const screws = {
    ...(screw ? { screw: screw as NonNullable<Fastener['screw']> } : {}),
    ...(propertyClass ? { propertyClass } : {}),
    ...(female ? { female: female as NonNullable<Fastener['female']> } : {}),
    ...(onThread ? { onThread: onThread as NonNullable<Fastener['onThread']> } : {}),
    ...(grip ? { grip } : {}),
    ...(variant ? { variant } : {}),
  };
  return {
    ok: true,
    about: {
      fasteners: joint.fasteners.map(({ thread, count, hand, words }) => ({
        ...{ thread, count, hand },
        ...(words ? { words } : {}),
        ...screws,
      })),
      ...(construction
        ? {
            clamp: {
              construction: construction as ClampAbout['construction'],
              ...(tubeArm ? { tubeArm } : {}),
              ...(boltArm ? { boltArm } : {}),
              ...(shim ? { shim: shim as NonNullable<ClampAbout['shim']> } : {}),
            },
          }
        : {}),
      ...(bore && outside ? { diameters: { bore, outside } } : {}),
      ...(rise && reach ? { bar: { rise, reach } } : {}),
      ...(extension ? { extension: { length: extension, angleDeg: angle?.ok ? angle.value : 0 } } : {}),
    },
  };
}

import { readingOf } from '../fit/faces/reading.ts';
import type { WheelAbout, WheelEar, WheelSideAbout } from '../journal/aboutWheels.ts';
import type { Described, Id, WheelPart } from '../journal/entries.ts';
import type { PartRow, WheelRow } from '../journal/rows.ts';
import { parseNumber, parseTyped } from '../mechanics/quantity.ts';
import {
  convert,
  type ForceUnit,
  type LengthUnit,
  type Typed,
  unitLabel,
  unitsOf,
} from '../mechanics/units.ts';
import { USUAL_EAR } from '../mechanics/wheels/spokeByEar.ts';
import { erdFromNipplesMm, erdFromRodsMm } from '../mechanics/wheels/spokeLengthErd.ts';
import { quantityRefusals } from '../words/quantityRefusals.ts';
import { describedAnew } from './describedAnew.ts';

/** One side of a wheel as it is being typed. */
export interface SideDraft {
  spokes: string;
  crosses: string;
  pcd: string;
  flange: string;
  lineOffset: string;
  thin: string;
  thick: string;
  bought: string;
}

/** A wheel as it is being typed; '' is not known. */
export interface WheelDraft {
  name: string;
  position: '' | 'front' | 'rear';
  hub: Id;
  rim: Id;
  spokes: Id;
  nipples: Id;
  drilling: WheelAbout['drilling'];
  pairGap: string;
  pairsLean: 'together' | 'apart';
  head: WheelAbout['head'];
  left: SideDraft;
  drive: SideDraft;
  firstSide: WheelAbout['firstSide'];
  erds: string[];
  erdEnd: NonNullable<WheelAbout['erdEnd']>;
  erdToEnd: string;
  /** Two rods in opposite holes, or two nipples: length of one, and the gap between them. */
  erdBy: 'rods' | 'nipples';
  erdPiece: string;
  erdGap: string;
  hubHole: string;
  rimOffset: string;
  stagger: string;
  target: string;
  limit: string;
  forceUnit: ForceUnit;
  gauge: { reading: string; tension: string }[];
  ends: WheelEar['ends'];
  sounds: WheelEar['sounds'];
  pitches: { reading: string; tension: string }[];
  note: string;
}

const noSide: SideDraft = {
  ...{ spokes: '16', crosses: '3', pcd: '', flange: '', lineOffset: '', thin: '', thick: '', bought: '' },
};

export const emptyWheel: WheelDraft = {
  ...{ name: '', position: '', hub: '', rim: '', spokes: '', nipples: '', drilling: 'even' },
  ...{ pairGap: '', pairsLean: 'together', head: 'elbow', left: noSide, drive: noSide, firstSide: 'drive' },
  ...{ erds: [''], erdEnd: 'nipple-slot', erdToEnd: '', hubHole: '', rimOffset: '', stagger: '' },
  ...{ erdBy: 'rods', erdPiece: '', erdGap: '' },
  ...{ target: '', limit: '', forceUnit: 'N', gauge: [], ...USUAL_EAR, pitches: [], note: '' },
};

/** A quantity as text that reads back as itself, whatever unit the field begins with. */
const asText = <U extends LengthUnit | ForceUnit>(of: Typed<U> | undefined, bare: U): string =>
  of === undefined
    ? ''
    : of.unit === bare || /[\p{L}"″]/u.test(of.typed)
      ? of.typed
      : `${of.typed} ${unitLabel[of.unit]}`;

const bareText = (value: number | undefined): string => (value === undefined ? '' : String(value));

const draftOfSide = (side: WheelSideAbout): SideDraft => ({
  spokes: bareText(side.spokes),
  crosses: bareText(side.crosses),
  pcd: asText(side.pcd, 'mm'),
  flange: asText(side.flange, 'mm'),
  lineOffset: asText(side.lineOffset, 'mm'),
  thin: asText(side.thin, 'mm'),
  thick: asText(side.thick, 'mm'),
  bought: asText(side.bought, 'mm'),
});

const partAs = (parts: readonly WheelPart[], as: WheelPart['as']): Id =>
  parts.find((one) => one.as === as)?.partId ?? '';

/** A wheel that is known, laid out for editing. */
export function draftOfWheel(wheel: WheelAbout): WheelDraft {
  const forceUnit = wheel.target?.unit ?? wheel.limit?.unit ?? 'N';
  return {
    name: wheel.name,
    position: wheel.position ?? '',
    hub: partAs(wheel.parts, 'hub'),
    rim: partAs(wheel.parts, 'rim'),
    spokes: partAs(wheel.parts, 'spokes'),
    nipples: partAs(wheel.parts, 'nipples'),
    drilling: wheel.drilling,
    pairGap: bareText(wheel.pairGapDeg),
    pairsLean: wheel.pairsLean ?? 'together',
    head: wheel.head,
    left: draftOfSide(wheel.leftSide),
    drive: draftOfSide(wheel.driveSide),
    firstSide: wheel.firstSide,
    erds: wheel.erds?.length ? wheel.erds.map((erd) => asText(erd, 'mm')) : [''],
    erdEnd: wheel.erdEnd ?? 'nipple-slot',
    erdToEnd: asText(wheel.erdToEnd, 'mm'),
    ...{ erdBy: 'rods', erdPiece: '', erdGap: '' },
    hubHole: asText(wheel.hubHole, 'mm'),
    rimOffset: asText(wheel.rimOffset, 'mm'),
    stagger: asText(wheel.stagger, 'mm'),
    target: asText(wheel.target, forceUnit),
    limit: asText(wheel.limit, forceUnit),
    forceUnit,
    gauge: (wheel.gauge ?? []).map(({ reading, tensionN }) => ({
      reading: bareText(reading),
      tension: bareText(tensionN),
    })),
    ends: (wheel.ear ?? USUAL_EAR).ends,
    sounds: (wheel.ear ?? USUAL_EAR).sounds,
    pitches: (wheel.ear?.known ?? []).map(({ hz, tensionN }) => ({
      reading: bareText(hz),
      tension: bareText(tensionN),
    })),
    note: wheel.note ?? '',
  };
}

/** A field of the form; those of a side carry its name. */
export type WheelField = string;
export type WheelFormRead =
  | { ok: true; about: WheelAbout }
  | { ok: false; wrong: Record<WheelField, string> };

/** Reads the fields of a form one by one and keeps a sentence for each that cannot be taken. */
function fieldReader() {
  const wrong: Record<WheelField, string> = {};
  const typed = <U extends LengthUnit | ForceUnit>(
    field: WheelField,
    text: string,
    units: readonly U[],
    unit: U,
    below: 'refuse' | 'allow' = 'refuse',
  ): Typed<U> | undefined => {
    if (text.trim() === '') return undefined;
    const read = parseTyped(text, units, unit as NoInfer<U>, below);
    if (read.ok) return read.quantity;
    wrong[field] = quantityRefusals[read.reason];
    return undefined;
  };
  const length = (field: WheelField, text: string, below?: 'allow') =>
    typed<LengthUnit>(field, text, unitsOf.length, 'mm', below);
  const number = (field: WheelField, text: string): number | undefined => {
    if (text.trim() === '') return undefined;
    const read = parseNumber(text);
    if (read.ok) return read.value;
    wrong[field] = quantityRefusals[read.reason];
    return undefined;
  };
  const count = (field: WheelField, text: string, [least, most]: readonly [number, number]): number => {
    const value = number(field, text);
    const fits = value !== undefined && Number.isInteger(value) && value >= least && value <= most;
    if (!fits && !wrong[field]) wrong[field] = `Enter a whole number from ${least} to ${most}.`;
    return fits ? value : least;
  };
  return { wrong, typed, length, number, count };
}

/** Fields of `from` that are known. */
const known = <T extends object>(from: { [K in keyof T]: T[K] | undefined }): Partial<T> =>
  Object.fromEntries(Object.entries(from).filter(([, value]) => value !== undefined)) as Partial<T>;

/** How the wheel is listened to; nothing where that is the usual way and no tension is known. */
function earOf(
  { ends, sounds }: WheelDraft,
  rows: readonly { reading: number; tensionN: number }[],
): WheelEar | undefined {
  const known = rows.map(({ reading, tensionN }) => ({ hz: reading, tensionN }));
  if (known.length > 0) return { ends, sounds, known };
  return ends === USUAL_EAR.ends && sounds === USUAL_EAR.sounds ? undefined : { ends, sounds };
}

/**
 * What was typed of a wheel, as the logbook takes it; empty fields stay unknown.
 * @param others parts of the wheel that the form does not ask for, as its tyre: they stay
 * @returns the wheel, or a sentence for each field that cannot be taken
 * @example readWheelForm({ ...emptyWheel, name: 'Rear' }).ok //=> true
 */
export function readWheelForm(draft: WheelDraft, others: readonly WheelPart[] = []): WheelFormRead {
  const { wrong, typed, length, number, count } = fieldReader();
  const sideOf = (name: 'left' | 'drive'): WheelSideAbout => {
    const side = draft[name];
    return {
      spokes: count(`${name}.spokes`, side.spokes, [4, 36]),
      crosses: count(`${name}.crosses`, side.crosses, [0, 9]),
      ...known<Omit<WheelSideAbout, 'spokes' | 'crosses'>>({
        pcd: length(`${name}.pcd`, side.pcd),
        flange: length(`${name}.flange`, side.flange, 'allow'),
        lineOffset:
          draft.head === 'straight-pull' ? length(`${name}.lineOffset`, side.lineOffset) : undefined,
        thin: length(`${name}.thin`, side.thin),
        thick: length(`${name}.thick`, side.thick),
        bought: length(`${name}.bought`, side.bought),
      }),
    };
  };
  const force = (field: WheelField, text: string) =>
    typed<ForceUnit>(field, text, unitsOf.force, draft.forceUnit);
  const erds = draft.erds.flatMap((text, at) => length(`erds.${at}`, text) ?? []);
  const rowsOf = (name: 'gauge' | 'pitches') =>
    draft[name].flatMap((row, at) => {
      if (row.reading.trim() === '' && row.tension.trim() === '') return [];
      const reading = number(`${name}.${at}`, row.reading);
      const tensionN = number(`${name}.${at}`, row.tension);
      if (reading !== undefined && tensionN !== undefined && reading > 0) return [{ reading, tensionN }];
      wrong[`${name}.${at}`] ??= 'Enter a reading above 0 and its tension.';
      return [];
    });
  const gauge = rowsOf('gauge');
  if (draft.name.trim() === '') wrong['name'] = 'Enter a name.';
  const kept = others.filter(({ as }) => !['hub', 'rim', 'spokes', 'nipples'].includes(as));
  const parts = [
    ...(['hub', 'rim', 'spokes', 'nipples'] as const).flatMap((as) =>
      draft[as] === '' ? [] : [{ as, partId: draft[as] }],
    ),
    ...kept,
  ];
  const uneven = draft.drilling !== 'even';
  const about: WheelAbout = {
    name: draft.name.trim(),
    ...(draft.position === '' ? {} : { position: draft.position }),
    ...{ parts, drilling: draft.drilling, head: draft.head, firstSide: draft.firstSide },
    ...{ leftSide: sideOf('left'), driveSide: sideOf('drive') },
    ...known<Partial<WheelAbout>>({
      pairGapDeg: draft.drilling === 'paired' ? number('pairGap', draft.pairGap) : undefined,
      pairsLean: uneven ? draft.pairsLean : undefined,
      erds: erds.length > 0 ? erds : undefined,
      erdEnd: erds.length > 0 ? draft.erdEnd : undefined,
      erdToEnd: length('erdToEnd', draft.erdToEnd, 'allow'),
      hubHole: length('hubHole', draft.hubHole),
      rimOffset: length('rimOffset', draft.rimOffset, 'allow'),
      stagger: length('stagger', draft.stagger, 'allow'),
      target: force('target', draft.target),
      limit: force('limit', draft.limit),
      gauge: gauge.length > 0 ? gauge : undefined,
      ear: earOf(draft, rowsOf('pitches')),
      note: draft.note.trim() || undefined,
    }),
  };
  return Object.keys(wrong).length > 0 ? { ok: false, wrong } : { ok: true, about };
}

const unknowable = [
  ...(['position', 'pairGapDeg', 'pairsLean', 'erds', 'erdEnd', 'erdToEnd', 'hubHole'] as const),
  ...(['rimOffset', 'stagger', 'target', 'limit', 'gauge', 'ear', 'note'] as const),
];

/** What the form changes about a wheel that is known. @example changedWheel(wheel, { ...wheel }) //=> {} */
export const changedWheel = (wheel: WheelRow, about: WheelAbout): Described<WheelAbout> =>
  describedAnew<WheelAbout>(wheel, about, unknowable);

/**
 * The form with what the measured parts tell, where nothing was typed yet.
 * @param draft as typed so far
 * @param parts hub and rim that were chosen
 * @example filledFromParts({ ...emptyWheel, rim: 'r' }, [rimOf567]).erds //=> ['567']
 */
export function filledFromParts(draft: WheelDraft, parts: readonly PartRow[]): WheelDraft {
  const size = (partId: Id, face: string, key: string): string => {
    const part = parts.find((one) => one.partId === partId);
    const found = part?.faces?.find(({ kind }) => kind === face);
    if (!found) return '';
    const measured = found.measured[key];
    if (measured && measured.unit !== 'bar' && measured.unit !== '1')
      return asText({ ...measured, unit: measured.unit }, 'mm');
    return bareText(readingOf(found, key)?.mid);
  };
  const sideOf = (name: 'left' | 'drive'): SideDraft => {
    const side = draft[name];
    const holes = Number(
      size(draft.hub, 'hub-holes', 'holesCount') || size(draft.rim, 'rim-holes', 'holesCount'),
    );
    const counted = holes > 0 && holes % 2 === 0 && side.spokes === noSide.spokes;
    return {
      ...side,
      spokes: counted && draft.drilling === 'even' ? String(holes / 2) : side.spokes,
      pcd: side.pcd || size(draft.hub, 'hub-holes', `${name}CircleMm`),
      flange: side.flange || size(draft.hub, 'hub-holes', `${name}FlangeMm`),
    };
  };
  return {
    ...draft,
    left: sideOf('left'),
    drive: sideOf('drive'),
    erds: draft.erds.some((erd) => erd !== '') ? draft.erds : [size(draft.rim, 'rim-holes', 'erdMm')],
    hubHole: draft.hubHole || size(draft.hub, 'hub-holes', 'holeMm'),
  };
}

/**
 * The effective rim diameter by two pieces in opposite holes, as text for its field.
 * @returns the diameter in mm, a sentence where a figure cannot be, or nothing while one is missing
 * @example erdByPieces({ erdBy: 'rods', erdPiece: '200', erdGap: '184' }) //=> { ok: true, mm: 584 }
 */
export function erdByPieces({
  erdBy,
  erdPiece,
  erdGap,
}: Pick<WheelDraft, 'erdBy' | 'erdPiece' | 'erdGap'>):
  | { ok: true; mm: number }
  | { ok: false; sentence: string }
  | undefined {
  if (erdPiece.trim() === '' || erdGap.trim() === '') return undefined;
  const [piece, gap] = [erdPiece, erdGap].map((text) => parseTyped(text, unitsOf.length, 'mm'));
  if (!piece?.ok || !gap?.ok) return { ok: false, sentence: 'Enter both lengths in mm or inches.' };
  const [pieceMm, gapMm] = [piece, gap].map(({ quantity: { value, unit } }) => convert(value, unit, 'mm'));
  try {
    const mm = erdBy === 'rods' ? erdFromRodsMm(pieceMm!, gapMm!) : erdFromNipplesMm(gapMm!, pieceMm!);
    return { ok: true, mm };
  } catch {
    const most =
      erdBy === 'rods' ? '20 to 400 mm with up to 700 mm between' : '5 to 30 mm with 60 to 800 mm between';
    return {
      ok: false,
      sentence: `A ${erdBy === 'rods' ? 'rod' : 'nipple'} is ${most}. Check both figures.`,
    };
  }
}

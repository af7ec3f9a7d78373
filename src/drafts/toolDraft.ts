import type { Described, ToolAbout } from '../journal/entries.ts';
import type { ToolRow } from '../journal/rows.ts';
import { parseNumber, parseTyped } from '../mechanics/quantity.ts';
import { convert, type TorqueUnit, torqueFromNm, torqueNm, unitsOf } from '../mechanics/units.ts';
import type { ToolClass } from '../standards/screws/toolClasses.ts';
import { describedAnew } from './describedAnew.ts';

/** A tool as it is being typed. */
export interface ToolDraft {
  name: string;
  min: string;
  max: string;
  unit: TorqueUnit;
  /** Tolerance class in per cent. */
  tolerance: string;
  /** Null where it was never checked, or the day is not known. */
  lastCheckMs: number | null;
  checkBasis: NonNullable<ToolAbout['checkBasis']>;
  everyDays: string;
  /** Kind of tool; '' is not said. */
  toolClass: ToolClass | '';
  lever: string;
  uses: string;
  note: string;
}

export const emptyTool = (unit: TorqueUnit): ToolDraft => ({
  ...{ name: '', min: '', max: '', unit, tolerance: '', checkBasis: 'unknown', everyDays: '', note: '' },
  ...{ toolClass: '', lever: '', uses: '', lastCheckMs: null },
});

/** At most four decimals: enough to bring every typed figure back after its way through N·m. */
const figure = (value: number | undefined) => (value === undefined ? '' : String(Number(value.toFixed(4))));

/** A tool that is known, laid out for editing in a unit. */
export function draftOfTool(tool: ToolRow, unit: TorqueUnit): ToolDraft {
  const inUnit = (nm: number | undefined) => figure(nm === undefined ? undefined : torqueFromNm(nm, unit));
  return {
    name: tool.name,
    min: inUnit(tool.minNm),
    max: inUnit(tool.maxNm),
    unit,
    tolerance: figure(tool.tolerancePercent),
    lastCheckMs: tool.lastCheckMs ?? null,
    checkBasis: tool.checkBasis ?? 'unknown',
    everyDays: figure(tool.checkEveryDays),
    toolClass: tool.toolClass ?? '',
    // With its unit, so that it reads back as it was whatever the field begins with.
    lever: tool.lever ? `${figure(convert(tool.lever.value, tool.lever.unit, 'mm'))} mm` : '',
    uses: figure(tool.cyclesSinceCheck),
    note: tool.note ?? '',
  };
}

export type ToolField = 'min' | 'max' | 'tolerance' | 'everyDays' | 'lever' | 'uses';
export type ReadTool = { ok: true; about: ToolAbout } | { ok: false; wrong: ToolField; sentence: string };

const asked: Record<ToolField, string> = {
  min: 'Type the lowest torque in digits, or leave it empty.',
  max: 'Type the highest torque in digits, or leave it empty.',
  tolerance: 'Type the per cent in digits, or leave it empty.',
  everyDays: 'Type the days in digits, or leave it empty.',
  lever: 'Type the length in digits, or leave it empty.',
  uses: 'Type the count in digits, or leave it empty.',
};

function bare(text: string): number | undefined | 'wrong' {
  if (text.trim() === '') return undefined;
  const read = parseNumber(text);
  return read.ok ? read.value : 'wrong';
}

/**
 * What was typed of a tool, as the logbook takes it; empty fields stay unknown.
 * @example readTool({ ...emptyTool('N.m'), name: 'Click wrench', min: '2', max: '24' }) //=> ok, minNm 2, maxNm 24
 */
export function readTool(draft: ToolDraft): ReadTool {
  const torque = (text: string): number | undefined | 'wrong' => {
    if (text.trim() === '') return undefined;
    const read = parseTyped(text, unitsOf.torque, draft.unit);
    return read.ok ? torqueNm(read.quantity.value, read.quantity.unit) : 'wrong';
  };
  const lever = draft.lever.trim() === '' ? undefined : parseTyped(draft.lever, unitsOf.length, 'mm');
  const read = {
    min: torque(draft.min),
    max: torque(draft.max),
    tolerance: bare(draft.tolerance),
    everyDays: bare(draft.everyDays),
    lever: lever && !lever.ok ? ('wrong' as const) : undefined,
    uses: bare(draft.uses),
  };
  for (const field of Object.keys(read) as ToolField[]) {
    if (read[field] === 'wrong') return { ok: false, wrong: field, sentence: asked[field] };
  }
  const known = <K extends string>(name: K, value: number | undefined | null | 'wrong') =>
    (typeof value === 'number' ? { [name]: value } : {}) as Partial<Record<K, number>>;
  return {
    ok: true,
    about: {
      name: draft.name.trim(),
      ...known('minNm', read.min),
      ...known('maxNm', read.max),
      ...known('tolerancePercent', read.tolerance),
      ...known('lastCheckMs', draft.lastCheckMs),
      ...known('checkEveryDays', read.everyDays),
      ...known('cyclesSinceCheck', read.uses),
      ...(draft.toolClass ? { toolClass: draft.toolClass } : {}),
      ...(lever?.ok ? { lever: lever.quantity } : {}),
      checkBasis: draft.checkBasis,
      ...(draft.note.trim() ? { note: draft.note.trim() } : {}),
    },
  };
}

const unknowable = [
  ...(['minNm', 'maxNm', 'tolerancePercent', 'lastCheckMs', 'checkEveryDays'] as const),
  ...(['toolClass', 'cyclesSinceCheck', 'lever', 'note'] as const),
];

/**
 * What the form changes about a tool that is known. Figures come back from another unit a hair off what they
 * were; then they count as unchanged.
 */
export function changedTool(tool: ToolRow, about: ToolAbout): Described<ToolAbout> {
  const near = (was: number | undefined, is: number | undefined) =>
    was !== undefined && is !== undefined && Math.abs(is - was) <= was * 1e-3;
  const mm = (lever: ToolAbout['lever']) => lever && convert(lever.value, lever.unit, 'mm');
  return describedAnew<ToolAbout>(
    tool,
    {
      ...about,
      ...(near(tool.minNm, about.minNm) ? { minNm: tool.minNm } : {}),
      ...(near(tool.maxNm, about.maxNm) ? { maxNm: tool.maxNm } : {}),
      ...(near(mm(tool.lever), mm(about.lever)) ? { lever: tool.lever } : {}),
    },
    unknowable,
  );
}

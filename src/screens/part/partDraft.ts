import type { Face } from '../../fit/face.ts';
import type { Id, Origin, PartAbout } from '../../journal/entries.ts';
import type { PartRow } from '../../journal/rows.ts';
import { parseNumber } from '../../mechanics/quantity.ts';
import { draftOfFace, type FaceDraft, faceOfDraft, faceSaid, faceUnreadable } from './faceDraft.ts';

/** The form of a part. */
export interface PartDraft {
  /** Undefined until somebody types one: the next free label stands there. */
  label?: string;
  name: string;
  kind: string;
  position: '' | 'front' | 'rear';
  serial: string;
  origin: Origin;
  originWords: string;
  condition: string;
  unknown: string;
  note: string;
  mass: string;
  km: string;
  kmUnknown: boolean;
  faces: FaceDraft[];
}

export const emptyPart: PartDraft = {
  name: '',
  kind: '',
  position: '',
  serial: '',
  origin: 'unknown',
  originWords: '',
  condition: '',
  unknown: '',
  note: '',
  mass: '',
  km: '',
  kmUnknown: false,
  faces: [],
};

/** A part of the logbook as a form. */
export function draftOfPart(part: PartRow): PartDraft {
  const { label, name, kind, position = '', serial = '', origin, originWords = '', faces = [] } = part;
  const { condition = '', unknown = '', note = '', massG, kmBefore } = part;
  return {
    ...{ label, name, kind, position, serial, origin, originWords, condition, unknown, note },
    mass: massG === undefined ? '' : String(massG),
    km: typeof kmBefore === 'number' ? String(kmBefore) : '',
    kmUnknown: kmBefore === 'unknown',
    faces: faces.map(draftOfFace),
  };
}

export interface PartTrouble {
  name?: string;
  label?: string;
  kind?: string;
  mass?: string;
  km?: string;
  faces?: string;
}

const number = (text: string): number | undefined => {
  const read = parseNumber(text);
  return read.ok ? read.value : undefined;
};

/**
 * What keeps the form from being saved, by field.
 * @param taken name of the part that carries the label already
 */
export function troubleOf(draft: PartDraft, taken: string | undefined): PartTrouble {
  const trouble: PartTrouble = {};
  if (draft.name.trim() === '') trouble.name = 'It needs a name.';
  if (draft.kind === '') trouble.kind = 'Choose what it is; “other part” is a choice too.';
  if (taken !== undefined) trouble.label = `That label is on ${taken}. Choose a free one.`;
  if (draft.mass.trim() !== '' && !number(draft.mass)) trouble.mass = 'A mass in grams, or nothing.';
  if (!draft.kmUnknown && draft.km.trim() !== '' && number(draft.km) === undefined)
    trouble.km = 'A distance in km, or say that nobody knows.';
  if (draft.faces.some(faceUnreadable)) trouble.faces = 'A size cannot be read. Mend it or empty it.';
  return trouble;
}

/** What the draft says of the part. Texts emptied in the form stay as empty texts, so that they replace the old ones. */
export function aboutOfDraft(draft: PartDraft, label: string, photoIds: Id[]): PartAbout {
  const faces: Face[] = draft.faces.filter(faceSaid).map(faceOfDraft);
  const massG = number(draft.mass);
  const kmBefore = draft.kmUnknown ? ('unknown' as const) : number(draft.km);
  const { kind, origin, position } = draft;
  return {
    ...{ label: label.trim(), name: draft.name.trim(), kind, origin, faces, photoIds },
    serial: draft.serial.trim(),
    originWords: draft.originWords.trim(),
    condition: draft.condition.trim(),
    unknown: draft.unknown.trim(),
    note: draft.note.trim(),
    ...(position === '' ? {} : { position }),
    ...(massG === undefined ? {} : { massG }),
    ...(kmBefore === undefined ? {} : { kmBefore }),
  };
}

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

/** The fields that read differently from the part as it is; empty where nothing was ever said count as the same. */
export function changedAbout(part: PartRow, about: PartAbout): Partial<PartAbout> {
  const changed = Object.entries(about).filter(([field, value]) => {
    const old = part[field as keyof PartAbout];
    const said = Array.isArray(value) ? value.length > 0 : value !== '';
    return old === undefined ? said : !same(old, value);
  });
  return Object.fromEntries(changed);
}

/** The fields worth writing down of a part that is new. */
export function saidAbout(about: PartAbout): PartAbout {
  const said = Object.entries(about).filter(
    ([field, value]) => field === 'label' || (Array.isArray(value) ? value.length > 0 : value !== ''),
  );
  return Object.fromEntries(said) as unknown as PartAbout;
}

import type { Face } from '../fit/faces/face.ts';
import type { Described, Id, Origin, PartAbout } from '../journal/entries.ts';
import type { PartRow } from '../journal/rows.ts';
import { parseNumber } from '../mechanics/quantity.ts';
import { describedAnew } from './describedAnew.ts';
import { draftOfFace, type FaceDraft, faceOfDraft, faceSaid, faceUnreadable } from './faceDraft.ts';

/** The form of a part. */
export interface PartDraft {
  /** Undefined until one is typed: the next free label stands there. */
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

/** The most the journal takes. */
const HEAVIEST_G = 100_000;
const FARTHEST_KM = 1_000_000;

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
  if (draft.name.trim() === '') trouble.name = 'Enter a name.';
  if (draft.kind === '') trouble.kind = 'Choose a type; “Other part” is fine.';
  if (taken !== undefined) trouble.label = `That label is on ${taken}. Choose a free one.`;
  const massG = number(draft.mass);
  if (draft.mass.trim() !== '' && !massG)
    trouble.mass = 'Type the grams in digits alone, as 820 or 820,5, or leave it empty.';
  else if (massG !== undefined && massG > HEAVIEST_G)
    trouble.mass = 'No part of a bike weighs over 100 kg. The mass is in grams.';
  const km = draft.kmUnknown ? undefined : number(draft.km);
  if (!draft.kmUnknown && draft.km.trim() !== '' && km === undefined)
    trouble.km = 'Type the km in digits alone, or mark it as unknown.';
  else if (km !== undefined && km > FARTHEST_KM)
    trouble.km = 'More than a million km cannot be right. Check the number.';
  if (draft.faces.some(faceUnreadable)) trouble.faces = 'A size cannot be read. Correct it or clear it.';
  return trouble;
}

/** What the draft says of the part. Texts emptied in the form stay as empty texts. */
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

const unknowable = [
  ...(['serial', 'originWords', 'condition', 'unknown', 'note'] as const),
  ...(['faces', 'position', 'massG', 'kmBefore'] as const),
];

/** What the form changes about the part as it is; nothing of a field that was not touched. */
export function changedAbout(part: PartRow, about: PartAbout): Described<PartAbout> {
  const untouched = aboutOfDraft(draftOfPart(part), part.label, part.photoIds ?? []);
  return describedAnew<PartAbout>(untouched, about, unknowable);
}

/** The fields worth writing down of a part that is new. */
export function saidAbout(about: PartAbout): PartAbout {
  const filled = Object.entries(about).filter(
    ([field, value]) => field === 'label' || (Array.isArray(value) ? value.length > 0 : value !== ''),
  );
  return Object.fromEntries(filled) as unknown as PartAbout;
}

import type { Face } from '../fit/faces/face.ts';
import { standardsFor } from '../fit/faces/standardOf.ts';
import { type PartKind, partKinds } from '../fit/partKinds.ts';
import { type FaceKind, faceKindIds, faceKinds } from '../standards/faces/faceKinds.ts';
import { printedSize, readSize, type SizeDraft, type SizeUnit, unitsFor } from './sizeDraft.ts';

/** A face as it stands in the form. */
export interface FaceDraft {
  faceId: string;
  kind: FaceKind;
  /** Row of a standards table; null means measured only. */
  standard: string | null;
  sizes: Record<string, SizeDraft>;
  traits: Record<string, string>;
  notes: string;
  /** Printed sizes that stand behind a measured one and are not in the form. */
  behind: Record<string, number>;
}

export const emptyFace = (faceId: string, kind: FaceKind): FaceDraft => ({
  faceId,
  kind,
  standard: null,
  sizes: {},
  traits: {},
  notes: '',
  behind: {},
});

/** The unit a size begins with. */
export function firstUnit(
  key: string,
  chosen: { lengthUnit: SizeUnit; pressureUnit: SizeUnit },
): SizeUnit | undefined {
  const units = unitsFor(key);
  if (units.length === 0) return undefined;
  return [chosen.lengthUnit, chosen.pressureUnit].find((unit) => units.includes(unit)) ?? units[0];
}

/** A stored face as a draft, every size as it was typed. */
export function draftOfFace({ faceId, kind, standard, nominal, measured, traits, notes }: Face): FaceDraft {
  const sizes: Record<string, SizeDraft> = {};
  const behind: Record<string, number> = {};
  for (const [key, value] of Object.entries(nominal)) {
    if (measured[key]) behind[key] = value;
    else sizes[key] = { typed: String(value), unit: unitsFor(key)[0], printed: true };
  }
  for (const [key, { typed, unit }] of Object.entries(measured)) {
    sizes[key] = { typed, unit: unit === '1' ? undefined : unit };
  }
  return { faceId, kind, standard, sizes, traits: { ...traits }, notes: notes ?? '', behind };
}

/** Whether anything was filled in about the face. */
export function faceSaid({ standard, sizes, traits, notes }: FaceDraft): boolean {
  return (
    standard !== null ||
    notes.trim() !== '' ||
    Object.values(traits).some(Boolean) ||
    Object.values(sizes).some(({ typed }) => typed.trim() !== '')
  );
}

/** The face a draft stands for; sizes that cannot be read are left out (the form does not save while there are any). */
export function faceOfDraft({ faceId, kind, standard, sizes, traits, notes, behind }: FaceDraft): Face {
  const face: Face = { faceId, kind, standard, nominal: { ...behind }, measured: {} };
  for (const [key, size] of Object.entries(sizes)) {
    const read = readSize(kind, key, size);
    if (read.is !== 'good' && read.is !== 'doubt') continue;
    if (size.printed) face.nominal[key] = printedSize(read.measured);
    else face.measured[key] = read.measured;
  }
  const looked = Object.entries(traits).filter(([, value]) => value !== '');
  if (looked.length > 0) face.traits = Object.fromEntries(looked);
  if (notes.trim() !== '') face.notes = notes.trim();
  return face;
}

/** Whether a size in it is no number at all. */
export const faceUnreadable = ({ kind, sizes }: FaceDraft): boolean =>
  Object.entries(sizes).some(([key, size]) => readSize(kind, key, size).is === 'wrong');

/** The faces a kind of part has; an adapter, shim or odd part may have any. */
export function facesOfKind(kind: string): readonly FaceKind[] {
  return partKinds[kind as PartKind]?.faces ?? [];
}

/** Kinds of faces that may be added to a part that has none of its own. @example facesToAdd('shim').length > 0 //=> true */
export const facesToAdd = (kind: string): readonly FaceKind[] =>
  kind !== '' && facesOfKind(kind).length === 0 ? faceKindIds : [];

/** How much of a face is known, for the folded line. @example faceState(emptyFace('f', 'shell')) //=> 'not measured' */
export function faceState(draft: FaceDraft): string {
  if (!faceSaid(draft)) return 'not measured';
  const { dimensions } = faceKinds[draft.kind];
  const given = dimensions.filter(({ key }) => draft.sizes[key]?.typed.trim()).length;
  const named = standardsFor(draft.kind).find(({ id }) => id === draft.standard)?.label;
  return named ?? `${given} of ${dimensions.length}`;
}

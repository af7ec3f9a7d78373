import type { Face } from '../fit/faces/face.ts';
import { standardOf } from '../fit/faces/standardOf.ts';
import { bareNumber } from '../mechanics/numberText.ts';
import type { AnyUnit, Typed } from '../mechanics/units.ts';
import { faceKinds } from '../standards/faces/faceKinds.ts';
import { quantityWords } from './phrases.ts';

/** A printed size with the unit its key ends in. @example printedText('boreMm', 30.1) //=> '30.1 mm' */
function printedText(key: string, value: number): string {
  if (key.endsWith('Mm')) return `${value} mm`;
  return key.endsWith('Bar') ? `${bareNumber(value)} bar` : bareNumber(value);
}

/**
 * What is known of a face: its standard by name, its sizes as measured or as printed, what a look told.
 * @returns 'not measured' where nothing is known
 * @example faceKnown(steererMeasured) //=> 'outside diameter 28,6 mm'
 */
export function faceKnown(face: Face): string {
  const { kind, standard, nominal, measured, traits } = face;
  const row = faceKinds[kind];
  const sizes = row.dimensions.flatMap(({ key, label }) => {
    const typed = measured[key];
    if (typed)
      return [`${label} ${typed.unit === '1' ? typed.typed : quantityWords(typed as Typed<AnyUnit>)}`];
    const printed = nominal[key];
    return printed === undefined ? [] : [`${label} ${printedText(key, printed)} (printed)`];
  });
  const looks = (row.traits ?? []).flatMap(({ key, label }) =>
    traits?.[key] ? [`${label} ${traits[key]}`] : [],
  );
  const named = standard === null ? [] : [standardOf(face)?.label ?? standard];
  return [...named, ...sizes, ...looks].join(', ') || 'not measured';
}

/** The same behind the name of the face. @example faceText(steererMeasured) //=> 'steerer: outside diameter 28,6 mm' */
export const faceText = (face: Face): string => `${faceKinds[face.kind].label}: ${faceKnown(face)}`;

import type { Face } from '../../fit/faces/face.ts';
import type {
  BarAbout,
  Between,
  CheckAnswered,
  ClampAbout,
  DiametersAbout,
  Entry,
  ExtensionAbout,
  Fastener,
  Id,
  OpenItem,
  Place,
  Target,
  ToolSnapshot,
} from '../../journal/entries.ts';
import type { AnyUnit, Typed } from '../../mechanics/units.ts';
import { faceText } from '../faceText.ts';
import { countWords, dayWords, listWords, numberWords, quantityWords, spanInWords } from '../phrases.ts';
import { clearedFields } from './clearedWords.ts';
import { type EntryField, fieldLabels } from './fieldLabels.ts';
import type { Names } from './names.ts';
import { called } from './sentences.ts';
import { betweenText, fastenerText, targetText } from './sentencesOfJoints.ts';
import { inspectionWords, kindWords } from './sentencesOfParts.ts';
import {
  betweenWords,
  constructionWords,
  cutWords,
  originWords,
  placeWords,
  toolWords,
} from './tradeWords.ts';

const withUnit: Partial<Record<EntryField, string>> = {
  massG: 'g',
  km: 'km',
  untilKm: 'km',
  dueKm: 'km',
  kmBefore: 'km',
  minNm: 'N·m',
  maxNm: 'N·m',
  turnedDeg: '°',
  tolerancePercent: '%',
  checkEveryDays: 'days',
  minutes: 'min',
};

const isTyped = (value: unknown): value is Typed<AnyUnit> =>
  typeof value === 'object' && value !== null && 'typed' in value && 'unit' in value && 'value' in value;

type Named = Names & { zone: string };

/** Fields that hold more than a word or a number, each by its own way of being read. */
const own: Partial<Record<EntryField, (value: never, names: Named) => string>> = {
  place: (value: Place, names) => placeWords(value, names),
  from: (value: Place, names) => placeWords(value, names),
  to: (value: Place, names) => placeWords(value, names),
  bikeId: (value: Id, names) => called(names).bike(value),
  partId: (value: Id, names) => called(names).part(value),
  jointId: (value: Id, names) => called(names).joint(value),
  stepId: (value: Id, names) => called(names).step(value),
  waitId: (value: Id, names) => called(names).wait(value),
  wheelId: (value: Id, names) => called(names).wheel(value),
  toolId: (value: Id, names) => called(names).tool(value),
  recheckId: (value: Id, names) => called(names).recheck(value),
  defectId: (value: Id, names) => called(names).defect(value),
  partIds: (value: Id[], names) => listWords(value.map(called(names).part)),
  splitInto: (value: Id[]) => countWords(value.length, 'step'),
  photoIds: (value: Id[]) => String(value.length),
  between: (value: Between[] | keyof typeof betweenWords, names) =>
    typeof value === 'string' ? betweenWords[value] : betweenText(value, names),
  fasteners: (value: Fastener[]) => fastenerText(value),
  targets: (value: Target[], names) => value.map((target) => targetText(target, names)).join('; '),
  clamp: ({ construction, tubeArm, boltArm, shim }: ClampAbout) =>
    listWords([
      constructionWords[construction],
      ...(tubeArm ? [`tube ${quantityWords(tubeArm)} from the closed side`] : []),
      ...(boltArm ? [`screw ${quantityWords(boltArm)} from it`] : []),
      ...(shim ? [`shim ${shim}`] : []),
    ]),
  bar: ({ rise, reach }: BarAbout) => `${quantityWords(rise)} up, ${quantityWords(reach)} forwards`,
  extension: ({ length, angleDeg }: ExtensionAbout) =>
    `${quantityWords(length)} at ${numberWords(angleDeg)}°`,
  diameters: ({ bore, outside }: DiametersAbout) =>
    `bore ${quantityWords(bore)}, outside ${quantityWords(outside)}`,
  faces: (value: Face[]) => value.map(faceText).join('; '),
  cleared: (value: EntryField[]) => clearedFields(value),
  tool: (value: ToolSnapshot) => toolWords(value),
  origin: (value: keyof typeof originWords) => originWords[value],
  cut: (value: keyof typeof cutWords) => cutWords[value].label,
  kind: (value: string) => kindWords(value),
  inspection: (value: Parameters<typeof inspectionWords>[0]) => inspectionWords(value),
  open: (value: OpenItem[]) => (value.length === 0 ? 'nothing' : value.map(({ words }) => words).join('; ')),
  items: (value: CheckAnswered[]) =>
    value
      .map(
        ({ itemId, ok, absent, words }) =>
          `${itemId.replaceAll('-', ' ')}: ${ok ? 'OK' : absent ? 'not fitted' : words?.trim() || 'not OK'}`,
      )
      .join('; '),
  waitMs: (value: number) => spanInWords(value),
  byMs: (value: number) => `${value < 0 ? 'back' : 'forward'} ${spanInWords(Math.abs(value))}`,
};

/**
 * The value of a field of an entry, for people.
 * @param field name of the field
 * @param value what stands in it; for a nested thing without words of its own, its parts in order
 * @param zone time zone the entry was written in
 * @returns never empty
 * @example fieldText('applied', { value: 5, unit: 'N.m', typed: '5' }, names, 'UTC') //=> '5 N·m'
 */
export function fieldText(field: string, value: unknown, names: Names, zone: string): string {
  if (value === undefined || value === null || value === '') return 'nothing';
  const tell = own[field as EntryField] as ((value: unknown, names: Named) => string) | undefined;
  if (tell) return tell(value, { ...names, zone }) || 'nothing';
  if (isTyped(value)) return quantityWords(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') {
    if (field.endsWith('Ms')) return dayWords(value, zone);
    const unit = withUnit[field as EntryField];
    return unit ? `${numberWords(value)}${unit === '°' ? '' : ' '}${unit}` : String(value);
  }
  if (typeof value === 'string') return value.trim() || 'nothing';
  if (Array.isArray(value)) return listWords(value.map((one) => fieldText('', one, names, zone)));
  return Object.entries(value)
    .map(([key, inner]) => {
      const label = (fieldLabels as Record<string, string>)[key] ?? key;
      return `${label.toLowerCase()} ${fieldText(key, inner, names, zone)}`;
    })
    .join(', ');
}

/** Fields that only say which thing is meant, and mean nothing to a reader. */
const silent = new Set<string>([
  'type',
  'id',
  'v',
  'writtenAtMs',
  'happenedAtMs',
  'zone',
  'phone',
  'rideId',
  'noteId',
  'releaseId',
  'findingId',
  'photoId',
  'corrects',
  'rank',
  'wasMatters',
]);

/** A field that a newer version wrote in another shape says so, and keeps none of the others back. */
function readableText(field: string, value: unknown, names: Names, zone: string): string {
  try {
    return fieldText(field, value, names, zone);
  } catch {
    return 'update the app to read this';
  }
}

/** All fields of an entry with their captions, in the order they were written. */
export function entryFields(entry: Entry, names: Names): { field: string; label: string; text: string }[] {
  return Object.entries(entry)
    .filter(([field, value]) => !silent.has(field) && value !== undefined)
    .map(([field, value]) => ({
      field,
      label: (fieldLabels as Record<string, string>)[field] ?? field,
      text: readableText(field, value, names, entry.zone),
    }));
}

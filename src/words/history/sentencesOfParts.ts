import { partKinds } from '../../fit/partKinds.ts';
import type { OneWayChange, PartAbout } from '../../journal/entries.ts';
import { countWords, listWords, numberWords, quantityWords, remark } from '../phrases.ts';
import { clearedWords } from './clearedWords.ts';
import { cutSize } from './cutSize.ts';
import { partCalled } from './names.ts';
import { called, type Sentences } from './sentences.ts';
import { cutWords, originWords, placeWords } from './tradeWords.ts';

/** @example kindWords('bottom-bracket') //=> 'bottom bracket' */
export const kindWords = (kind: string): string =>
  (partKinds as Record<string, { label: string }>)[kind]?.label ?? kind.replaceAll('-', ' ');

function aboutWords({
  serial,
  origin,
  originWords: words,
  condition,
  unknown,
  faces,
  massG,
  kmBefore,
}: Partial<PartAbout>) {
  const life =
    kmBefore === 'unknown' ? 'not known' : kmBefore === undefined ? undefined : `${numberWords(kmBefore)} km`;
  return [
    origin === undefined ? '' : remark('Origin', `${originWords[origin]}${words ? `, ${words}` : ''}`),
    remark('Serial number', serial),
    remark('Condition', condition),
    remark('Not known', unknown),
    remark('Ridden before', life),
    massG === undefined ? '' : ` Mass: ${numberWords(massG)} g.`,
    faces?.length ? ` ${countWords(faces.length, 'group of sizes', 'groups of sizes')} described.` : '',
  ].join('');
}

/** The checks a one-way change asks for from now on. @example inspectionWords({ everyKm: 500, words: 'look' }) //=> 'every 500 km: look' */
export function inspectionWords({
  everyDays,
  everyKm,
  words,
}: NonNullable<OneWayChange['inspection']>): string {
  const spans = [
    ...(everyDays === undefined ? [] : [countWords(everyDays, 'day')]),
    ...(everyKm === undefined ? [] : [`${numberWords(everyKm)} km`]),
  ];
  return `every ${spans.join(' or ') || 'service'}: ${words.trim()}`;
}

/** Parts: arriving, being described, moving from bike to shelf to bike, and changes that stay for life. */
export const sentencesOfParts: Sentences<'part-added' | 'part-described' | 'part-moved' | 'part-changed'> = {
  'part-added': (entry, names) =>
    `${partCalled(entry.name, entry.label)}: ${kindWords(entry.kind)}, added, ${placeWords(entry.place, names)}.${aboutWords(entry)}${remark('Note', entry.note)}`,
  'part-described': (entry, names) => {
    const { name, label, kind } = entry;
    const renamed = [
      ...(name === undefined ? [] : [`now called ${name}`]),
      ...(label === undefined || label === '' ? [] : [`label ${label}`]),
      ...(kind === undefined ? [] : [`type ${kindWords(kind)}`]),
    ];
    return `Details of ${called(names).part(entry.partId)} updated${renamed.length > 0 ? `: ${listWords(renamed)}` : ''}.${aboutWords(entry)}${remark('Note', entry.note)}${clearedWords(entry.cleared)}`;
  },
  'part-moved': ({ partId, from, to, why, condition }, names) => {
    const went = to.on === 'scrapped' || to.on === 'sold' ? '' : 'now ';
    return `${called(names).part(partId)}: was ${placeWords(from, names)}, ${went}${placeWords(to, names)}.${remark('Why', why)}${remark('Condition', condition)}`;
  },
  'part-changed': (entry, names) => {
    const { partId, cut, where, left, leftWords, how, why, rulesOut, inspection } = entry;
    const rest = [...(left ? [quantityWords(left)] : []), ...(leftWords?.trim() ? [leftWords.trim()] : [])];
    return `${called(names).part(partId)}: permanently ${cutWords[cut].done} at ${where.trim()}, ${cutSize(entry)}.${remark('Left', rest.join(', '))}${remark('How', how)}${remark('Why', why)}${remark('Rules out', rulesOut)}${inspection ? remark('Inspect', inspectionWords(inspection)) : ''}`;
  },
};

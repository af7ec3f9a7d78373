import type { PartRow } from '../journal/rows.ts';
import { faceText } from '../words/faceText.ts';
import { cutSize } from '../words/history/cutSize.ts';
import { partCalled } from '../words/history/names.ts';
import { inspectionWords, kindWords } from '../words/history/sentencesOfParts.ts';
import { cutWords, originWords } from '../words/history/tradeWords.ts';
import { dayWords, numberWords, quantityWords } from '../words/phrases.ts';
import { doneBy, field, loud, type SheetLine } from './sheetLine.ts';

const fieldIfWritten = (label: string, text: string | undefined): SheetLine[] =>
  text?.trim() ? [field(label, text.trim())] : [];

function changeLines(change: PartRow['changes'][number], zone: string): SheetLine[] {
  const { cut, where, left, leftWords, how, why, rulesOut, inspection, atMs, by } = change;
  const rest = [...(left ? [quantityWords(left)] : []), ...(leftWords?.trim() ? [leftWords.trim()] : [])];
  return [
    loud('Permanent change', `${cutWords[cut].done} at ${where.trim()}, ${cutSize(change)}`),
    ...fieldIfWritten('Left', rest.join(', ')),
    ...fieldIfWritten('How', how),
    ...fieldIfWritten('Why', why),
    ...fieldIfWritten('Rules out', rulesOut),
    ...fieldIfWritten('Inspect', inspection && inspectionWords(inspection)),
    field('Done on', dayWords(atMs, zone)),
    doneBy(by),
  ];
}

/**
 * A part on the sheet: its label and kind, where it came from, what is unknown, and its permanent changes.
 */
export function sheetOfPart(part: PartRow, zone: string): SheetLine[] {
  const { name, label, kind, serial, origin, originWords: words, condition, unknown, kmBefore, massG } = part;
  const before =
    kmBefore === undefined || kmBefore === 'unknown' ? 'not known' : `${numberWords(kmBefore)} km`;
  return [
    { is: 'heading', text: partCalled(name, label) },
    field('Kind', kindWords(kind)),
    field('Serial', serial?.trim() || 'not recorded'),
    field('Origin', `${originWords[origin]}${words?.trim() ? `, ${words.trim()}` : ''}`),
    field('Condition', condition?.trim() || 'not described'),
    field('Ridden before', before),
    ...fieldIfWritten('Not known', unknown),
    ...(massG === undefined ? [] : [field('Mass', `${numberWords(massG)} g`)]),
    ...(part.faces ?? []).map((face) => field('Face', faceText(face))),
    ...part.changes.flatMap((change) => changeLines(change, zone)),
    ...fieldIfWritten('Note', part.note),
  ];
}

import type { AsBuilt } from '../journal/answers.ts';
import type { JointRow, Locked, WaitRow } from '../journal/rows.ts';
import { bondBroken } from '../planning/bondBroken.ts';
import { fitText } from '../practice/joint/measuredFit.ts';
import { countedAs, jointKindRow } from '../standards/jointKinds.ts';
import { jointWork } from '../standards/jointWork.ts';
import type { Names } from '../words/history/names.ts';
import { called } from '../words/history/sentences.ts';
import { betweenText, fastenerText, sealWords, targetText } from '../words/history/sentencesOfJoints.ts';
import { outcomeWords, toolWords } from '../words/history/tradeWords.ts';
import {
  countWords,
  dayWords,
  listWords,
  numberWords,
  quantityWords,
  spanInWords,
} from '../words/phrases.ts';
import { doneBy, field, loud, type SheetLine, whenWords } from './sheetLine.ts';

/** The instant a sheet is of, and the zone its days are told in. */
export interface When {
  zone: string;
  atMs: number;
}

function workOn({ kind, state, applied, fasteners, targets }: JointRow, { zone }: When): SheetLine[] {
  if (state === 'hand-tight') return [loud('Work done', 'hand-tight, torque outstanding')];
  if (!applied) {
    const wanted =
      (fasteners.length > 0 && !jointWork[kind].noWrench) || targets.some(({ torque }) => torque);
    return [wanted ? loud('Work done', 'no torque on record') : field('Work done', 'no torque needed')];
  }
  const { applied: torque, bolts, passes, tool, marked, atMs, by } = applied;
  return [
    field(
      'Work done',
      `tightened to ${quantityWords(torque)}, ${countWords(bolts, countedAs(kind))}, ${countWords(passes, 'pass', 'passes')}${marked ? ', paint mark added' : ''}`,
    ),
    field('Done on', whenWords(atMs, zone)),
    doneBy(by),
    tool ? field('Tool', toolWords(tool)) : loud('Tool', 'none named'),
  ];
}

/** The locker and its cure, by the wait as it stands: it may have been changed, cut short, or moved with the clock. */
function lockerOf(joint: JointRow, waits: readonly WaitRow[], when: When): SheetLine[] {
  const { locked, lockedBefore = [] } = joint;
  if (!locked) return [];
  const before = lockedBefore.map((one) => field('Locker before', `${putWords(one, when)}, replaced since`));
  return [...before, lockerNow(joint, locked, waits, when)];
}

/** What went on which surface, how warm the joint was, and when. */
function putWords({ grade, surface, primer, temperature, gap, atMs }: Locked, { zone }: When): string {
  const words = (key: string) => key.replaceAll('-', ' ');
  return [
    words(grade),
    `on ${words(surface)}`,
    `${primer ? 'with' : 'without'} primer`,
    ...(gap ? [`gap ${quantityWords(gap)}`] : []),
    ...(temperature ? [`at ${quantityWords(temperature)}`] : []),
    `put on ${whenWords(atMs, zone)}`,
  ].join(', ');
}

function lockerNow(
  joint: JointRow,
  locked: Locked,
  waits: readonly WaitRow[],
  { zone, atMs }: When,
): SheetLine {
  const put = putWords(locked, { zone, atMs });
  const wait = waits.find(({ waitId }) => waitId === locked.waitId);
  const broken = bondBroken(joint, wait);
  if (broken)
    return loud(
      'Locker',
      `${put}; ${broken === 'moved' ? 'the joint moved since' : 'the joint was tightened again after the cure'}, so it holds nothing`,
    );
  const { endedAtMs, dueAtMs, outcome } = wait ?? {};
  if (endedAtMs !== undefined && outcome === 'cut-short')
    return loud('Locker', `${put}, its cure ended early ${whenWords(endedAtMs, zone)}`);
  const curedAtMs = endedAtMs ?? dueAtMs ?? locked.curedAtMs;
  if (curedAtMs <= atMs) return field('Locker', `${put}, cured since ${whenWords(curedAtMs, zone)}`);
  const left = `curing until ${whenWords(curedAtMs, zone)}, ${spanInWords(curedAtMs - atMs)} to go`;
  return loud('Locker', `${put}, ${left}`);
}

function foundAt({ found, moved }: JointRow, { zone }: When): SheetLine[] {
  if (!found) return [];
  const how = [
    ...(found.movedAt ? [`at ${quantityWords(found.movedAt)}`] : []),
    ...(found.turnedDeg === undefined ? [] : [`by ${numberWords(found.turnedDeg)}°`]),
  ];
  const often = moved > 1 ? `; ${countWords(moved, 'time')} now` : '';
  const text = `${outcomeWords[found.outcome]}${how.length > 0 ? ` ${how.join(', ')}` : ''}${often}, looked at ${dayWords(found.atMs, zone)}`;
  return [found.outcome === 'held' ? field('Found', text) : loud('Found', text)];
}

/** A joint on the sheet: what meets, what lies between, the figures and whose they are, what the hand gave. */
export function sheetOfJoint(
  joint: JointRow,
  { seals, waits }: AsBuilt,
  names: Names,
  when: When,
): SheetLine[] {
  const { name, kind, partIds, between, fasteners, targets, matters, note, jointId } = joint;
  const marks = seals.find((row) => row.jointId === jointId)?.marks ?? [];
  return [
    { is: 'heading', text: name },
    field('Kind', `${jointKindRow(kind).label.toLowerCase()}${matters ? '; safety-critical' : ''}`),
    field('Parts', listWords(partIds.map(called(names).part)) || 'none named'),
    field('Between', betweenText(between, names) || 'nothing logged'),
    ...(fasteners.length > 0 ? [field('Fasteners', fastenerText(fasteners))] : []),
    ...(targets.length > 0
      ? targets.map((target) => field('Target', targetText(target, names)))
      : [field('Target', 'none')]),
    ...(joint.diameters
      ? [
          field(
            'Fit, measured',
            `bore ${quantityWords(joint.diameters.bore)}, outside ${quantityWords(joint.diameters.outside)}, ${fitText(joint)}`,
          ),
        ]
      : []),
    ...workOn(joint, when),
    ...foundAt(joint, when),
    ...lockerOf(joint, waits, when),
    ...marks.map((mark) => field('Seal', `${sealWords(mark)}, ${whenWords(mark.atMs, when.zone)}`)),
    ...(note?.trim() ? [field('Note', note.trim())] : []),
  ];
}

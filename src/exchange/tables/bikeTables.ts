import type { Entry } from '../../journal/entries.ts';
import type { JointRow, PartRow } from '../../journal/rows.ts';
import { torqueNm } from '../../mechanics/units.ts';
import { jointKindRow } from '../../standards/jointKinds.ts';
import { cutSize } from '../../words/history/cutSize.ts';
import { entrySentence } from '../../words/history/entrySentence.ts';
import type { Names } from '../../words/history/names.ts';
import { called } from '../../words/history/sentences.ts';
import { betweenText, fastenerText, targetText } from '../../words/history/sentencesOfJoints.ts';
import { kindWords } from '../../words/history/sentencesOfParts.ts';
import { cutWords, originWords, placeWords, toolWords } from '../../words/history/tradeWords.ts';
import { quantityWords } from '../../words/phrases.ts';

export type Table = readonly (readonly string[])[];

/** An instant as ISO 8601 in the zone it is told in, without the seconds. @example isoMinute(0, 'UTC') //=> '1970-01-01 00:00' */
export function isoMinute(ms: number, zone: string): string {
  const format = new Intl.DateTimeFormat('sv-SE', { dateStyle: 'short', timeStyle: 'short', timeZone: zone });
  return format.format(ms);
}

/** A torque as a number a spreadsheet can reckon with, N·m, to a thousandth. */
const nmText = (torque: Parameters<typeof quantityWords>[0] | undefined): string =>
  torque === undefined ? '' : String(Math.round(torqueNm(torque.value, torque.unit as 'N.m') * 1000) / 1000);

/**
 * Parts as rows, one each.
 * @example partsTable([stem], names)[1][0] //=> 'P-014'
 */
export function partsTable(parts: readonly PartRow[], names: Names): Table {
  const head = [
    ...['Label', 'Name', 'Kind', 'Where', 'Serial', 'Origin', 'Origin, details', 'Condition'],
    ...['Not known', 'Mass (g)', 'Ridden before (km)', 'Permanent changes', 'Note'],
  ];
  const rows = parts.map((part) => [
    part.label,
    part.name,
    kindWords(part.kind),
    placeWords(part.place, names),
    part.serial ?? '',
    originWords[part.origin],
    part.originWords ?? '',
    part.condition ?? '',
    part.unknown ?? '',
    part.massG === undefined ? '' : String(part.massG),
    part.kmBefore === undefined ? '' : String(part.kmBefore),
    part.changes
      .map((change) => `${cutWords[change.cut].done}: ${change.where}, ${cutSize(change)}`)
      .join('; '),
    part.note ?? '',
  ]);
  return [head, ...rows];
}

/** Joints as rows, with what was asked for, applied and found: three columns, none filled from another. */
export function jointsTable(joints: readonly JointRow[], names: Names, zone: string): Table {
  const head = [
    ...['Joint', 'Kind', 'State', 'Safety-critical', 'Parts', 'Between', 'Fasteners', 'Target (N·m)'],
    ...['Target up to (N·m)', 'Targets', 'Applied (N·m)', 'Applied, as entered', 'Bolts', 'Passes'],
    ...['Torqued on', 'Tool', 'By', 'Found (N·m)', 'Note'],
  ];
  const rows = joints.map((joint) => {
    const { applied, found, targets } = joint;
    const asked = targets.find(({ torque }) => torque);
    return [
      joint.name,
      jointKindRow(joint.kind).label,
      joint.state,
      joint.matters ? 'yes' : 'no',
      joint.partIds.map(called(names).part).join('; '),
      betweenText(joint.between, names),
      joint.fasteners.length > 0 ? fastenerText(joint.fasteners) : '',
      nmText(asked?.torque),
      nmText(asked?.upTo),
      targets.map((target) => targetText(target, names)).join('; '),
      nmText(applied?.applied),
      applied ? quantityWords(applied.applied) : '',
      applied ? String(applied.bolts) : '',
      applied ? String(applied.passes) : '',
      applied ? isoMinute(applied.atMs, zone) : '',
      applied?.tool ? toolWords(applied.tool) : '',
      applied?.by ?? '',
      nmText(found?.movedAt),
      joint.note ?? '',
    ];
  });
  return [head, ...rows];
}

/** A history as rows, in the order given. Corrections stand as lines of their own. */
export function historyTable(entries: readonly Entry[], names: Names): Table {
  const rows = entries.map((entry) => [
    isoMinute(entry.happenedAtMs, entry.zone),
    entry.zone,
    entrySentence(entry, names),
    entry.by ?? '',
    entry.id,
  ]);
  return [['Happened', 'Time zone', 'What', 'By', 'Entry'], ...rows];
}

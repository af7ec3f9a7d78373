import { pullFigure } from '../standards/checks/pullFigure.ts';
import { formerTitles, pullTitles, recheckTitles } from '../standards/checks/recheckTitles.ts';
import type { JointRow, RecheckRow, WaitRow } from './rows.ts';

/** What a title says behind the name of the joint. */
const behind = (title: string) => `: ${title.charAt(0).toLowerCase()}${title.slice(1)}`;

/**
 * The title of what a check asks of a joint.
 * @example checkTitle('Stem', 'Headset play') //=> 'Stem: headset play'
 */
export function checkTitle(joint: string, asked: string): string {
  return joint + behind(asked);
}

/** What a re-check by torque asks for today: what threadlocker holds is looked at and not turned. */
function pullToday(joint: JointRow): string {
  return joint.locked ? recheckTitles['look-at-mark'] : pullTitles[pullFigure(joint)];
}

function recheckTitle({ kind, title }: RecheckRow, joint: JointRow): string {
  const byTorque = kind === 'retorque';
  const ofToday = byTorque ? Object.values(pullTitles) : [recheckTitles[kind]];
  const put = [...ofToday, ...(formerTitles[kind] ?? [])].find((words) => title.includes(behind(words)));
  if (put === undefined) return title;
  // What else was said, as about a tool that showed wrong, stays.
  const rest = title.slice(title.lastIndexOf(behind(put)) + behind(put).length);
  return checkTitle(joint.name, byTorque ? pullToday(joint) : recheckTitles[kind]) + rest;
}

/**
 * A wait or a re-check under the title that holds today. Its row keeps the words of the day it was set; since
 * then the joint may have another name, or a figure, or threadlocker in it. Words that a person wrote stay.
 * @param joint the joint it is about
 * @example titleToday({ is: 'wait', waitKind: 'cure', title: 'medium', … }, { name: 'Rear rotor', … }).title //=> 'Rear rotor'
 */
export function titleToday<T extends WaitRow | RecheckRow>(row: T, joint: JointRow | undefined): T {
  if (!joint) return row;
  if (row.is === 'recheck') return { ...row, title: recheckTitle(row, joint) };
  // A cure or a seal goes by its joint; the first locker entries held the grade alone.
  return row.waitKind === 'cure' || row.waitKind === 'seal' ? { ...row, title: joint.name } : row;
}

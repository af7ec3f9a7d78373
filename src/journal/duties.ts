import { type DutyRow, dutyOf } from '../planning/due.ts';
import type { Duty } from './answers.ts';
import type { BikeRow, DefectRow, JointRow, RecheckRow, RidesRow, ToolRow, WaitRow } from './rows.ts';
import { titleToday } from './titleToday.ts';

/** One bike with what waits or falls due on it. */
export interface DutiesAsk {
  bike: Pick<BikeRow, 'bikeId' | 'name'>;
  joints: readonly JointRow[];
  rides: RidesRow | undefined;
  rows: readonly (WaitRow | RecheckRow | DefectRow)[];
}

/**
 * All that waits or falls due on any bike, and the tools to be checked: the likeliest to be due first.
 * @param nowMs the present, ms UTC
 * @example dutiesOf([], [], 0) //=> []
 */
export function dutiesOf(bikes: readonly DutiesAsk[], tools: readonly ToolRow[], nowMs: number): Duty[] {
  const found = (row: DutyRow, bikeName: string, title: string, rides: RidesRow | undefined) =>
    dutyOf(row, { nowMs, bikeName, title, rides }) ?? [];
  return [
    ...bikes.flatMap(({ bike, joints, rides, rows }) =>
      rows.flatMap((row) => {
        const joint = joints.find(({ jointId }) => jointId === row.jointId);
        const title = row.is === 'defect' ? row.words : titleToday<WaitRow | RecheckRow>(row, joint).title;
        return found(row, bike.name, title, rides);
      }),
    ),
    ...tools.flatMap((tool) => found(tool, '', tool.name, undefined)),
  ].toSorted((a, b) => a.likelyMs - b.likelyMs || (a.key < b.key ? -1 : 1));
}

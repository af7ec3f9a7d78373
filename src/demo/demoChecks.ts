import {
  type InstructionKind,
  recheckRows,
  type ScheduleRow,
  spanOfTurn,
} from '../standards/checks/recheckSchedule.ts';
import type { DemoPen } from './demoPen.ts';
import { demoKeyOf, id, type JointCommand, typedNm } from './demoWords.ts';

/** A re-check that is open, and where it is in its schedule. */
interface OpenCheck {
  jointKey: string;
  row: ScheduleRow;
  turn: number;
  /** How many re-checks of this joint and kind were set so far. */
  made: number;
}

const recheckId = ({ jointKey, row, made }: OpenCheck): string =>
  id(`recheck-${jointKey}-${row.instruction}-${made}`);

/** What the open re-checks of a bike are; rides set them, answers set the next. */
export class OpenChecks {
  private open: OpenCheck[] = [];

  /** What a ride sets for these joints, by `joint/kind`, as its command wants it. */
  set(joints: readonly JointCommand[]): Record<string, string> {
    const fresh = joints.flatMap(({ jointId = '', kind, between }): OpenCheck[] => {
      const locked = between.some((item) => item.kind === 'threadlocker');
      return recheckRows(kind, locked).map((row) => ({
        jointKey: demoKeyOf(jointId),
        row,
        turn: 0,
        made: 1,
      }));
    });
    this.open.push(...fresh);
    return Object.fromEntries(
      fresh.map((check) => [`${id(check.jointKey)}/${check.row.instruction}`, recheckId(check)]),
    );
  }

  /** A joint that was taken apart has nothing due any more. */
  forget(jointKey: string): void {
    this.open = this.open.filter((check) => check.jointKey !== jointKey);
  }

  /** Answers every open re-check: held, unless `moved` says otherwise. */
  answerAll(pen: DemoPen, moved: Record<string, { at: number; to: number }>): void {
    this.open = this.open.flatMap((check) => {
      const found = moved[check.jointKey];
      const turn = found ? 0 : check.turn + 1;
      const next = { ...check, turn, made: check.made + 1 };
      const goesOn = spanOfTurn(check.row, turn) !== null;
      const ids = { recheckId: recheckId(check), ...(goesOn ? { nextRecheckId: recheckId(next) } : {}) };
      answer(pen, check.row.instruction, id(check.jointKey), ids, found);
      return goesOn ? [next] : [];
    });
  }
}

function answer(
  pen: DemoPen,
  kind: InstructionKind,
  jointId: string,
  ids: { recheckId: string; nextRecheckId?: string },
  found: { at: number; to: number } | undefined,
): void {
  if (kind === 'look-at-mark') {
    pen.write({ type: 'find-torque', jointId, ...ids, outcome: 'held', way: 'mark' });
  } else if (kind === 'retorque' && found) {
    pen.write({
      ...{ type: 'find-torque', jointId, ...ids, outcome: 'moved', way: 'tightening' },
      movedAt: typedNm(found.at),
      broughtTo: typedNm(found.to),
      toolId: id(found.to <= 10 ? 'tool-small' : 'tool-large'),
    });
  } else if (kind === 'retorque') {
    pen.write({ type: 'find-torque', jointId, ...ids, outcome: 'held', way: 'tightening' });
  } else {
    pen.write({ type: 'answer-recheck', ...ids, outcome: 'as-it-should' });
  }
}

import type { CommandOf } from '../commands.ts';
import type { EntryBody, Id } from '../entries.ts';
import type { Rows } from '../fold.ts';
import type { WaitRow } from '../rows.ts';
import { refuseWithoutParts, startedBy } from './joints.ts';
import {
  bikeOf,
  type Circumstances,
  freshId,
  jointOf,
  present,
  type Ruling,
  refuse,
  words,
} from './ruling.ts';

function waitOf(rows: Rows, waitId: Id): WaitRow {
  return rows.get('wait', waitId) ?? refuse('no-such-wait');
}

export function startWait(rows: Rows, command: CommandOf<'start-wait'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const { jointId, stepId, kind, waitMs } = command;
  const title = words(command.title, 'name-missing');
  return [
    present({
      type: 'wait-started',
      waitId: freshId(rows, 'wait', command.waitId, now),
      bikeId,
      jointId,
      stepId,
      kind,
      title,
      waitMs,
    }),
  ];
}

export function endWait(rows: Rows, command: CommandOf<'end-wait'>): Ruling {
  const { waitId, bikeId, jointId, endedAtMs, title } = waitOf(rows, command.waitId);
  if (endedAtMs !== undefined) refuse('already-ended', title);
  const { outcome } = command;
  return [present({ type: 'wait-ended', waitId, bikeId, jointId, outcome, words: command.words })];
}

export function changeWait(rows: Rows, command: CommandOf<'change-wait'>): Ruling {
  const { waitId, bikeId, jointId, endedAtMs, title } = waitOf(rows, command.waitId);
  if (endedAtMs !== undefined) refuse('already-ended', title);
  const { waitMs } = command;
  return [
    present({
      type: 'wait-changed',
      waitId,
      bikeId,
      jointId,
      waitMs,
      why: words(command.why, 'reason-missing'),
    }),
  ];
}

/** The phone's clock was set while waits ran: what they have still to run stays the same, once for each change. */
export function shiftWaits(rows: Rows, { byMs, changeId }: CommandOf<'shift-waits'>): Ruling {
  if (byMs === 0) refuse('nothing-changes');
  const running = rows
    .group('bike', 'bike')
    .flatMap(({ bikeId }) => rows.group('wait', `wait@${bikeId}`))
    .filter((wait) => wait.endedAtMs === undefined);
  if (running.length === 0) refuse('nothing-changes');
  const open = running.filter(({ clockChanges }) => !clockChanges?.includes(changeId));
  if (open.length === 0) refuse('already-answered');
  return open.map(({ waitId, bikeId }) => ({ type: 'clock-moved', waitId, bikeId, byMs, changeId }));
}

/** One mark on the seal of a wheel. A new look ends the wait that asked for it, and may ask for the next. */
export function markSeal(rows: Rows, command: CommandOf<'mark-seal'>, now: Circumstances): Ruling {
  const joint = jointOf(rows, command.jointId);
  refuseWithoutParts(rows, joint);
  const { jointId, bikeId, matters, name } = joint;
  const { mark, stepId, note, photoIds, lookAgainMs, overLimit } = command;
  // Reading a gauge changes nothing on the wheel; what moves air, sealant or bead does.
  const reads = mark.mark === 'reading' || mark.mark === 'dry-reading';
  const holds = mark.mark === 'verdict' && mark.verdict === 'holds';
  const entries: EntryBody[] = [
    present({
      type: 'seal-marked',
      ...{ jointId, bikeId, stepId, mark, note, photoIds, overLimit },
      matters: matters && !reads && !holds && mark.mark !== 'riding',
    }),
  ];
  const open = rows
    .group('wait', `wait@${bikeId}`)
    // A look written down late cannot have ended what began after it.
    .filter(
      (wait) =>
        wait.jointId === jointId && wait.waitKind === 'seal' && wait.startedAtMs <= startedBy(command),
    );
  if (reads || mark.mark === 'verdict' || lookAgainMs !== undefined) {
    for (const { waitId } of open) {
      entries.push({ type: 'wait-ended', waitId, bikeId, jointId, outcome: 'looked' });
    }
  }
  if (lookAgainMs !== undefined) {
    const waitId = freshId(rows, 'wait', command.waitId, now);
    const waitMs = lookAgainMs;
    entries.push({ type: 'wait-started', waitId, bikeId, jointId, kind: 'seal', title: name, waitMs });
  }
  return entries;
}

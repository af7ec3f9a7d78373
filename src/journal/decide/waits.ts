import type { CommandOf } from '../commands.ts';
import type { EntryBody, Id, SealMark } from '../entries.ts';
import type { Rows } from '../fold.ts';
import type { WaitRow } from '../rows.ts';
import {
  bikeOf,
  type Circumstances,
  jointOf,
  positive,
  present,
  type Ruling,
  refuse,
  words,
} from './ruling.ts';

export const LONGEST_WAIT_MS = 60 * 86_400_000;
/** Gauges for bicycle tyres end well below this. */
const ABSURD_PRESSURE = 300;

function waitOf(rows: Rows, waitId: Id): WaitRow {
  return rows.get('wait', waitId) ?? refuse('no-such-wait');
}

export function startWait(rows: Rows, command: CommandOf<'start-wait'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  positive(command.waitMs, LONGEST_WAIT_MS);
  const { jointId, stepId, kind, waitMs } = command;
  const title = words(command.title, 'name-missing');
  return [
    present({ type: 'wait-started', waitId: now.newId(), bikeId, jointId, stepId, kind, title, waitMs }),
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
  const waitMs = positive(command.waitMs, LONGEST_WAIT_MS);
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

/** The phone's clock was set while waits ran: what they have still to run stays the same. */
export function shiftWaits(rows: Rows, command: CommandOf<'shift-waits'>): Ruling {
  if (!Number.isFinite(command.byMs) || command.byMs === 0) refuse('not-a-number');
  const running = rows
    .group('bike', 'bike')
    .flatMap(({ bikeId }) => rows.group('wait', `wait@${bikeId}`))
    .filter((wait) => wait.endedAtMs === undefined);
  if (running.length === 0) refuse('nothing-changes');
  return running.map(({ waitId, bikeId }) => ({ type: 'clock-moved', waitId, bikeId, byMs: command.byMs }));
}

function checkMark(mark: SealMark): void {
  if (mark.mark === 'sealant') {
    positive(mark.amount.value, 1000);
    words(mark.sealantKind, 'words-missing');
  }
  const reading = 'reading' in mark ? mark.reading : undefined;
  if (reading?.pressure) {
    const { value } = reading.pressure;
    if (!Number.isFinite(value)) refuse('not-a-number');
    if (value < 0) refuse('not-positive');
    if (value > ABSURD_PRESSURE * (reading.pressure.unit === 'kPa' ? 10 : 1))
      refuse('absurd-value', reading.pressure.typed);
  }
  const needs = mark.mark === 'reading' || mark.mark === 'dry-reading' || mark.mark === 'pumped';
  if (needs && !reading?.pressure) refuse('not-a-number');
  if (reading?.temperature && !(Math.abs(reading.temperature.value) < 200))
    refuse('absurd-value', reading.temperature.typed);
}

/** One mark on the seal of a wheel. A new look ends the wait that asked for it, and may ask for the next. */
export function markSeal(rows: Rows, command: CommandOf<'mark-seal'>, now: Circumstances): Ruling {
  const { jointId, bikeId, matters, name } = jointOf(rows, command.jointId);
  const { mark, stepId, note, photoIds, lookAgainMs } = command;
  checkMark(mark);
  // Reading a gauge changes nothing on the wheel; what moves air, sealant or bead does.
  const reads = mark.mark === 'reading' || mark.mark === 'dry-reading';
  const holds = mark.mark === 'verdict' && mark.verdict === 'holds';
  const entries: EntryBody[] = [
    present({
      type: 'seal-marked',
      ...{ jointId, bikeId, stepId, mark, note, photoIds },
      matters: matters && !reads && !holds,
    }),
  ];
  const open = rows
    .group('wait', `wait@${bikeId}`)
    .filter((wait) => wait.jointId === jointId && wait.waitKind === 'seal' && wait.endedAtMs === undefined);
  if (reads || mark.mark === 'verdict' || lookAgainMs !== undefined) {
    for (const { waitId } of open) {
      entries.push({ type: 'wait-ended', waitId, bikeId, jointId, outcome: 'looked' });
    }
  }
  if (lookAgainMs !== undefined) {
    const waitMs = positive(lookAgainMs, LONGEST_WAIT_MS);
    const waitId = now.newId();
    entries.push({ type: 'wait-started', waitId, bikeId, jointId, kind: 'seal', title: name, waitMs });
  }
  return entries;
}

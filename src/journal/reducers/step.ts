import type { Entry, StepAbout } from '../entries.ts';
import type { StepRow } from '../rows.ts';
import { pick } from './described.ts';

const ABOUT: (keyof StepAbout)[] = ['kind', 'title', 'detail', 'jointId', 'partId', 'rank'];

/** A step of the build; a torque, a hand-tightening aside, or a locker logged on it finishes it. */
export function reduceStep(row: StepRow | undefined, entry: Entry): StepRow | undefined {
  if (entry.type === 'step-added') {
    return {
      ...(pick(entry as StepAbout, ABOUT) as StepAbout),
      key: `step/${entry.stepId}`,
      is: 'step',
      group: `step@${entry.bikeId}`,
      stepId: entry.stepId,
      bikeId: entry.bikeId,
      lastMs: entry.happenedAtMs,
      state: 'open',
    };
  }
  if (!row) return undefined;
  switch (entry.type) {
    case 'step-described':
      return { ...row, ...pick(entry as Partial<StepAbout>, ABOUT) };
    case 'step-moved':
      return { ...row, rank: entry.rank };
    case 'step-dropped':
      return { ...row, state: 'dropped', why: entry.why };
    case 'step-skipped':
      return { ...row, state: 'skipped', why: entry.why, doneAtMs: entry.happenedAtMs };
    case 'step-reopened':
      return { ...row, state: 'open', why: entry.why, doneAtMs: undefined, doneBy: undefined };
    case 'step-done':
    case 'torque-applied':
    case 'locker-applied':
      return { ...row, state: 'done', why: undefined, doneAtMs: entry.happenedAtMs, doneBy: entry.id };
    case 'seal-marked':
      return entry.mark.mark === 'seated' && row.kind === 'seat'
        ? { ...row, state: 'done', why: undefined, doneAtMs: entry.happenedAtMs, doneBy: entry.id }
        : row;
  }
  return row;
}

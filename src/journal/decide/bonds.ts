import { unsetBonds } from '../../planning/unsetBonds.ts';
import type { Rows } from '../fold.ts';
import type { JointRow } from '../rows.ts';
import { type Circumstances, refuse } from './ruling.ts';

/** Kinds of part that most joints of a bike share. */
const BEARERS = ['frame', 'fork'];

/**
 * What loads a bond that has not set goes on with a word alone.
 * @returns the word, where there is such a bond; nothing where all have set
 */
export function wordForBonds(
  rows: Rows,
  joint: JointRow,
  { despite, happenedAtMs }: { despite?: string; happenedAtMs?: number },
  { nowMs }: Circumstances,
): string | undefined {
  const { bikeId } = joint;
  const joints = rows.group('joint', `joint@${bikeId}`);
  const waits = [...rows.group('wait', `wait@${bikeId}`), ...rows.group('wait', `wait-over@${bikeId}`)];
  const unsetBeside = (bearers: ReadonlySet<string>) =>
    unsetBonds(joint, joints, waits, bearers, happenedAtMs ?? nowMs);
  // Which parts bear the whole bike is only looked up where something has not set at all.
  if (unsetBeside(new Set()).length === 0) return undefined;
  const bearing = rows.group('part', `part@${bikeId}`).filter(({ kind }) => BEARERS.includes(kind));
  const unset = unsetBeside(new Set(bearing.map(({ partId }) => partId)));
  if (unset.length === 0) return undefined;
  const word = despite?.trim();
  return word ? word : refuse('bond-not-set', unset.map(({ name }) => name).join(', '));
}

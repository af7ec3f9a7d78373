import type { HistoryLine } from '../../journal/answers.ts';
import { convert, type TorqueUnit, type Typed } from '../../mechanics/units.ts';

/** One torque of a joint's life: what a hand gave, or at what a re-check met it moving. */
export interface TorqueTime {
  atMs: number;
  value: number;
  what: 'applied' | 'found';
}

/**
 * The torques of a joint, oldest first.
 * @param lines its history, in any order
 * @param unit the unit to give them in
 * @returns applied and found apart; a re-check that met no movement has no figure and is left out
 */
export function torqueTimes(lines: readonly HistoryLine[], unit: TorqueUnit): TorqueTime[] {
  const inUnit = (torque: Typed<TorqueUnit>) =>
    Math.round(convert(torque.value, torque.unit, unit) * 100) / 100;
  return lines
    .flatMap((line): TorqueTime[] => {
      const entry = line.now;
      if (entry?.type === 'torque-applied')
        return [{ atMs: entry.happenedAtMs, value: inUnit(entry.applied), what: 'applied' }];
      if (entry?.type === 'torque-found' && entry.movedAt)
        return [{ atMs: entry.happenedAtMs, value: inUnit(entry.movedAt), what: 'found' }];
      return [];
    })
    .sort((a, b) => a.atMs - b.atMs);
}

import type { Target, TargetSource } from '../journal/entries.ts';
import { type TorqueUnit, type Typed, torqueNm } from '../mechanics/units.ts';

/** How well the ruling figure is founded, the best first. */
export type TargetStanding = 'part-maker' | 'general-table' | 'own-judgement' | 'unsourced';

export type TorqueTarget = Target & { torque: Typed<TorqueUnit> };

export type RulingTarget =
  | {
      ok: true;
      standing: TargetStanding;
      target: TorqueTarget;
      /** The other figures given for the joint, best founded and lowest first. */
      overruled: TorqueTarget[];
    }
  | { ok: false; reason: 'no-figure' };

const standings: Record<TargetSource, TargetStanding> = {
  'printed-on-the-part': 'part-maker',
  'makers-document': 'part-maker',
  'mating-part': 'part-maker',
  'general-table': 'general-table',
  'own-judgement': 'own-judgement',
  none: 'unsourced',
};
const order: readonly TargetStanding[] = ['part-maker', 'general-table', 'own-judgement', 'unsourced'];

const inNm = ({ value, unit }: Typed<TorqueUnit>) => torqueNm(value, unit);

/**
 * The most a target allows, N·m: the upper figure where a range is given.
 * @example mostNm({ source: 'none', torque: { value: 5, unit: 'N.m', typed: '5' } }) //=> 5
 */
export function mostNm({ torque, upTo }: Pick<TorqueTarget, 'torque' | 'upTo'>): number {
  return Math.max(inNm(torque), upTo ? inNm(upTo) : 0);
}

/**
 * Which of the figures given for a joint rules at the bench. A part maker's figure, whether printed, in a
 * document or the mating part's, comes before any table or judgement; among figures of equal standing the
 * one that allows least wins, since both parts have to bear the torque.
 * @param targets what was written down for the joint, in any order and unit
 * @returns the ruling figure, how well it is founded, and the others; or that there is no figure
 * Source: common practice, no source: the weaker of two mating parts sets the limit.
 * @example rulingTarget([]) //=> { ok: false, reason: 'no-figure' }
 */
export function rulingTarget(targets: readonly Target[]): RulingTarget {
  const given = targets.filter((target): target is TorqueTarget => target.torque !== undefined);
  const rank = (target: TorqueTarget) => order.indexOf(standings[target.source]);
  const [target, ...overruled] = given.toSorted(
    (a, b) => rank(a) - rank(b) || mostNm(a) - mostNm(b) || inNm(a.torque) - inNm(b.torque),
  );
  if (!target) return { ok: false, reason: 'no-figure' };
  return { ok: true, standing: standings[target.source], target, overruled };
}

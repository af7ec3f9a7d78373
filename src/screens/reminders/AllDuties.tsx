import type { ComponentChildren } from 'preact';
import type { Duty } from '../../journal/answers.ts';
import type { DistanceUnit } from '../../mechanics/units.ts';
import { leftText } from '../../words/leftText.ts';
import { useView } from '../door.tsx';

const DAY_MS = 86_400_000;

/** What is left until a duty is due, in the person's unit. */
const toComeIn =
  (unit: DistanceUnit, nowMs: number) =>
  ({ dueAtMs, left }: Duty): string =>
    leftText({ ...left, ...(dueAtMs === undefined ? {} : { days: (dueAtMs - nowMs) / DAY_MS }) }, unit);

export interface AllDutiesProps {
  nowMs: number;
  /** Draws them; nothing is known while they are read. */
  draw: (
    duties: readonly Duty[] | undefined,
    toCome: ((duty: Duty) => string) | undefined,
  ) => ComponentChildren;
}

/** Reads all that waits or falls due, by rides and distance as well: more than the first drawing of a screen waits for. */
export function AllDuties({ nowMs, draw }: AllDutiesProps) {
  const duties = useView('duties');
  const settings = useView('settings');
  const unit = settings.is === 'there' ? settings.value.distanceUnit : undefined;
  return <>{draw(duties.is === 'there' ? duties.value : undefined, unit && toComeIn(unit, nowMs))}</>;
}

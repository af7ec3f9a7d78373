import './Countdown.css';
import { clockOrDayText, timeLeftText } from '../../words/timeLeft.ts';
import { Icon } from '../Icon.tsx';
import { BigNumber } from './BigNumber.tsx';

export interface CountdownProps {
  /** What waits: "Threadlocker sets". */
  label: string;
  /** When it is due, ms since 1970 UTC. */
  dueAtMs: number;
  /** The present, ms since 1970 UTC. The screen passes it on each beat, so a clock that jumps is simply shown right. */
  nowMs: number;
  /** When the wait began; with it a bar shows how much is gone. */
  sinceMs?: number | undefined;
}

/** Time left, and the clock time it ends; once over, how long ago, in red pencil. */
export function Countdown({ label, dueAtMs, nowMs, sinceMs }: CountdownProps) {
  const leftMs = dueAtMs - nowMs;
  const over = leftMs <= 0;
  const span = timeLeftText(Math.abs(leftMs));
  const gone = sinceMs === undefined ? undefined : (nowMs - sinceMs) / (dueAtMs - sinceMs);
  return (
    <div class={over ? 'countdown-over' : undefined} role="timer" aria-live="off">
      <BigNumber
        label={over ? `${label}: time since it ended` : `${label}: time left`}
        value={span.value}
        unit={span.unit}
      />
      {gone !== undefined && !over && (
        <div
          class="countdown-bar"
          style={{ '--gone': String(Math.min(1, Math.max(0, gone))) }}
          aria-hidden="true"
        />
      )}
      <p class="countdown-due">
        <Icon name={over ? 'bell' : 'hourglass'} />
        {over ? 'Was due' : 'Due'} {clockOrDayText(dueAtMs, nowMs)}
      </p>
    </div>
  );
}

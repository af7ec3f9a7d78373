import './WaitsStrip.css';
import { spanShort } from '../../words/timeLeft.ts';
import { Icon } from '../Icon.tsx';

export interface WaitInSight {
  id: string;
  /** What waits: "Seal: Rear bead". */
  label: string;
  /** On which bike. */
  where: string;
  dueAtMs: number;
  /** What it is called when its time is over and no look is due: "Cured". */
  overWord?: string | undefined;
}

/** What is late comes first, then what ends next; what is over and needs no look comes last. */
const inTurn = (nowMs: number) => (one: WaitInSight, other: WaitInSight) => {
  const quiet = ({ dueAtMs, overWord }: WaitInSight) => Number(dueAtMs <= nowMs && overWord !== undefined);
  return quiet(one) - quiet(other) || one.dueAtMs - other.dueAtMs;
};

export interface WaitsStripProps {
  waits: readonly WaitInSight[];
  nowMs: number;
  /** Where all of them are listed. */
  href: string;
}

/** Beside the heading of every screen: the wait that comes first, and how many more there are. */
export function WaitsStrip({ waits, nowMs, href }: WaitsStripProps) {
  const [first, ...others] = waits.toSorted(inTurn(nowMs));
  if (!first) return null;
  const leftMs = first.dueAtMs - nowMs;
  const done = leftMs <= 0 ? first.overWord : undefined;
  const late = leftMs <= 0 && done === undefined;
  const span = `${spanShort(Math.abs(leftMs))} ${late ? 'late' : 'left'}`;
  const words = `${first.label}, ${first.where}: ${done ?? span}`;
  const more = others.length === 0 ? '' : `, and ${others.length} more`;
  return (
    <a class={late ? 'waits waits-over' : 'waits'} href={href}>
      <span class="unseen">{`${words}${more}`}</span>
      <Icon name={done ? 'check' : late ? 'bell' : 'hourglass'} sizePx={20} />
      <span class="waits-label" aria-hidden="true">
        {first.label}
      </span>
      <span aria-hidden="true">
        {done ?? spanShort(Math.abs(leftMs))}
        {others.length > 0 && ` +${others.length}`}
      </span>
    </a>
  );
}

import './WaitsStrip.css';
import { Icon } from './Icon.tsx';
import { spanShort } from './timeLeft.ts';

export interface WaitInSight {
  id: string;
  /** What waits: "Seal: Rear bead". */
  label: string;
  /** On which bike. */
  where: string;
  dueAtMs: number;
}

export interface WaitsStripProps {
  waits: readonly WaitInSight[];
  nowMs: number;
  /** Where all of them are listed. */
  href: string;
}

/** One line under the heading of every screen: the wait that ends first, and how many more there are. */
export function WaitsStrip({ waits, nowMs, href }: WaitsStripProps) {
  const [first, ...others] = waits.toSorted((one, other) => one.dueAtMs - other.dueAtMs);
  if (!first) return null;
  const leftMs = first.dueAtMs - nowMs;
  const over = leftMs <= 0;
  return (
    <a class={over ? 'waits waits-over' : 'waits'} href={href}>
      <Icon name={over ? 'bell' : 'hourglass'} />
      <span class="waits-label">
        {first.label}
        <span class="waits-where">, {first.where}</span>
      </span>
      <span class="waits-left">
        {spanShort(Math.abs(leftMs))} {over ? 'late' : 'left'}
        {others.length > 0 && ` +${others.length}`}
      </span>
    </a>
  );
}

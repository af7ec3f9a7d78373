import { WaitsStrip } from '../controls/WaitsStrip.tsx';
import { useNow, useView } from './door.tsx';
import { waitWords } from './waitWords.ts';

const AHEAD_MS = 60 * 86_400_000;

/** What waits on any bike, in sight on every screen. */
export function Waits() {
  const nowMs = useNow(1000);
  // Asked for once a day at most: the span only bounds the list.
  const due = useView('due', { untilMs: Math.ceil(nowMs / AHEAD_MS + 1) * AHEAD_MS });
  if (due.is !== 'there') return null;
  const waits = due.value
    .filter((line) => line.is === 'wait')
    .map((line) => ({
      id: line.key,
      label: waitWords(line.kind, line.title),
      where: line.bikeName,
      dueAtMs: line.dueAtMs,
    }));
  return <WaitsStrip waits={waits} nowMs={nowMs} href="#/home" />;
}

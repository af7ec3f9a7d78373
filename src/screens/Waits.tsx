import { WaitsStrip } from '../controls/frames/WaitsStrip.tsx';
import { waitInSight } from '../practice/bench/waitInSight.ts';
import { dueAhead } from '../practice/rechecks/dueAhead.ts';
import { overWord, waitWords } from '../words/waitWords.ts';
import { useNow, useView } from './door.tsx';

/** What waits on any bike, in sight on every screen. */
export function Waits() {
  const nowMs = useNow(1000);
  const due = useView('due', dueAhead(nowMs));
  if (due.is !== 'there') return null;
  const waits = due.value
    .filter((line) => line.is === 'wait')
    .filter(({ kind, dueAtMs }) => waitInSight(kind, dueAtMs, nowMs))
    .map((line) => ({
      id: line.key,
      label: waitWords(line.kind, line.title),
      where: line.bikeName,
      dueAtMs: line.dueAtMs,
      overWord: overWord(line.kind),
    }));
  return <WaitsStrip waits={waits} nowMs={nowMs} href="#/home" />;
}

import type { StepRow } from '../../journal/rows.ts';
import { type SpanMin, togetherSpans, workSpans } from '../../standards/stepSpans.ts';
import type { WorkPlace } from '../../standards/workOrder.ts';
import { type JointsById, type OrderedStep, workPlaceOf } from '../workPairs.ts';

const MINUTE_MS = 60_000;
/** A shorter one was ticked afterwards; in a longer one something else was done. Our own choice. */
const SHORTEST_MIN = 0.5;
const LONGEST_MIN = 180;
/** So many of a kind say more than the table. Our own choice. */
const ENOUGH = 3;

/** Past spans of this person, min, by what was done where. */
export type PastSpans = ReadonlyMap<string, readonly number[]>;

/** What of two steps makes them the same work. */
function workKey(step: OrderedStep, joints: JointsById): { key: string; place?: WorkPlace; doing: string } {
  const placed = workPlaceOf(step, joints);
  if (placed) return { key: `${placed.place}:${placed.doing}`, place: placed.place, doing: placed.doing };
  const doing = ['measure', 'cut', 'check', 'adjust', 'torque'].includes(step.kind) ? step.kind : 'together';
  return { key: `:${doing}`, doing };
}

/**
 * How long steps took in the past, as far as the logbook tells: from the step done before it on that bike, or from when it
 * was written down, to when it was done.
 * @param bikes steps of each bike with its joints
 * @example pastSpans([]).size //=> 0
 */
export function pastSpans(
  bikes: readonly { steps: readonly StepRow[]; joints: JointsById }[],
): Map<string, number[]> {
  const spans = new Map<string, number[]>();
  for (const { steps, joints } of bikes) {
    const done = steps
      .flatMap((step) =>
        step.state === 'done' && step.doneAtMs !== undefined ? { step, atMs: step.doneAtMs } : [],
      )
      .toSorted((a, b) => a.atMs - b.atMs);
    for (const [at, { step, atMs }] of done.entries()) {
      const before = done[at - 1]?.atMs;
      if (before === undefined) continue;
      const spanMin = (atMs - Math.max(before, step.addedAtMs)) / MINUTE_MS;
      if (spanMin < SHORTEST_MIN || spanMin > LONGEST_MIN) continue;
      const { key } = workKey(step, joints);
      spans.set(key, [...(spans.get(key) ?? []), spanMin]);
    }
  }
  return spans;
}

const quarter = (sorted: readonly number[], of: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * of))] ?? 0;

/**
 * How long a step takes, min: the median of this person's own past spans of that work with their quarters, else the table.
 * @example stepSpan({ kind: 'cut', title: 'Slot' }, new Map(), new Map()) //=> { span: [15, 30, 75], own: 0 }
 */
export function stepSpan(
  step: OrderedStep,
  joints: JointsById,
  past: PastSpans,
): { span: SpanMin; own: number } {
  const { key, place, doing } = workKey(step, joints);
  const own = past.get(key)?.toSorted((a, b) => a - b) ?? [];
  if (own.length >= ENOUGH)
    return { span: [quarter(own, 0.25), quarter(own, 0.5), quarter(own, 0.75)], own: own.length };
  const together = togetherSpans as Record<string, (typeof togetherSpans)['bead']>;
  const row =
    (doing === 'together' && place && together[place]) || workSpans[doing as keyof typeof workSpans];
  return { span: row.span, own: 0 };
}

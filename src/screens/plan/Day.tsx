import './day.css';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { dayLine } from '../../drawing/day/dayLine.ts';
import type { JointRow, PartRow, StepRow, WaitRow } from '../../journal/rows.ts';
import { type DayPlan, dayPlan } from '../../planning/day/dayPlan.ts';
import { type PastSpans, pastSpans } from '../../planning/day/stepSpan.ts';
import { orderedJoints } from '../../planning/orderedJoints.ts';
import { pauseWords, readyWords, whyFirst, workWords } from '../../words/dayPlanWords.ts';
import { clockText } from '../../words/dayText.ts';
import { useLogbook, useNow } from '../door.tsx';

const MINUTE_MS = 60_000;

export interface DayProps {
  steps: readonly StepRow[];
  joints: readonly JointRow[];
  parts: readonly PartRow[];
  waits: readonly WaitRow[];
  onBegin: (step: StepRow) => void;
}

/** How long the steps of all bikes took, read once. */
function usePastSpans(): PastSpans {
  const logbook = useLogbook();
  const [past, setPast] = useState<PastSpans>(new Map());
  useEffect(() => {
    let open = true;
    void (async () => {
      const bikes = await logbook.read('bikes', {});
      const benches = await Promise.all(bikes.map(({ bikeId }) => logbook.read('bench', { bikeId })));
      const known = benches.flatMap((bench) =>
        bench ? { steps: bench.steps, joints: orderedJoints(bench.joints, bench.parts) } : [],
      );
      if (open) setPast(pastSpans(known));
    })();
    return () => {
      open = false;
    };
  }, [logbook]);
  return past;
}

/** The day as a line in time: the hands above, what goes on by itself under it. */
function DayPicture({ plan, nowMs }: { plan: DayPlan; nowMs: number }) {
  const now = new Date(nowMs);
  const line = dayLine(
    plan.works.map(({ beginMin, endMin }) => ({ fromMin: beginMin, toMin: endMin })),
    plan.works.flatMap(({ endMin, waitEndMin }) =>
      waitEndMin === undefined ? [] : { fromMin: endMin, toMin: waitEndMin },
    ),
    now.getHours() * 60 + now.getMinutes(),
  );
  const under = 40 + Math.max(1, line.lanes) * 14;
  return (
    <figure class="day-line">
      <svg viewBox={`0 0 ${line.width} ${under + 24}`} aria-hidden="true">
        {line.ticks.map(({ x, atMin }) => (
          <g key={atMin}>
            <line class="day-tick" x1={x} x2={x} y1="4" y2={under} />
            <text
              x={x}
              y={under + 18}
              text-anchor={x < 20 ? 'start' : x > line.width - 20 ? 'end' : 'middle'}
            >
              {clockText(nowMs + atMin * MINUTE_MS)}
            </text>
          </g>
        ))}
        {line.hands.map(({ x, width }, at) => (
          <rect key={at} class={at === 0 ? 'day-first' : 'day-hand'} x={x} width={width} y="8" height="22" />
        ))}
        <line class="day-axis" x1="0" x2={line.width} y1="36" y2="36" />
        {line.waits.map(({ x, width, lane, cut }, at) => (
          <rect
            key={at}
            class={cut ? 'day-wait day-cut' : 'day-wait'}
            {...{ x, width, y: 42 + lane * 14, height: 10 }}
          />
        ))}
      </svg>
      <figcaption class="small">
        Above the line your hands, under it what cures and settles by itself.
      </figcaption>
    </figure>
  );
}

/** What to begin with now and why, when the bike is ready, and what a pause does to it. */
export function Day({ steps, joints, parts, waits, onBegin }: DayProps) {
  const nowMs = Math.floor(useNow(MINUTE_MS) / MINUTE_MS) * MINUTE_MS;
  const past = usePastSpans();
  const plan = useMemo(
    () => dayPlan({ steps, joints: orderedJoints(joints, parts), parts, waits, past, nowMs }),
    [steps, joints, parts, waits, past, nowMs],
  );
  const first = plan?.works[0]?.steps[0];
  if (!plan || !first) return null;
  return (
    <section class="stack plan-day" aria-label="The day">
      <p>
        <strong>{readyWords(plan, nowMs)}</strong> {pauseWords(plan)}
      </p>
      <Button wide icon="next" under={whyFirst(plan)} onPress={() => onBegin(first)}>
        Start with: {first.title}
      </Button>
      <DayPicture plan={plan} nowMs={nowMs} />
      <Fold label="The day in this order">
        <ol class="day-list">
          {plan.works.map((work) => (
            <li key={work.steps[0]?.stepId}>{workWords(work, nowMs)}</li>
          ))}
        </ol>
        <p class="small">
          Times are a suggestion: common practice, no source, until three steps of a kind have shown your own
          pace. Any order that the work allows will do.
        </p>
      </Fold>
    </section>
  );
}

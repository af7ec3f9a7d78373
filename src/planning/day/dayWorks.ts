import type { PartRow, StepRow, WaitRow } from '../../journal/rows.ts';
import { ownWaits, type SpanMin } from '../../standards/stepSpans.ts';
import { type JointsById, orderedBefore, workPlaceOf } from '../workPairs.ts';
import { type PastSpans, stepSpan } from './stepSpan.ts';

const MINUTE_MS = 60_000;

/** What goes on by itself after a work. */
export interface OwnWait {
  kind: 'cures' | 'settles';
  span: SpanMin;
}

/** What is done in one go: a step, or threadlocker and what is tightened on it. */
export interface DayWork {
  steps: StepRow[];
  span: SpanMin;
  /** How many past spans of this person it goes by; 0 for the table. */
  own: number;
  wait?: OwnWait;
  /** Not before this, min from now: a wait that runs already. */
  headMin: number;
  after: { work: number; waits: boolean }[];
}

/** A bike as its day is planned. */
export interface DayAround {
  /** In the order of the list. */
  steps: readonly StepRow[];
  joints: JointsById;
  parts: readonly PartRow[];
  /** Those that run. */
  waits: readonly WaitRow[];
  past: PastSpans;
  nowMs: number;
}

const tubed = (parts: readonly PartRow[], partIds: ReadonlySet<string>): boolean =>
  parts.some(
    ({ partId, faces = [] }) => partIds.has(partId) && faces.some(({ traits }) => traits?.['run'] === 'tube'),
  );

/** What a step leaves going on by itself. */
function waitOf(step: StepRow, { joints, parts }: DayAround): OwnWait | undefined {
  const placed = workPlaceOf(step, joints);
  const bonds = placed?.joint?.bonded && (placed.doing === 'bond' || placed.doing === 'together');
  if (placed?.doing === 'locker' || bonds) return { kind: 'cures', span: ownWaits.cures.span };
  const seats = placed?.place === 'bead' && placed.doing === 'together';
  return seats && placed.joint && !tubed(parts, placed.joint.partIds)
    ? { kind: 'settles', span: ownWaits.settles.span }
    : undefined;
}

/** Whether what comes after has to wait until it has set or settled; a thread that cures holds up the ride alone. */
const holdsUp = (step: StepRow, joints: JointsById): boolean => workPlaceOf(step, joints)?.doing !== 'locker';

/**
 * What is open of a plan as works of one pair of hands: threadlocker goes with the tightening that follows it while it is
 * liquid, and the waits that run hold up what hangs on them.
 * @example dayWorks({ steps: [], joints: new Map(), parts: [], waits: [], past: new Map(), nowMs: 0 }) //=> []
 */
export function dayWorks(around: DayAround): DayWork[] {
  const { joints, waits, nowMs, past } = around;
  const open = around.steps.filter(({ state }) => state === 'open');
  const before = orderedBefore(open, joints);
  const ways = [...before.keys()].map((at) => reach(before, at));
  // The tightening that goes with a threadlocker, unless something has to be done between the two.
  const joined = new Map<number, number>();
  for (const [at, step] of open.entries()) {
    if (step.kind !== 'lock') continue;
    const then = open.findIndex(
      (one, place) =>
        one.jointId === step.jointId &&
        one.kind !== 'lock' &&
        before[place]?.includes(at) &&
        !joined.has(place),
    );
    // Of a joint that was split each tightening hangs on every locker: they stay single.
    const between =
      then >= 0 &&
      before[then]?.some((one) => one !== at && (open[one]?.kind === 'lock' || ways[one]?.has(at)));
    if (then >= 0 && !between) joined.set(then, at);
  }
  const groups = [...open.keys()]
    .filter((at) => !joined.has(at))
    .map((at) => [at, ...[...joined].flatMap(([then, first]) => (first === at ? then : []))]);
  const groupOf = new Map(groups.flatMap((members, group) => members.map((at) => [at, group] as const)));
  return groups.map((members, group): DayWork => {
    const steps = members.flatMap((at) => open[at] ?? []);
    const spans = steps.map((step) => stepSpan(step, joints, past));
    const sum = (which: 0 | 1 | 2) => spans.reduce((all, { span }) => all + span[which], 0);
    const after = new Map<number, boolean>();
    for (const at of members)
      for (const other of before[at] ?? []) {
        const [from, step] = [groupOf.get(other), open[other]];
        if (from === undefined || from === group || !step) continue;
        const elsewhere = step.jointId !== open[at]?.jointId;
        const held = elsewhere && waitOf(step, around) !== undefined && holdsUp(step, joints);
        after.set(from, held || after.get(from) === true);
      }
    const wait = steps.map((step) => waitOf(step, around)).findLast((one) => one !== undefined);
    const heldUp = waits.filter((running) => steps.some((step) => waitHolds(running, step, joints)));
    const headMin = Math.max(0, ...heldUp.map(({ dueAtMs = nowMs }) => (dueAtMs - nowMs) / MINUTE_MS));
    return {
      ...{ steps, span: [sum(0), sum(1), sum(2)], own: Math.min(...spans.map(({ own }) => own)) },
      ...(wait ? { wait } : {}),
      ...{ headMin, after: [...after].map(([work, held]) => ({ work, waits: held })) },
    };
  });
}

/** Everything that comes before a step, however far. */
function reach(before: readonly number[][], from: number): Set<number> {
  const seen = new Set<number>();
  const go = (at: number) => {
    for (const one of before[at] ?? [])
      if (!seen.has(one)) {
        seen.add(one);
        go(one);
      }
  };
  go(from);
  return seen;
}

/** Whether a wait that runs has to be over before a step: a seal before the wheel is hung, a bond before it is loaded. */
function waitHolds({ jointId, waitKind }: WaitRow, step: StepRow, joints: JointsById): boolean {
  if (jointId === undefined || jointId === step.jointId) return false;
  const bonded = joints.get(jointId)?.bonded === true;
  if (waitKind !== 'seal' && waitKind !== 'adhesive' && !(waitKind === 'cure' && bonded)) return false;
  const began = { kind: waitKind === 'seal' ? 'seat' : 'press', jointId, title: '' } as const;
  return (orderedBefore([began, step], joints)[1]?.length ?? 0) > 0;
}

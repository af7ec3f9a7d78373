import { useContext, useEffect, useState } from 'preact/hooks';
import { UNDO_SHOWN_MS } from '../../controls/frames/UndoBar.tsx';
import type { Entry, Settings } from '../../journal/entries.ts';
import type { StepRow } from '../../journal/rows.ts';
import { neighbour, type PlaceInPlan, stepAfter, stepInHand } from '../../practice/bench/stepInHand.ts';
import { UndoSlot, useLogbook, useRun } from '../door.tsx';
import { ClosedStep } from './ClosedStep.tsx';
import { EndOfList } from './EndOfList.tsx';
import type { BenchView } from './frame/BenchFrame.tsx';
import { Interrupted } from './Interrupted.tsx';
import { LockStep } from './locker/LockStep.tsx';
import { MeasureStep } from './MeasureStep.tsx';
import { PlainStep } from './PlainStep.tsx';
import { takeChosen } from './sitting.ts';
import type { StepProps } from './stepProps.ts';
import { TorqueStep } from './torque/TorqueStep.tsx';
import { useInterruption } from './useInterruption.ts';
import { useOpenStep } from './useOpenStep.ts';

/** How long "Saved" stays in sight before the next step comes. */
const SHOWN_MS = 1200;
const END = 'end';

interface Logged {
  stepId: string;
  entryIds: string[];
  atMs: number;
  /** Seen as logged in the list; found open again after that, it was taken back. */
  seen: boolean;
  /** Still shown at its step; once left, looking at it again moves nothing on. */
  fresh: boolean;
}

const idAt = (steps: readonly StepRow[], place: PlaceInPlan) =>
  place.at === 'end' ? END : (steps[place.index]?.stepId ?? END);

/** Which step is in hand, what was just logged, and where to go on. */
export function BenchWork({ view, settings }: { view: BenchView; settings: Settings }) {
  const { bike, steps, joints } = view;
  const logbook = useLogbook();
  const offerUndo = useContext(UndoSlot);
  const { run } = useRun();
  const [stepId, setStepId] = useState(
    () => takeChosen(bike.bikeId) ?? idAt(steps, stepInHand(steps, bike.openStepId)),
  );
  const [logged, setLogged] = useState<Logged>();
  const [toolId, setToolId] = useState<string>();

  // A step that left the list while it was shown gives way to the one where work goes on.
  const found = steps.findIndex((step) => step.stepId === stepId);
  const hand = stepId === END ? ({ at: 'end' } as const) : stepInHand(steps, bike.openStepId);
  const place: PlaceInPlan = found === -1 ? hand : { at: 'step', index: found };
  const step = place.at === 'step' ? steps[place.index] : undefined;
  const joint = step?.jointId ? joints.find(({ jointId }) => jointId === step.jointId) : undefined;

  const openId = step?.state === 'open' ? step.stepId : undefined;
  const [asked, answered] = useInterruption(bike.bikeId, openId, bike.openStepId);
  useOpenStep(openId, bike.openStepId);

  const stands = (id: string) => {
    const row = steps.find((each) => each.stepId === id);
    return row?.state === 'done' || row?.state === 'skipped';
  };
  const show = (id: string) => {
    answered();
    setLogged((old) => old && { ...old, fresh: false });
    setStepId(id);
  };
  const goTo = (next: PlaceInPlan) => show(idAt(steps, next));

  useEffect(() => {
    if (!logged) return;
    if (stands(logged.stepId)) {
      if (!logged.seen) setLogged({ ...logged, seen: true });
    } else if (logged.seen) {
      // Taken back: the step lies open again and is shown, so that it is not taken for done.
      setLogged(undefined);
      setStepId(logged.stepId);
    }
  });
  const justSaved = logged?.fresh && logged.stepId === step?.stepId ? logged : undefined;
  const savedIndex = justSaved && place.at === 'step' ? place.index : undefined;
  useEffect(() => {
    if (savedIndex === undefined) return;
    const timer = setTimeout(() => goTo(stepAfter(steps, savedIndex)), SHOWN_MS);
    return () => clearTimeout(timer);
    // Counted from the commit: a list read anew meanwhile must not start the span again.
  }, [savedIndex, justSaved?.atMs]);

  const onLogged = (entries: Entry[]) => {
    answered();
    if (step)
      setLogged({
        stepId: step.stepId,
        entryIds: entries.map(({ id }) => id),
        atMs: logbook.now(),
        seen: false,
        fresh: true,
      });
  };
  const onUndo = () => {
    if (!logged || logbook.now() - logged.atMs > UNDO_SHOWN_MS) return false;
    offerUndo(undefined);
    void run({ type: 'undo', entryIds: logged.entryIds });
    setStepId(logged.stepId);
    setLogged(undefined);
    return true;
  };
  const onBack = () => goTo(neighbour(steps, place, -1));
  if (!step || place.at === 'end') return <EndOfList {...{ view, onBack, onUndo }} onShow={show} />;

  const { index } = place;
  if (asked && openId !== undefined)
    return (
      <Interrupted key={step.stepId} {...{ view, step, index, onLogged }} onShow={show} onStep={answered} />
    );
  const props: StepProps = {
    ...{ view, step, index, joint, settings, toolId, onBack, onLogged, onUndo },
    onTool: setToolId,
    onShow: show,
    onNext: () => goTo(neighbour(steps, place, 1)),
  };
  const key = step.stepId;
  if (step.state !== 'open') return <ClosedStep key={key} {...props} justSaved={justSaved !== undefined} />;
  if (step.kind === 'torque' && joint) return <TorqueStep key={key} {...props} joint={joint} />;
  if (step.kind === 'lock') return <LockStep key={key} {...props} joint={joint} />;
  if (step.kind === 'measure') return <MeasureStep key={key} {...props} />;
  return <PlainStep key={key} {...props} />;
}

import { useState } from 'preact/hooks';
import type { JointRow, StepRow } from '../../../journal/rows.ts';
import { type TorqueUnit, type Typed, torqueNm, unitLabel } from '../../../mechanics/units.ts';
import { mostNm, type RulingTarget } from '../../../planning/rulingTarget.ts';
import { type AppliedDoubt, appliedDoubt } from '../../../practice/joint/appliedDoubt.ts';
import { threadDiameterMm } from '../../../standards/screws/threadDiameter.ts';
import { withRideAfter } from '../../../words/rideAfter.ts';
import { useRun } from '../../door.tsx';
import { keepAside } from '../keepAside.ts';
import type { StepProps } from '../stepProps.ts';
import type { Gathered } from '../useStepDraft.ts';

type Entered = 'tap' | 'keypad';

/** A torque as it is said on a button, never broken between figure and unit. */
export const torqueSaid = ({ typed, unit }: Typed<TorqueUnit>) => `${typed}\u00a0${unitLabel[unit]}`;

export interface TorqueLogOptions {
  step: StepRow;
  joint: JointRow;
  ruling: RulingTarget;
  /** Bolts of the joint, ≥ 1. */
  of: number;
  gathered: Gathered;
  onLogged: StepProps['onLogged'];
}

/** The two ways to log a torque step: what was applied, after a doubt is answered, or that it is only hand-tight. */
export function useTorqueLog({ step, joint, ruling, of, gathered, onLogged }: TorqueLogOptions) {
  const { run, save } = useRun();
  const [doubted, setDoubted] = useState<{
    applied: Typed<TorqueUnit>;
    entered: Entered;
    doubt: AppliedDoubt;
  }>();
  const { jointId, bikeId, name } = joint;
  const { stepId } = step;
  const [tried, setTried] = useState<{ applied: Typed<TorqueUnit>; entered: Entered }>();
  const write = async (applied: Typed<TorqueUnit>, entered: Entered, despite?: string) => {
    const { between, toolId, marked, pass } = gathered.draft;
    setDoubted(undefined);
    setTried({ applied, entered });
    const entries = await run(
      {
        type: 'apply-torque',
        ...{ jointId, stepId, applied, entered, bolts: of, passes: pass },
        ...(toolId ? { toolId } : {}),
        ...(between ? { between } : {}),
        ...(marked ? { marked } : {}),
        ...(despite ? { despite } : {}),
        ...gathered.noteAndPhotos(),
      },
      { photos: gathered.photos, undo: withRideAfter(`${torqueSaid(applied)} applied: ${name}`) },
    );
    if (!entries) return false;
    gathered.clear();
    onLogged(entries);
    return true;
  };
  return {
    save,
    doubted,
    dismiss: () => setDoubted(undefined),
    /** Logs what was refused for a bond that has not set, with the word for it. */
    goOn: async (despite: string) => tried !== undefined && write(tried.applied, tried.entered, despite),
    /** Logs what was doubted, as it was. */
    confirm: () => doubted && void write(doubted.applied, doubted.entered),
    apply(applied: Typed<TorqueUnit>, entered: Entered) {
      if (save.is === 'saving') return;
      const doubt = appliedDoubt(torqueNm(applied.value, applied.unit), {
        diameterMm: threadDiameterMm(joint.fasteners),
        mostNm: ruling.ok ? mostNm(ruling.target) : undefined,
      });
      if (doubt) setDoubted({ applied, entered, doubt });
      else void write(applied, entered);
    },
    async handTighten() {
      if (save.is === 'saving') return;
      const entries = await run(
        [
          ...keepAside(gathered, { bikeId, stepId, jointId }),
          { type: 'hand-tighten', jointId, stepId, bolts: of },
        ],
        { photos: gathered.photos, undo: `Hand-tight: ${name}` },
      );
      if (!entries) return;
      gathered.clear();
      onLogged(entries);
    },
  };
}

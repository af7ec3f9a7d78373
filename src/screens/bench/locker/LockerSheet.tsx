import { Button } from '../../../controls/Button.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { JointRow, StepRow } from '../../../journal/rows.ts';
import type { TemperatureUnit } from '../../../mechanics/units.ts';
import { nearDiscBrake } from '../../../planning/lockerWait.ts';
import { lockerCommand, lockerSaid } from '../../../practice/bench/lockerCommand.ts';
import { withRideAfter } from '../../../words/rideAfter.ts';
import { useRun } from '../../door.tsx';
import { SaveLine } from '../frame/SaveLine.tsx';
import type { Gathered } from '../useStepDraft.ts';
import { LockerForm } from './LockerForm.tsx';

export interface LockerSheetProps {
  step: StepRow;
  joint: JointRow;
  gathered: Gathered;
  temperatureUnit: TemperatureUnit;
  onPut: () => void;
  onClose: () => void;
}

/** Threadlocker put on during a torque step: logged by itself and at once, since its wait begins now. */
export function LockerSheet({ step, joint, gathered, temperatureUnit, onPut, onClose }: LockerSheetProps) {
  const { draft, change } = gathered;
  const { run, save } = useRun();
  const command = lockerCommand(draft, joint, step);
  const put = async () => {
    if (!command || !draft.grade || save.is === 'saving') return;
    const entries = await run(command, { undo: withRideAfter(lockerSaid(draft.grade)) });
    if (entries) onPut();
  };
  return (
    <Sheet
      open
      title={`Threadlocker: ${joint.name}`}
      onClose={onClose}
      actions={
        <>
          <SaveLine save={save} />
          <Button kind="main" size="greasy" icon="drop" disabled={!command} onPress={() => void put()}>
            Put on now
          </Button>
        </>
      }
    >
      <LockerForm
        draft={draft}
        change={change}
        nearDiscBrake={nearDiscBrake(joint)}
        screwed={joint.fasteners.length > 0}
        temperatureUnit={temperatureUnit}
      />
    </Sheet>
  );
}

import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Keypad } from '../../controls/fields/Keypad.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { Toggle } from '../../controls/fields/Toggle.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import type { BetweenKind } from '../../journal/entries.ts';
import type { JointRow } from '../../journal/rows.ts';
import { parseTyped } from '../../mechanics/quantity.ts';
import { boltCount } from '../../mechanics/screws/boltCount.ts';
import {
  type TemperatureUnit,
  type TorqueUnit,
  torqueNm,
  unitLabel,
  unitsOf,
} from '../../mechanics/units.ts';
import { nearDiscBrake } from '../../planning/lockerWait.ts';
import { mostNm, rulingTarget } from '../../planning/rulingTarget.ts';
import { toolState } from '../../planning/toolState.ts';
import { lockerOn } from '../../practice/bench/lockerCommand.ts';
import { emptyLockerDraft, type LockerDraft } from '../../practice/bench/stepDraft.ts';
import { appliedDoubt } from '../../practice/joint/appliedDoubt.ts';
import { countedAs } from '../../standards/jointKinds.ts';
import { threadDiameterMm } from '../../standards/screws/threadDiameter.ts';
import { betweenNames } from '../../words/betweenNames.ts';
import { toolStateWords } from '../../words/history/tradeWords.ts';
import { withRideAfter } from '../../words/rideAfter.ts';
import { targetFigureText } from '../../words/targetWords.ts';
import { BondSheet } from '../bench/BondSheet.tsx';
import { LockerForm } from '../bench/locker/LockerForm.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useLogbook, useRun, useView } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { Waits } from '../Waits.tsx';

const onThread: readonly BetweenKind[] = ['dry', 'grease', 'assembly-paste', 'anti-seize', 'threadlocker'];

interface TorqueDraft extends LockerDraft {
  typed: string;
  unit: TorqueUnit;
  passes: string;
  toolId: string;
  between: BetweenKind | '';
  marked: boolean;
}

export interface TorqueEntryProps {
  joint: JointRow;
  unit: TorqueUnit;
  temperatureUnit: TemperatureUnit;
  /** A step of the plan asks for this torque and is not done. */
  stepWaits: boolean;
  onClose: () => void;
}

/** A torque given away from the plan: the figure by keypad, with what it was given by and on. */
export function TorqueEntry({ joint, unit: chosen, temperatureUnit, stepWaits, onClose }: TorqueEntryProps) {
  const logbook = useLogbook();
  const tools = useView('tools');
  const { run, save } = useRun();
  const lies = joint.between.find(({ kind }) => onThread.includes(kind))?.kind;
  const [draft, change, clear] = useDraft<TorqueDraft>(`torque:${joint.jointId}`, {
    ...{ typed: '', unit: chosen, passes: '1', toolId: '', marked: false },
    between: joint.applied?.between ?? lies ?? '',
    ...emptyLockerDraft,
  });
  const { typed, unit, passes, toolId, between, marked } = draft;
  const [wrong, setWrong] = useState<string>();
  const [sure, setSure] = useState(false);
  const [lockerWrong, setLockerWrong] = useState(false);
  const { locked, applied } = joint;
  // Put on since it was last tightened, it is closed up by this torque.
  const wetNow = locked && locked.brokenAtMs === undefined && locked.atMs > (applied?.atMs ?? 0);
  const asked = between === 'threadlocker' && !wetNow;
  const ruling = rulingTarget(joint.targets);
  const bolts = Math.max(1, boltCount(joint.fasteners));
  const noun = countedAs(joint.kind);

  const apply = async (despite?: string) => {
    const wet = asked ? lockerOn(draft, joint) : undefined;
    if (asked && !wet) {
      setLockerWrong(true);
      return false;
    }
    const torque = parseTyped(typed, unitsOf.torque, unit);
    if (!torque.ok) {
      setWrong('Enter the torque you applied.');
      return false;
    }
    const doubt = appliedDoubt(torqueNm(torque.quantity.value, unit), {
      diameterMm: threadDiameterMm(joint.fasteners),
      mostNm: ruling.ok ? mostNm(ruling.target) : undefined,
    });
    if (doubt && !sure) {
      setSure(true);
      setWrong(
        doubt.about === 'target'
          ? 'Above target. Tap again to log it.'
          : 'Unusual for this thread. Check number and unit, then tap again.',
      );
      return false;
    }
    const entries = await run(
      {
        type: 'apply-torque',
        ...{ jointId: joint.jointId, applied: torque.quantity, entered: 'keypad', bolts, marked },
        passes: Number(passes),
        ...(toolId ? { toolId } : {}),
        ...(between ? { between } : {}),
        ...(wet ? { locker: wet } : {}),
        ...(despite ? { despite } : {}),
      },
      { undo: withRideAfter(`${joint.name}: ${typed} ${unitLabel[unit]}`) },
    );
    if (!entries) return false;
    clear();
    onClose();
    return true;
  };
  const inHand = tools.is === 'there' ? tools.value.filter(({ putAway }) => putAway === undefined) : [];
  return (
    <Screen
      title={joint.name}
      route="torque"
      back={onClose}
      waits={<Waits />}
      actions={
        <Button
          kind="main"
          size="greasy"
          icon="spanner"
          disabled={save.is === 'saving'}
          under={bolts === 1 ? `One ${noun}` : `All ${bolts} ${noun}s`}
          onPress={() => void apply()}
        >
          {typed === '' ? 'Log the torque' : `Log ${typed} ${unitLabel[unit]}`}
        </Button>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <BondSheet jointId={joint.jointId} save={save} onWord={apply} />
        <Keypad
          label={
            ruling.ok
              ? `Applied; target ${targetFigureText(ruling.target)} ${unitLabel[ruling.target.torque.unit]}`
              : 'Torque applied, no target'
          }
          typed={typed}
          unit={unit}
          units={[...new Set<TorqueUnit>([chosen, 'N.m', '[in_i].[lbf_av]'])]}
          onTyped={(text, one) => {
            change({ typed: text, unit: one });
            setWrong(undefined);
            setSure(false);
          }}
          onDone={() => void apply()}
          error={wrong}
        />
        {stepWaits && (
          <Notice kind="note" title="A step for this joint is open in the plan">
            Logging here does not tick off the step. Log it at the bench instead.
          </Notice>
        )}
        {joint.locked && (
          <Notice kind="caution" title="This joint has threadlocker">
            Turning breaks the bond: clean and re-apply.
          </Notice>
        )}
        <SelectField
          label="Passes"
          options={['1', '2', '3', '4'].map((value) => ({ value, label: value }))}
          value={passes}
          onChoose={(count) => change({ passes: count })}
        />
        <SelectField
          label="Tool"
          options={[
            { value: '', label: 'None named' },
            ...inHand.map((tool) => ({
              value: tool.toolId,
              label: `${tool.name} (${toolStateWords[toolState(tool, logbook.now())]})`,
            })),
          ]}
          value={toolId}
          onChoose={(tool) => change({ toolId: tool })}
        />
        <SelectField
          label="On the threads"
          options={[
            { value: '', label: 'Not said' },
            ...onThread.map((value) => ({ value, label: betweenNames[value] })),
          ]}
          value={between}
          onChoose={(what) => change({ between: what })}
        />
        {asked && (
          <>
            {lockerWrong && (
              <Notice kind="error" title="Choose grade and surface">
                Fresh threadlocker starts its own cure.
              </Notice>
            )}
            <LockerForm
              draft={draft}
              change={(chosen) => {
                setLockerWrong(false);
                change(chosen);
              }}
              nearDiscBrake={nearDiscBrake(joint)}
              screwed
              temperatureUnit={temperatureUnit}
            />
          </>
        )}
        <Toggle label="Paint mark added" on={marked} onToggle={(on) => change({ marked: on })} />
      </div>
    </Screen>
  );
}

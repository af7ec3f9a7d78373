import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { StepCard } from '../../controls/frames/StepCard.tsx';
import type { IconName } from '../../controls/Icon.tsx';
import { Tile } from '../../controls/Tile.tsx';
import { type AnyUnit, type Typed, unitLabel, unitsOf } from '../../mechanics/units.ts';
import { useRun } from '../door.tsx';
import { useBenchKeys } from './benchKeys.ts';
import { BenchFrame } from './frame/BenchFrame.tsx';
import { StepFoot } from './frame/StepFoot.tsx';
import type { StepProps } from './stepProps.ts';
import { Extras } from './torque/Extras.tsx';
import { NumberPad } from './torque/NumberPad.tsx';
import { useStepDraft } from './useStepDraft.ts';

const measureKinds = {
  length: unitsOf.length,
  pressure: unitsOf.pressure,
  force: ['N', 'kgf', '[lbf_av]'],
  mass: unitsOf.mass,
  angle: ['deg'],
} as const satisfies Record<string, readonly AnyUnit[]>;
type MeasuredKind = keyof typeof measureKinds;

const tabs: { value: MeasuredKind; label: string; icon: IconName }[] = [
  { value: 'length', label: 'Length', icon: 'ruler' },
  { value: 'pressure', label: 'Pressure', icon: 'tyre' },
  { value: 'force', label: 'Force', icon: 'wheel' },
  { value: 'mass', label: 'Mass', icon: 'scale' },
  { value: 'angle', label: 'Angle', icon: 'undo' },
];
const kindOf = (unit: AnyUnit): MeasuredKind =>
  tabs.find(({ value }) => (measureKinds[value] as readonly AnyUnit[]).includes(unit))?.value ?? 'length';

/** A measure taken at the bench, kept as typed with its unit. */
export function MeasureStep(props: StepProps) {
  const { view, step, index, joint, settings, onShow, onBack, onNext, onLogged, onUndo } = props;
  const gathered = useStepDraft(step.stepId, undefined);
  const { draft, change } = gathered;
  const [typing, setTyping] = useState(false);
  const { run, save } = useRun();
  const unit = (draft.unit as AnyUnit | undefined) ?? settings.lengthUnit;
  const kind = kindOf(unit);
  const log = async (measured: Typed<AnyUnit>) => {
    if (save.is === 'saving') return;
    const command = {
      type: 'finish-step',
      stepId: step.stepId,
      measured,
      ...gathered.noteAndPhotos(),
    } as const;
    const undo = `${measured.typed} ${unitLabel[measured.unit]}: ${step.title}`;
    const entries = await run(command, { photos: gathered.photos, undo });
    if (!entries) return;
    setTyping(false);
    gathered.clear();
    onLogged(entries);
  };
  useBenchKeys({
    next: typing ? undefined : onNext,
    back: typing ? undefined : onBack,
    applied: typing ? undefined : () => setTyping(true),
    undo: typing ? undefined : () => void onUndo(),
  });
  if (typing)
    return (
      <NumberPad<AnyUnit>
        title={step.title}
        label="Measured"
        typed={draft.typed}
        unit={unit}
        units={measureKinds[kind]}
        onTyped={(typed, typedUnit) => change({ typed, unit: typedUnit })}
        save={save}
        onLog={(measured) => void log(measured)}
        onClose={() => setTyping(false)}
      />
    );
  return (
    <BenchFrame
      view={view}
      index={index}
      onShow={onShow}
      actions={
        <StepFoot
          save={save}
          main={
            <Button
              kind="main"
              size="greasy"
              icon="ruler"
              under={draft.typed ? `${draft.typed} ${unitLabel[unit]}, not logged yet` : undefined}
              onPress={() => setTyping(true)}
            >
              Type the measure
            </Button>
          }
          onBack={onBack}
          onNext={onNext}
        />
      }
    >
      <StepCard title={step.title} icon="ruler" state="open" caption="Measure">
        {step.detail && <p class="far">{step.detail}</p>}
        {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a grid in every browser */}
        <div class="tiles" role="group" aria-label="What is measured">
          {tabs.map(({ value, label, icon }) => (
            <Tile
              key={value}
              icon={icon}
              pressed={value === kind}
              onPress={() => change({ unit: measureKinds[value][0] })}
            >
              {label}
            </Tile>
          ))}
        </div>
        <Extras {...{ step, joint, onLogged, gathered }} />
      </StepCard>
    </BenchFrame>
  );
}

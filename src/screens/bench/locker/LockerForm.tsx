import './lockerForm.css';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { BigNumber } from '../../../controls/figures/BigNumber.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import type { Band } from '../../../mechanics/band.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { convert, type TemperatureUnit, unitLabel } from '../../../mechanics/units.ts';
import { adviceWords, refusalWords, surfacesBySpeed } from '../../../planning/lockerWait.ts';
import { lockerWaitOf } from '../../../practice/bench/lockerCommand.ts';
import type { LockerDraft } from '../../../practice/bench/stepDraft.ts';
import { cureGrid } from '../../../standards/screws/cureGrid.ts';
import { lockers, usualColour } from '../../../standards/screws/lockers.ts';
import { SetWait } from './SetWait.tsx';

const STEP_C = 5;
const COLDEST_C = -10;
const HOTTEST_C = 40;

export interface LockerFormProps {
  draft: LockerDraft;
  change: (changed: Partial<LockerDraft>) => void;
  nearDiscBrake: boolean;
  /** A screwed joint has no use for what is made for bores. */
  screwed: boolean;
  /** Gap measured across in a bore, mm. */
  gapMm?: number | undefined;
  temperatureUnit: TemperatureUnit;
}

/** Whole hours, and where it is a matter of few, half ones. */
const hours = ({ lo, hi }: Band) =>
  `${numberText(lo, lo < 10 ? 1 : 0)} to ${numberText(hi, hi < 10 ? 1 : 0)} h`;
const uses = { thread: 'On threads', 'thread-after-assembly': 'Runs into threads', cylinder: 'In bores' };
const removals = { 'hand-tools': 'hand tools', heat: 'heat', puller: 'a puller' };

function Cure({ draft, nearDiscBrake, gapMm }: Pick<LockerFormProps, 'draft' | 'nearDiscBrake' | 'gapMm'>) {
  const wait = lockerWaitOf(draft, nearDiscBrake, gapMm);
  if (!wait) return <p class="far">Choose grade and surface to get the curing time.</p>;
  if (!wait.ok) return <Notice kind="caution" title={refusalWords[wait.reason]} />;
  const { rideHours, fullHours, waitHours, advice } = wait.cure;
  const full = fullHours ? `full after ${hours(fullHours)}` : 'never full on this surface without primer';
  return (
    <>
      <BigNumber
        label="Curing time"
        value={String(waitHours)}
        unit="h"
        source={`By the curves it holds a ride after ${hours(rideHours)} and is ${full}. The curves are unverified, so the longer time is used, and never less than a day.`}
      />
      {advice.map((each) => (
        <p key={each} class="far">
          {adviceWords[each]}
        </p>
      ))}
    </>
  );
}

/** Which threadlocker went on what, how warm it is, and the wait that follows. */
export function LockerForm({
  draft,
  change,
  nearDiscBrake,
  screwed,
  gapMm,
  temperatureUnit,
}: LockerFormProps) {
  const { grade, surface, primer, temperatureC } = draft;
  const offered = lockers.filter(({ use }) => !screwed || use !== 'cylinder');
  const degrees = numberText(convert(temperatureC, 'Cel', temperatureUnit), 0);
  const warmer = (byC: number) =>
    change({ temperatureC: Math.min(HOTTEST_C, Math.max(COLDEST_C, temperatureC + byC)) });
  return (
    <div class="stack">
      <div aria-live="polite">
        <Cure draft={draft} nearDiscBrake={nearDiscBrake} gapMm={gapMm} />
        {!screwed && (
          <p class="far">
            {gapMm === undefined
              ? 'Bore and outside are not measured: the widest gap is assumed. Measure both at the joint.'
              : `Gap by the measured diameters: ${numberText(Math.max(0, gapMm), 2)} mm.`}
          </p>
        )}
      </div>
      <SetWait {...{ draft, change, nearDiscBrake, gapMm }} />
      <Choice
        label="Grade"
        value={grade}
        onChoose={(chosen) => change({ grade: chosen })}
        options={offered.map((row) => ({
          value: row.grade,
          label: [row.label, usualColour(row.grade)].filter(Boolean).join(', '),
          hint: `${uses[row.use]}; comes off with ${removals[row.removal]}`,
        }))}
      />
      <Choice
        label="Surface; of two metals the slower, lower in the list"
        value={surface}
        onChoose={(chosen) => change({ surface: chosen })}
        options={surfacesBySpeed.map((value) => ({ value, label: cureGrid.surfaces[value].label }))}
      />
      <Toggle label="Primer used" on={primer} onToggle={(on) => change({ primer: on })} />
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row in every browser */}
      <div class="locker-stepper" role="group" aria-label="Temperature of the joint">
        <Button size="greasy" icon="minus" label="5 degrees cooler" onPress={() => warmer(-STEP_C)}>
          {''}
        </Button>
        <p role="status">
          {degrees} {unitLabel[temperatureUnit]}
        </p>
        <Button size="greasy" icon="plus" label="5 degrees warmer" onPress={() => warmer(STEP_C)}>
          {''}
        </Button>
      </div>
    </div>
  );
}

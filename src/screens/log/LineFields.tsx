import type { ComponentChildren } from 'preact';
import { NumberField } from '../../controls/fields/NumberField.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import type { CutKind, Settings } from '../../journal/entries.ts';
import { unitLabel, unitsOf } from '../../mechanics/units.ts';
import { refusalWords, surfacesBySpeed } from '../../planning/lockerWait.ts';
import { usualSpans } from '../../planning/spanTyped.ts';
import { jointNamed } from '../../practice/log/jointNamed.ts';
import type { LineDraft, LineKind, LineWrong } from '../../practice/log/lineDraft.ts';
import { lockerWaitOn } from '../../practice/log/lines.ts';
import type { AtHand } from '../../practice/log/named.ts';
import { spotsOn, usualProblems } from '../../practice/log/picks.ts';
import { cureGrid } from '../../standards/screws/cureGrid.ts';
import { lockers, usualColour } from '../../standards/screws/lockers.ts';
import { cutWords } from '../../words/history/tradeWords.ts';
import { curedText } from '../../words/rideAfter.ts';
import { useNow } from '../door.tsx';
import { OriginFields } from './OriginFields.tsx';
import { Picks } from './Picks.tsx';

export interface LineFieldsProps {
  draft: LineDraft;
  hand: AtHand;
  settings: Settings;
  wrong: LineWrong;
  /** The problem must not be ridden with, whatever is tapped. */
  grave: boolean;
  change: (changed: Partial<LineDraft>) => void;
}

const asOption = <T extends string>(value: T) => ({ value, words: value as string });

function TorqueFields({ draft, hand, settings, wrong, change }: LineFieldsProps) {
  const { torqueUnit = settings.torqueUnit, toolId, toolName } = draft;
  const tools = hand.tools.filter(({ putAway }) => putAway === undefined);
  return (
    <>
      <NumberField
        label="Torque applied"
        typed={draft.figure}
        unit={torqueUnit}
        units={[...new Set([settings.torqueUnit, ...unitsOf.torque])]}
        onTyped={(figure, unit) => change({ figure, ...(unit ? { torqueUnit: unit } : {}) })}
        error={wrong.figure}
      />
      <SelectField
        label="Tool"
        options={[
          { value: '', label: 'None named' },
          ...tools.map((tool) => ({ value: tool.toolId, label: tool.name })),
          { value: 'new', label: 'Add a tool' },
        ]}
        value={toolId}
        onChoose={(id) => change({ toolId: id, toolName: '' })}
      />
      {toolId === 'new' && (
        <TextField
          label="Name of the tool"
          value={toolName}
          onInput={(name) => change({ toolName: name })}
          maxLength={120}
        />
      )}
    </>
  );
}

function LockerFields({ draft, hand, wrong, change }: LineFieldsProps) {
  const nowMs = useNow(60_000);
  const { grade, surface, where, whereId } = draft;
  const known = hand.joints.find(({ jointId }) => jointId === whereId);
  const wait = where === '' ? undefined : lockerWaitOn(draft, known ?? jointNamed(where));
  const rows = lockers.filter(({ use }) => use !== 'cylinder');
  return (
    <>
      <div class="log-group">
        <span class="field-label">Grade</span>
        <Picks
          label="Grade"
          options={rows.map((row) => {
            const colour = usualColour(row.grade);
            return { value: row.grade, words: colour ? `${row.label}, ${colour}` : row.label };
          })}
          chosen={grade === '' ? undefined : grade}
          onChoose={(chosen) => change({ grade: chosen })}
        />
        {wrong.grade && (
          <p class="loud" role="alert">
            {wrong.grade}
          </p>
        )}
      </div>
      <SelectField
        label="Surface; of two metals the slower"
        options={surfacesBySpeed.map((value) => ({ value, label: cureGrid.surfaces[value].label }))}
        value={surface}
        onChoose={(chosen) => change({ surface: chosen })}
        error={wrong.surface}
      />
      {wait && !wait.ok && <Notice kind="caution" title={refusalWords[wait.reason]} />}
      {wait?.ok && <p role="status">{`Cures at 20 °C: ${curedText(nowMs + wait.waitMs)}`}</p>}
    </>
  );
}

const tyreMarks = [
  { value: 'sealant', words: 'Sealant in' },
  { value: 'reading', words: 'Pressure read' },
  { value: 'pumped', words: 'Pumped to' },
  { value: 'burped', words: 'Burped' },
] as const;

function TyreFields({ draft, settings, wrong, change }: LineFieldsProps) {
  const { mark, figure, lookAgainMs } = draft;
  return (
    <>
      <Picks
        label="What was done"
        all
        options={tyreMarks}
        chosen={mark}
        onChoose={(chosen) => change({ mark: chosen, figure: '' })}
      />
      {mark === 'sealant' && (
        <NumberField
          label="Amount (optional)"
          typed={figure}
          unit={draft.volumeUnit ?? 'mL'}
          units={unitsOf.volume}
          onTyped={(typed, unit) => change({ figure: typed, ...(unit ? { volumeUnit: unit } : {}) })}
          error={wrong.figure}
        />
      )}
      {(mark === 'reading' || mark === 'pumped') && (
        <NumberField
          label="Pressure"
          typed={figure}
          unit={draft.pressureUnit ?? settings.pressureUnit}
          units={unitsOf.pressure}
          onTyped={(typed, unit) => change({ figure: typed, ...(unit ? { pressureUnit: unit } : {}) })}
          error={wrong.figure}
        />
      )}
      <div class="log-group">
        <span class="field-label">Look again in</span>
        <Picks
          label="Look again in"
          all
          options={usualSpans.map(({ words, waitMs }) => ({ value: String(waitMs), words }))}
          chosen={lookAgainMs > 0 ? String(lookAgainMs) : undefined}
          onChoose={(ms) => change({ lookAgainMs: Number(ms) === lookAgainMs ? 0 : Number(ms) })}
        />
      </div>
    </>
  );
}

const cuts: readonly CutKind[] = [
  'file',
  'saw',
  'drill',
  'grind',
  'cold-set',
  'ream',
  'tap',
  'turn',
  'other',
];

function CutFields({ draft, settings, wrong, change }: LineFieldsProps) {
  return (
    <>
      <div class="log-group">
        <TextField
          label="Where on it"
          value={draft.spot}
          onInput={(spot) => change({ spot })}
          error={wrong.spot}
          maxLength={120}
        />
        <Picks
          label="Where on it"
          options={spotsOn(draft.where).map(asOption)}
          chosen={draft.spot}
          onChoose={(spot) => change({ spot })}
        />
      </div>
      <SelectField
        label="What was done"
        options={cuts.map((value) => ({ value, label: cutWords[value].label }))}
        value={draft.cut}
        onChoose={(cut) => change({ cut })}
      />
      <TextField
        label={`How much, ${unitLabel[draft.lengthUnit ?? settings.lengthUnit]}`}
        hint="2 off, or 48 to 46"
        value={draft.figure}
        onInput={(figure) => change({ figure })}
        error={wrong.figure}
        maxLength={40}
      />
    </>
  );
}

function ProblemFields({ draft, settings, wrong, grave, change }: LineFieldsProps) {
  const decision = grave ? 'do-not-ride' : draft.decision;
  return (
    <>
      <div class="log-group">
        <span class="field-label">May it be ridden?</span>
        <Picks
          label="May it be ridden?"
          all
          options={[
            { value: 'do-not-ride', words: 'Do not ride' },
            ...(grave ? [] : [{ value: 'ride-limited' as const, words: 'Only so far' }]),
          ]}
          chosen={decision}
          onChoose={(chosen) => change({ decision: chosen })}
        />
      </div>
      {decision === 'ride-limited' && (
        <NumberField
          label={`How far, ${unitLabel[settings.distanceUnit]}`}
          typed={draft.figure}
          onTyped={(figure) => change({ figure })}
          error={wrong.figure}
        />
      )}
    </>
  );
}

const rideMinutes = ['15', '30', '60', '120'] as const;

function RideFields({ draft, settings, wrong, change }: LineFieldsProps) {
  const { minutes, figure, distanceUnit = settings.distanceUnit } = draft;
  return (
    <>
      <div class="log-group">
        <NumberField
          label="Minutes"
          typed={minutes}
          onTyped={(typed) => change({ minutes: typed })}
          error={wrong.minutes}
        />
        <Picks
          label="Minutes"
          all
          options={rideMinutes.map((value) => ({ value: value as string, words: `${value} min` }))}
          chosen={minutes}
          onChoose={(typed) => change({ minutes: typed })}
        />
      </div>
      <NumberField
        label="Distance"
        typed={figure}
        unit={distanceUnit}
        units={unitsOf.distance}
        onTyped={(typed, unit) => change({ figure: typed, ...(unit ? { distanceUnit: unit } : {}) })}
        error={wrong.figure}
      />
      <TextField
        label="Noticed (optional)"
        lines={2}
        value={draft.words}
        onInput={(words) => change({ words })}
        maxLength={1000}
      />
    </>
  );
}

/** What a line is, before the place: a problem and a note begin with it. */
export function FirstFields({ kind, draft, wrong, change }: LineFieldsProps & { kind: LineKind }) {
  if (kind !== 'problem' && kind !== 'note') return null;
  const field = (
    <TextField
      label={kind === 'note' ? 'Note' : 'What is wrong?'}
      {...(kind === 'note' ? { lines: 4 } : {})}
      value={draft.words}
      onInput={(words) => change({ words })}
      error={wrong.words}
      maxLength={kind === 'note' ? 2000 : 300}
    />
  );
  if (kind === 'note') return field;
  return (
    <div class="log-group">
      {field}
      <Picks
        label="What is wrong?"
        options={usualProblems.map(asOption)}
        chosen={usualProblems.find((words) => words === draft.words)}
        onChoose={(words) => change({ words })}
      />
    </div>
  );
}

const fields: Readonly<Record<LineKind, (props: LineFieldsProps) => ComponentChildren>> = {
  torque: TorqueFields,
  locker: LockerFields,
  tyre: TyreFields,
  cut: CutFields,
  part: OriginFields,
  problem: ProblemFields,
  ride: RideFields,
  note: () => null,
};

/** What a line of one kind asks after its place. */
export function LineFields({ kind, ...props }: LineFieldsProps & { kind: LineKind }) {
  const Fields = fields[kind];
  return <Fields {...props} />;
}

import { Choice } from '../../../controls/fields/Choice.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { readWheelForm } from '../../../drafts/wheelDraft.ts';
import type { WheelEar } from '../../../journal/aboutWheels.ts';
import { calibrateByEar } from '../../../mechanics/wheels/spokePitchCalibration.ts';
import { calibrationRefusals, endsWords, soundsDetails, soundsWords } from '../../../words/wheel/earWords.ts';
import { PairRows } from './PairRows.tsx';
import type { SideFieldsProps } from './SideFields.tsx';

/** What the known tensions give, in a sentence. */
function calibrationSentence(known: NonNullable<WheelEar['known']>): string {
  const read = calibrateByEar(known);
  if (!read.ok) return calibrationRefusals[read.reason];
  return 'Calibrated: every pitch of this wheel is read by these rows.';
}

/** How this wheel is listened to: chosen once, so that its spokes compare. */
export function EarFields({ draft, wrong, change }: Omit<SideFieldsProps, 'side'>) {
  const { ends, sounds, pitches } = draft;
  const read = readWheelForm({ ...draft, name: 'Wheel' });
  const known = read.ok ? read.about.ear?.known : undefined;
  return (
    <Fold
      label="By ear"
      end={pitches.length > 0 ? pitches.length : undefined}
      wrong={pitches.some((_, at) => wrong[`pitches.${at}`] !== undefined)}
    >
      <div class="stack lower">
        <Choice
          label="What you pluck"
          value={sounds}
          onChoose={(chosen) => change({ sounds: chosen })}
          options={(['free', 'pair', 'outer'] as const).map((value) => ({
            ...{ value, label: soundsWords[value], hint: soundsDetails[value] },
          }))}
        />
        <Choice
          label="Ends of the spoke"
          value={ends}
          onChoose={(chosen) => change({ ends: chosen })}
          options={(['clamped-pinned', 'pinned-pinned', 'clamped-clamped'] as const).map((value) => ({
            ...{ value, ...endsWords[value] },
          }))}
        />
        <p class="small">
          Known tensions make the pitch a gauge: two spokes of this wheel, one slack and one tight, read with
          a tension gauge.
        </p>
        <PairRows
          rows={pitches}
          label="Pitch in Hz"
          wrong={(at) => wrong[`pitches.${at}`]}
          onRows={(rows) => change({ pitches: rows })}
        />
        {known && <p role="status">{calibrationSentence(known)}</p>}
      </div>
    </Fold>
  );
}

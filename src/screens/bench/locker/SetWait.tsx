import { Choice } from '../../../controls/fields/Choice.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { helpWords } from '../../../planning/lockerWait.ts';
import { lockerHelpOf, lockerWaitOf } from '../../../practice/bench/lockerCommand.ts';
import type { LockerDraft } from '../../../practice/bench/stepDraft.ts';

const days = (hours: number) => `${Math.round(hours / 24)} d`;
const REASONS = ['Kept warm', 'By the maker’s sheet', 'Tried before on this metal'] as const;

export interface OwnWaitProps {
  draft: LockerDraft;
  change: (changed: Partial<LockerDraft>) => void;
  nearDiscBrake: boolean;
  gapMm?: number | undefined;
}

/** A cure too long to wait for: what makes it short, or a wait of the person's own with the reason. */
export function SetWait({ draft, change, nearDiscBrake, gapMm }: OwnWaitProps) {
  const helps = lockerHelpOf(draft, nearDiscBrake, gapMm);
  const wait = lockerWaitOf(draft, nearDiscBrake, gapMm);
  if (!helps || !wait?.ok) return null;
  // A wait of one's own is a shorter one.
  const shorter = [24, 48, 72, 168].filter((hours) => hours * 3_600_000 < wait.waitMs);
  const { ownWaitH, ownWhy = '' } = draft;
  return (
    <div class="stack">
      {helps.map(({ how, waitHours }) => (
        <p key={how} class="far">
          {helpWords[how]}: {waitHours} h.
        </p>
      ))}
      <Choice
        label="Wait set by you"
        value={ownWaitH === undefined ? 'none' : String(ownWaitH)}
        onChoose={(chosen) => change({ ownWaitH: chosen === 'none' ? undefined : Number(chosen) })}
        options={[
          { value: 'none', label: 'As calculated' },
          ...shorter.map((hours) => ({ value: String(hours), label: days(hours) })),
        ]}
      />
      {ownWaitH !== undefined && (
        <>
          <Choice
            label="Why, kept with it"
            value={REASONS.find((reason) => reason === ownWhy)}
            onChoose={(chosen) => change({ ownWhy: chosen })}
            options={REASONS.map((value) => ({ value, label: value }))}
          />
          <TextField
            label="Another reason"
            value={ownWhy}
            onInput={(typed) => change({ ownWhy: typed })}
            maxLength={200}
          />
        </>
      )}
    </div>
  );
}

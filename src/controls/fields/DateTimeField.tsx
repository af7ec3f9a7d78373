import { useId } from 'preact/hooks';
import { type DateTimeKind, fromLocalField, toLocalField } from '../../drafts/localDateTime.ts';
import { describedBy, FieldFrame, type FieldWords } from './FieldFrame.tsx';

export interface DateTimeFieldProps extends FieldWords {
  /** The instant, ms since 1970 UTC; undefined leaves the field empty. */
  atMs: number | undefined;
  onAt: (atMs: number | undefined) => void;
  kind?: DateTimeKind;
  earliestMs?: number;
  latestMs?: number;
}

/** Before any bicycle that is still ridden; a year typed half way reads like this. */
const EARLIEST_MS = Date.UTC(1900, 0, 1);

/** A date, or a date with a time, by the phone's own picker and in its own time zone. */
export function DateTimeField({
  atMs,
  onAt,
  kind = 'datetime-local',
  earliestMs,
  latestMs,
  label,
  hint,
  error: given,
}: DateTimeFieldProps) {
  const id = useId();
  const error = given ?? (atMs !== undefined && atMs < EARLIEST_MS ? 'Check the year.' : undefined);
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <input
        id={id}
        class="field-box"
        type={kind}
        value={atMs === undefined ? '' : toLocalField(atMs, kind)}
        min={earliestMs === undefined ? undefined : toLocalField(earliestMs, kind)}
        max={latestMs === undefined ? undefined : toLocalField(latestMs, kind)}
        aria-invalid={error ? true : undefined}
        aria-describedby={describedBy(id, { hint, error })}
        onChange={(event) => onAt(fromLocalField(event.currentTarget.value))}
      />
    </FieldFrame>
  );
}

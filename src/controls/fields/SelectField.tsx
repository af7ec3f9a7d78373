import { useId } from 'preact/hooks';
import { describedBy, FieldFrame, type FieldWords } from './FieldFrame.tsx';

export interface SelectOption<T extends string> {
  value: T;
  label: string;
  /** Options of one group stand under its heading, in the order given. */
  group?: string | undefined;
}

export interface SelectFieldProps<T extends string> extends FieldWords {
  options: readonly SelectOption<T>[];
  /** Nothing is chosen beforehand when left out. */
  value: T | undefined;
  onChoose: (value: T) => void;
  /** Said while nothing is chosen. */
  unchosen?: string;
}

/** One of many, by the phone's own picker; for a few, `Choice` shows them all. */
export function SelectField<T extends string>({
  options,
  value,
  onChoose,
  unchosen = 'Choose',
  label,
  hint,
  error,
}: SelectFieldProps<T>) {
  const id = useId();
  const groups = [...new Set(options.map((option) => option.group))];
  const linesOf = (group: string | undefined) =>
    options
      .filter((option) => option.group === group)
      .map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ));
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <select
        id={id}
        class="field-box"
        value={value ?? ''}
        aria-invalid={error ? true : undefined}
        aria-describedby={describedBy(id, { hint, error })}
        onChange={(event) => onChoose(event.currentTarget.value as T)}
      >
        {value === undefined && (
          <option value="" disabled>
            {unchosen}
          </option>
        )}
        {groups.map((group) =>
          group === undefined ? (
            linesOf(group)
          ) : (
            <optgroup key={group} label={group}>
              {linesOf(group)}
            </optgroup>
          ),
        )}
      </select>
    </FieldFrame>
  );
}

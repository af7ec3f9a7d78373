import { useId } from 'preact/hooks';
import { type AnyUnit, unitLabel } from '../../mechanics/units.ts';
import { describedBy, FieldFrame, type FieldWords } from './FieldFrame.tsx';

export interface NumberFieldProps<U extends AnyUnit> extends FieldWords {
  /** The characters as typed, comma or dot; never reformatted here. */
  typed: string;
  unit?: U | undefined;
  /** With several, the unit is a choice; with none, a bare count. */
  units?: readonly U[];
  onTyped: (typed: string, unit: U | undefined) => void;
  required?: boolean;
}

/** A number with its unit beside it. What was typed stays as typed, also when the unit changes or an error shows. */
export function NumberField<U extends AnyUnit>({
  typed,
  unit,
  units = [],
  onTyped,
  required,
  label,
  hint,
  error,
}: NumberFieldProps<U>) {
  const id = useId();
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      <div class={unit ? 'field-row' : undefined}>
        <input
          id={id}
          class="field-box field-number"
          inputMode="decimal"
          autocomplete="off"
          value={typed}
          required={required}
          aria-invalid={error ? true : undefined}
          aria-describedby={describedBy(id, { hint, error })}
          onInput={(event) => onTyped(event.currentTarget.value, unit)}
        />
        {unit && units.length > 1 && (
          <select
            class="field-box"
            aria-label={`Unit of ${label}`}
            value={unit}
            onChange={(event) => onTyped(typed, event.currentTarget.value as U)}
          >
            {units.map((one) => (
              <option key={one} value={one}>
                {unitLabel[one]}
              </option>
            ))}
          </select>
        )}
        {unit && units.length < 2 && <span class="field-box">{unitLabel[unit]}</span>}
      </div>
    </FieldFrame>
  );
}

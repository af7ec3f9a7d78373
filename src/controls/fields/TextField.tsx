import { useId } from 'preact/hooks';
import { describedBy, FieldFrame, type FieldWords } from './FieldFrame.tsx';

export interface TextFieldProps extends FieldWords {
  value: string;
  onInput: (value: string) => void;
  /** Several ruled lines instead of one. */
  lines?: number;
  required?: boolean;
  maxLength?: number;
  autocomplete?: string;
  /** Words to offer while typing. */
  offers?: readonly string[];
  /** `search` for the look-up field. */
  type?: 'text' | 'search' | 'url';
}

/** A line, or some ruled lines, to write on. */
export function TextField({ value, onInput, lines, offers, type = 'text', ...words }: TextFieldProps) {
  const { label, hint, error, required, maxLength, autocomplete = 'off' } = words;
  const id = useId();
  const shared = {
    id,
    class: 'field-box',
    value,
    required,
    maxLength,
    'aria-invalid': error ? true : undefined,
    'aria-describedby': describedBy(id, { hint, error }),
  };
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      {lines ? (
        <textarea {...shared} rows={lines} onInput={(event) => onInput(event.currentTarget.value)} />
      ) : (
        <input
          {...shared}
          type={type}
          autocomplete={autocomplete}
          list={offers && `${id}-offers`}
          onInput={(event) => onInput(event.currentTarget.value)}
        />
      )}
      {offers && (
        <datalist id={`${id}-offers`}>
          {offers.map((offer) => (
            <option key={offer} value={offer} />
          ))}
        </datalist>
      )}
    </FieldFrame>
  );
}

import './Field.css';
import './Choice.css';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { Icon, type IconName } from '../Icon.tsx';

export interface ChoiceOption<T extends string> {
  value: T;
  label: ComponentChildren;
  hint?: ComponentChildren;
  icon?: IconName;
  disabled?: boolean;
}

export interface ChoiceProps<T extends string> {
  /** The question asked. */
  label: string;
  options: readonly ChoiceOption<T>[];
  /** Nothing is chosen beforehand when left out. */
  value?: T | undefined;
  onChoose: (value: T) => void;
  error?: string | undefined;
}

/** One of several, each a whole line high enough for a knuckle. */
export function Choice<T extends string>({ label, options, value, onChoose, error }: ChoiceProps<T>) {
  const name = useId();
  return (
    <fieldset class="choice" aria-describedby={error ? `${name}-error` : undefined}>
      <legend class="field-label">{label}</legend>
      {options.map((option) => (
        <label class="choice-line" key={option.value}>
          <input
            class="choice-box"
            type="radio"
            name={name}
            checked={option.value === value}
            disabled={option.disabled}
            onChange={() => onChoose(option.value)}
          />
          <span class="choice-words">
            <span class="choice-name">
              {option.icon && <Icon name={option.icon} />}
              {option.label}
            </span>
            {option.hint && <span class="small">{option.hint}</span>}
          </span>
        </label>
      ))}
      {error && (
        <span class="field-error" id={`${name}-error`} role="alert">
          <Icon name="warning" sizePx={20} />
          {error}
        </span>
      )}
    </fieldset>
  );
}

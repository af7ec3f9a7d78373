import './Choice.css';
import type { ComponentChildren } from 'preact';

export interface ToggleProps {
  label: ComponentChildren;
  hint?: ComponentChildren;
  on: boolean;
  onToggle: (on: boolean) => void;
  disabled?: boolean;
}

/** A box to mark: the whole line is the target. */
export function Toggle({ label, hint, on, onToggle, disabled }: ToggleProps) {
  return (
    <label class="choice-line">
      <input
        class="choice-box"
        type="checkbox"
        checked={on}
        disabled={disabled}
        onChange={(event) => onToggle(event.currentTarget.checked)}
      />
      <span class="choice-words">
        <span class="choice-name">{label}</span>
        {hint && <span class="small">{hint}</span>}
      </span>
    </label>
  );
}

import './Field.css';
import type { ComponentChildren } from 'preact';
import { Icon } from '../Icon.tsx';

export interface FieldWords {
  /** Printed caption of the field. */
  label: string;
  /** A sentence below, there all the time. */
  hint?: ComponentChildren;
  /** A sentence below when what was typed cannot be taken; what was typed stays. */
  error?: string | undefined;
}

export interface FieldFrameProps extends FieldWords {
  /** Id of the input; hint and error get ids made from it. */
  id: string;
  children: ComponentChildren;
}

/** The ids an input names in `aria-describedby`. */
export const describedBy = (id: string, { hint, error }: Pick<FieldWords, 'hint' | 'error'>) =>
  [error && `${id}-error`, hint && `${id}-hint`].filter(Boolean).join(' ') || undefined;

/** Caption, input, hint and error of one field. */
export function FieldFrame({ id, label, hint, error, children }: FieldFrameProps) {
  return (
    <div class="field">
      <label class="field-label" for={id}>
        {label}
      </label>
      {children}
      {error && (
        <span class="field-error" id={`${id}-error`} role="alert">
          <Icon name="warning" sizePx={20} />
          {error}
        </span>
      )}
      {hint && (
        <span class="field-hint" id={`${id}-hint`}>
          {hint}
        </span>
      )}
    </div>
  );
}

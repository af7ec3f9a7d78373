import './Button.css';
import './HoldButton.css';
import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { ButtonKind } from './Button.tsx';
import { Icon, type IconName } from './Icon.tsx';

export interface HoldButtonProps {
  children: ComponentChildren;
  /** Called once the hold has lasted; never on a mere tap. */
  onHeld: () => void;
  kind?: ButtonKind;
  icon?: IconName;
  /** How long to hold, ms. */
  spanMs?: number;
  disabled?: boolean;
  /** The line under the words; it is also the button's spoken description. */
  explain?: string;
}

/**
 * A button that acts after being held for 0.8 s, by finger, Enter or Space: for sign-off, void and delete.
 * Assistive technology that can only click asks twice instead of holding.
 */
export function HoldButton({
  children,
  onHeld,
  kind = 'main',
  icon,
  spanMs = 800,
  disabled,
  explain = 'Press and hold',
}: HoldButtonProps) {
  const [holding, setHolding] = useState(false);
  const [askAgain, setAskAgain] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const touched = useRef(false);
  const explainId = useId();

  const stop = () => {
    clearTimeout(timer.current);
    setHolding(false);
  };
  const start = () => {
    if (disabled) return;
    touched.current = true;
    clearTimeout(timer.current);
    setHolding(true);
    timer.current = setTimeout(() => {
      setHolding(false);
      onHeld();
    }, spanMs);
  };
  const click = (event: MouseEvent) => {
    event.preventDefault();
    if (touched.current) {
      touched.current = false;
      return;
    }
    if (askAgain) onHeld();
    setAskAgain(!askAgain);
  };
  useEffect(() => () => clearTimeout(timer.current), []);

  const isHoldKey = (event: KeyboardEvent) => event.key === 'Enter' || event.key === ' ';
  return (
    <button
      type="button"
      class={`button button-${kind} button-greasy button-wide hold${holding ? ' hold-on' : ''}`}
      style={{ transitionDuration: `${spanMs}ms` }}
      disabled={disabled}
      aria-describedby={explainId}
      onPointerDown={(event) => {
        if (event.button === 0) start();
      }}
      onPointerUp={stop}
      onPointerLeave={stop}
      onPointerCancel={stop}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if (!isHoldKey(event)) return;
        event.preventDefault();
        if (!event.repeat) start();
      }}
      onKeyUp={(event) => {
        if (!isHoldKey(event)) return;
        event.preventDefault();
        touched.current = false;
        stop();
      }}
      onBlur={stop}
      onClick={click}
    >
      <span class="hold-run" aria-hidden="true" />
      {icon && <Icon name={icon} sizePx={30} />}
      <span class="button-words">
        {children}
        <span class="button-under" id={explainId} aria-live="polite">
          {askAgain ? 'Press once more to confirm' : explain}
        </span>
      </span>
    </button>
  );
}

import './Button.css';
import type { ComponentChildren } from 'preact';
import { Icon, type IconName } from './Icon.tsx';

export type ButtonKind = 'main' | 'plain';
export type ButtonSize = 'hand' | 'greasy';

export interface ButtonProps {
  children: ComponentChildren;
  onPress?: (event: MouseEvent) => void;
  /** `main` is the one thing to do here; a screen has at most one. */
  kind?: ButtonKind;
  /** `greasy` for everything touched at the bench: 96 by 72 CSS px at least. */
  size?: ButtonSize;
  icon?: IconName;
  /** A second, smaller line: what exactly will be written. */
  under?: string | undefined;
  /** Takes the whole width of its row. */
  wide?: boolean;
  disabled?: boolean;
  /** Makes it a link drawn as a button. */
  href?: string;
  /** For two-state buttons. */
  pressed?: boolean;
  submit?: boolean;
  /** Spoken name, where the words alone do not say it. */
  label?: string;
  id?: string;
}

/** A button, or with `href` a link that looks like one. */
export function Button({
  children,
  onPress,
  kind = 'plain',
  size = 'hand',
  icon,
  under,
  wide,
  disabled,
  href,
  pressed,
  submit,
  label,
  id,
}: ButtonProps) {
  const look = `button button-${kind} button-${size}${wide ? ' button-wide' : ''}`;
  const inside = (
    <>
      {icon && <Icon name={icon} sizePx={size === 'greasy' ? 30 : 24} />}
      <span class="button-words">
        {children}
        {under && <span class="button-under">{under}</span>}
      </span>
    </>
  );
  if (href !== undefined)
    return (
      <a class={look} href={href} onClick={onPress} aria-label={label} id={id}>
        {inside}
      </a>
    );
  return (
    <button
      type={submit ? 'submit' : 'button'}
      class={look}
      onClick={onPress}
      disabled={disabled}
      aria-pressed={pressed}
      aria-label={label}
      id={id}
    >
      {inside}
    </button>
  );
}

import './Button.css';
import './Tile.css';
import type { ComponentChildren } from 'preact';
import { Icon, type IconName } from './Icon.tsx';

export interface TileProps {
  icon: IconName;
  /** What it adds: "Tool", "Note". */
  children: ComponentChildren;
  /** What is chosen so far; it stands on the tile. */
  value?: string | undefined;
  onPress?: () => void;
  href?: string;
  /** For a tile that is simply on or off. */
  pressed?: boolean;
  /** The value is a warning. */
  loud?: boolean;
}

/** One of the things that can go with a step, large enough for a knuckle. */
export function Tile({ icon, children, value, onPress, href, pressed, loud }: TileProps) {
  const look = `button button-plain tile${value || pressed ? ' tile-set' : ''}${loud ? ' tile-loud' : ''}`;
  const inside = (
    <>
      <Icon name={pressed ? 'check' : icon} sizePx={28} />
      <span>{children}</span>
      {value && <span class="tile-value">{value}</span>}
    </>
  );
  if (href !== undefined)
    return (
      <a class={look} href={href}>
        {inside}
      </a>
    );
  return (
    <button type="button" class={look} aria-pressed={pressed} onClick={onPress}>
      {inside}
    </button>
  );
}

import './Tile.css';
import type { ComponentChildren } from 'preact';
import { Icon, type IconName } from '../../controls/Icon.tsx';

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
  /** Takes a picture instead of a press. */
  onFile?: (file: File) => void;
}

/** One of the things that can go with a step, large enough for a knuckle. */
export function Tile({ icon, children, value, onPress, href, pressed, loud, onFile }: TileProps) {
  const look = `tile${value || pressed ? ' tile-set' : ''}${loud ? ' tile-loud' : ''}`;
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
  if (onFile)
    return (
      <label class={look}>
        {inside}
        <input
          type="file"
          accept="image/*"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (file) onFile(file);
          }}
        />
      </label>
    );
  return (
    <button type="button" class={look} aria-pressed={pressed} onClick={onPress}>
      {inside}
    </button>
  );
}

import './ListRow.css';
import type { ComponentChildren } from 'preact';
import { Mark, type MarkState, Stroke } from '../figures/Mark.tsx';
import { Icon, type IconName } from '../Icon.tsx';

export interface ListRowProps {
  title: ComponentChildren;
  /** One or two lines under the title. */
  detail?: ComponentChildren;
  /** With a state, the row gets its mark and word. */
  state?: MarkState | undefined;
  stateWord?: string | undefined;
  icon?: IconName | undefined;
  /** Right-hand value: a torque, a time, a count. */
  end?: ComponentChildren;
  /** A row with an address is a link, a row with an act a button, others plain text. */
  href?: string | undefined;
  onPress?: (() => void) | undefined;
  /** The row that stands for the screen one is on. */
  current?: boolean;
}

/** A ruled line of the card. */
export function ListRow({
  title,
  detail,
  state,
  stateWord,
  icon,
  end,
  href,
  onPress,
  current,
}: ListRowProps) {
  const look = `row ${state ? `row-${state}` : 'row-plain'}`;
  const leads = href !== undefined || onPress !== undefined;
  const inside = (
    <>
      {state && <Stroke state={state} />}
      <span class="row-text">
        {icon && <Icon name={icon} sizePx={26} />}
        <span class="row-words">
          <span class="row-title">{title}</span>
          {detail && <span class="small">{detail}</span>}
          {state && <Mark state={state} word={stateWord} />}
        </span>
      </span>
      <span class="row-end">
        {end}
        {leads && <Icon name="more" sizePx={20} />}
      </span>
    </>
  );
  if (href !== undefined)
    return (
      <a class={look} href={href} onClick={onPress} aria-current={current ? 'page' : undefined}>
        {inside}
      </a>
    );
  if (onPress)
    return (
      <button type="button" class={look} onClick={onPress} aria-current={current ? 'true' : undefined}>
        {inside}
      </button>
    );
  return <div class={look}>{inside}</div>;
}

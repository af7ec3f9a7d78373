import './BigNumber.css';
import type { ComponentChildren } from 'preact';

export interface BigNumberProps {
  /** The figure, already written out: "5", "12 to 14", "4:10". */
  value: string;
  /** As written on screen: "N·m", "bar", "min". */
  unit?: string | undefined;
  /** What the figure is: "Target", "Due at". */
  label?: string | undefined;
  /** Where the figure comes from. */
  source?: ComponentChildren;
}

/** The number that matters, readable from 0.7 m: 64 CSS px at least, as large as the card allows. */
export function BigNumber({ value, unit, label, source }: BigNumberProps) {
  const signs = value.length + (unit ? 1 + unit.length * 0.4 : 0);
  return (
    <div class="big">
      {label && <p class="caption">{label}</p>}
      <p class="big-line" style={{ '--signs': String(Math.max(3, signs)) }}>
        <span>{value}</span>
        {unit && <span class="big-unit">{` ${unit}`}</span>}
      </p>
      {source && <p class="small big-under">{source}</p>}
    </div>
  );
}

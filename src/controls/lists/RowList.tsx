import type { ComponentChildren } from 'preact';
import { WindowedList } from './WindowedList.tsx';

/** Up to here a list is drawn whole. */
const WHOLE = 24;

export interface RowsProps<T> {
  /** Spoken name of the list. */
  label: string;
  of: readonly T[];
  keyOf: (item: T) => string;
  draw: (item: T) => ComponentChildren;
  estimatePx?: number;
}

/** A list of lines, drawn whole while it is short and by the window when it is not. */
export function RowList<T>({ label, of, keyOf, draw, estimatePx = 90 }: RowsProps<T>) {
  if (of.length > WHOLE) {
    return (
      <WindowedList
        label={label}
        count={of.length}
        estimatePx={estimatePx}
        rowKey={(row) => keyOf(of[row]!)}
        renderRow={(row) => draw(of[row]!)}
      />
    );
  }
  return (
    <ul class="plain-list" aria-label={label}>
      {of.map((item) => (
        <li key={keyOf(item)}>{draw(item)}</li>
      ))}
    </ul>
  );
}

import './WindowedList.css';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useReducer, useRef } from 'preact/hooks';
import { RowHeights } from './rowHeights.ts';

export interface WindowedListProps {
  /** Spoken name of the list. */
  label: string;
  /** Rows known so far. */
  count: number;
  renderRow: (row: number) => ComponentChildren;
  rowKey: (row: number) => string | number;
  /** Likely height of a row, CSS px; true heights are measured as rows are drawn. */
  estimatePx?: number;
  /** Called as the end comes near: fetch more. May be called again before more has come. */
  onNearEnd?: (() => void) | undefined;
  /** Size of the whole list where it is known and larger than `count`. */
  total?: number | undefined;
}

const SPARE_ROWS = 6;
const focusable = 'a[href], button:not(:disabled), input, select, textarea, [tabindex="0"]';

/** A list of any length that draws only what is in view. Arrow keys, Home and End move from row to row. */
export function WindowedList({
  label,
  count,
  renderRow,
  rowKey,
  estimatePx = 72,
  onNearEnd,
  total,
}: WindowedListProps) {
  const list = useRef<HTMLUListElement>(null);
  const heights = useRef<RowHeights | undefined>(undefined);
  heights.current ??= new RowHeights(estimatePx);
  const rows = heights.current;
  const wantedRow = useRef<number | undefined>(undefined);
  const focusedRow = useRef<number | undefined>(undefined);
  const [, redraw] = useReducer((beat: number, _: undefined) => beat + 1, 0);

  const scroller = () => list.current?.closest('.sheet-body') ?? document.documentElement;
  const topOfView = () => (list.current ? -list.current.getBoundingClientRect().top : 0);
  const topPx = topOfView();
  const { first, end } = rows.inView(topPx, globalThis.innerHeight, count, SPARE_ROWS);
  const shown = useRef({ first, end, count });
  shown.current = { first, end, count };

  useLayoutEffect(() => {
    const draw = () => redraw(undefined);
    const scrolled = () => {
      const now = rows.inView(topOfView(), globalThis.innerHeight, shown.current.count, SPARE_ROWS);
      if (now.first !== shown.current.first || now.end !== shown.current.end) draw();
    };
    // Capturing hears the scrolling of whatever box the list stands in.
    addEventListener('scroll', scrolled, { capture: true, passive: true });
    addEventListener('resize', draw);
    draw();
    // Rows change their height when the typeface arrives.
    document.fonts.ready.then(draw);
    return () => {
      removeEventListener('scroll', scrolled, { capture: true });
      removeEventListener('resize', draw);
    };
  }, []);

  useLayoutEffect(() => {
    let changed = false;
    let grownAbovePx = 0;
    for (const item of list.current?.children ?? []) {
      const row = Number((item as HTMLElement).dataset['row']);
      const grownPx = rows.measure(row, item.getBoundingClientRect().height);
      changed ||= grownPx !== 0;
      if (rows.topOf(row + 1) - grownPx <= topPx) grownAbovePx += grownPx;
    }
    // What is being read stays where it is when rows above it turn out taller or shorter than thought.
    if (grownAbovePx !== 0) scroller().scrollBy(0, grownAbovePx);
    if (changed) redraw(undefined);
    const wanted = list.current?.querySelector<HTMLElement>(`:scope > [data-row="${wantedRow.current}"]`);
    if (!wanted) return;
    wantedRow.current = undefined;
    (wanted.querySelector<HTMLElement>(focusable) ?? wanted).focus();
  });

  const lastDrawn = end;
  useLayoutEffect(() => {
    if (onNearEnd && lastDrawn >= count) onNearEnd();
  }, [lastDrawn, count, onNearEnd]);

  const go = (row: number) => {
    const target = Math.min(count - 1, Math.max(0, row));
    wantedRow.current = target;
    const topOnScreenPx = rows.topOf(target) - topPx;
    const missingPx = Math.max(0, topOnScreenPx + rows.heightOf(target) - globalThis.innerHeight * 0.8);
    const hiddenPx = Math.min(0, topOnScreenPx - globalThis.innerHeight * 0.2);
    scroller().scrollBy(0, missingPx || hiddenPx);
    redraw(undefined);
  };
  const steps: Record<string, (row: number) => number> = {
    ArrowDown: (row) => row + 1,
    ArrowUp: (row) => row - 1,
    Home: () => 0,
    End: () => count - 1,
  };

  const drawn = Array.from({ length: end - first }, (_, offset) => first + offset);
  // The row with the focus stays drawn wherever the list is scrolled, or the focus would be lost.
  const kept = focusedRow.current;
  if (kept !== undefined && kept < first) drawn.unshift(kept);
  if (kept !== undefined && kept >= end && kept < count) drawn.push(kept);
  return (
    <ul
      class="windowed"
      ref={list}
      // biome-ignore lint/a11y/noRedundantRoles: without list marks some browsers no longer tell it as a list
      role="list"
      aria-label={label}
      style={{ height: `${rows.topOf(count)}px` }}
      onKeyDown={(event) => {
        const step = steps[event.key];
        if (!step || focusedRow.current === undefined) return;
        event.preventDefault();
        go(step(focusedRow.current));
      }}
      onFocusIn={(event) => {
        const item = (event.target as HTMLElement).closest<HTMLElement>('[data-row]');
        focusedRow.current = item ? Number(item.dataset['row']) : undefined;
      }}
      onFocusOut={() => {
        focusedRow.current = undefined;
      }}
    >
      {drawn.map((row) => (
        <li
          key={rowKey(row)}
          data-row={row}
          tabIndex={-1}
          style={{ top: `${rows.topOf(row)}px` }}
          aria-posinset={row + 1}
          aria-setsize={total ?? count}
        >
          {renderRow(row)}
        </li>
      ))}
    </ul>
  );
}

import type { Row } from '../journal/rows.ts';

/** More rows than a bike under work has; beyond it, starting over is cheaper than choosing what to forget. */
const MOST_ROWS = 2000;

/**
 * Rows as they were when the journal ended at `seq`. They are believed only by a write that adds line
 * `seq + 1`: if another tab has added it in the meantime, that write fails as a whole.
 */
export class RowCache {
  #rows = new Map<string, Row | undefined>();
  #seq: number | undefined;

  get seq(): number | undefined {
    return this.#seq;
  }

  get rows(): ReadonlyMap<string, Row | undefined> {
    return this.#rows;
  }

  forget(): void {
    this.#rows = new Map();
    this.#seq = undefined;
  }

  /**
   * Takes over what a committed write has read and written.
   * @param seq the last line of the journal after it
   */
  remember(seq: number, ...sources: ReadonlyMap<string, Row | undefined>[]): void {
    if (this.#rows.size > MOST_ROWS) this.#rows = new Map();
    for (const source of sources) for (const [key, row] of source) this.#rows.set(key, row);
    this.#seq = seq;
  }
}

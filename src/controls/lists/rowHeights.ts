/**
 * Where the rows of a long list stand, when most of them have never been drawn.
 * A row counts with an estimate until it has been measured.
 * @example new RowHeights(72).topOf(3) //=> 216
 */
export class RowHeights {
  readonly #estimatePx: number;
  readonly #measuredPx: number[] = [];
  /** tops[i] is the top of row i; valid up to #validTo. */
  readonly #topsPx: number[] = [0];
  #validTo = 0;

  /**
   * @param estimatePx height of a row not yet measured, CSS px, > 0
   * @throws RangeError when the estimate is not finite and positive
   */
  constructor(estimatePx: number) {
    if (!(estimatePx > 0 && Number.isFinite(estimatePx)))
      throw new RangeError('RowHeights: estimate must be positive');
    this.#estimatePx = estimatePx;
  }

  heightOf(row: number): number {
    return this.#measuredPx[row] ?? this.#estimatePx;
  }

  /** Notes a measured height, CSS px; returns by how much the row grew. */
  measure(row: number, heightPx: number): number {
    const grownPx = heightPx - this.heightOf(row);
    if (grownPx === 0 && this.#measuredPx[row] !== undefined) return 0;
    this.#measuredPx[row] = heightPx;
    this.#validTo = Math.min(this.#validTo, row);
    return grownPx;
  }

  /** Top of a row below the top of the list, CSS px; for row = count, the height of the whole list. */
  topOf(row: number): number {
    for (; this.#validTo < row; this.#validTo++)
      this.#topsPx[this.#validTo + 1] = this.#topsPx[this.#validTo]! + this.heightOf(this.#validTo);
    return this.#topsPx[row]!;
  }

  /** The row that covers a height below the list's top, held within the list. */
  rowAt(yPx: number, count: number): number {
    let low = 0;
    let high = Math.max(0, count - 1);
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.topOf(middle) <= yPx) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /**
   * The rows to draw for what is in view.
   * @param topPx top of the view below the list's top, CSS px; may be negative
   * @param viewPx height of the view, CSS px
   * @param spare rows more at either end, so that a quick thumb or the Tab key finds them there
   * @returns first row and the row after the last
   */
  inView(topPx: number, viewPx: number, count: number, spare: number): { first: number; end: number } {
    if (count === 0) return { first: 0, end: 0 };
    return {
      first: Math.max(0, this.rowAt(topPx, count) - spare),
      end: Math.min(count, this.rowAt(topPx + viewPx, count) + 1 + spare),
    };
  }
}

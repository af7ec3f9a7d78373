/** A quantity the physics does not pin down: the least it may be, the likeliest, the most. */
export interface Band {
  lo: number;
  mid: number;
  hi: number;
}

/**
 * A band from its parts.
 * @throws RangeError unless lo ≤ mid ≤ hi and all three are finite
 * @example band(0.18, 0.2, 0.27) //=> { lo: 0.18, mid: 0.2, hi: 0.27 }
 */
export function band(lo: number, mid: number, hi: number): Band {
  if (![lo, mid, hi].every(Number.isFinite) || lo > mid || mid > hi)
    throw new RangeError(`no band: ${lo}, ${mid}, ${hi}`);
  return { lo, mid, hi };
}

/** A value known exactly, where a band is asked for. @example exactly(5) //=> { lo: 5, mid: 5, hi: 5 } */
export const exactly = (value: number): Band => band(value, value, value);

/** The same band in another measure. @param factor finite, > 0 @example scaled(exactly(5), 2) //=> exactly(10) */
export function scaled({ lo, mid, hi }: Band, factor: number): Band {
  if (!(factor > 0)) throw new RangeError(`factor must be positive: ${factor}`);
  return band(lo * factor, mid * factor, hi * factor);
}

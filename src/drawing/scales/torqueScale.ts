/** Three torques of one joint, N·m; what is not known is left out. */
export interface ThreeTorques {
  /** The target, or both ends of its range. */
  target: readonly [lo: number, hi: number];
  applied?: number | undefined;
  found?: number | undefined;
}

export interface TorqueScale {
  /** From nought to here, N·m: a round figure above all of them. */
  endNm: number;
  /** Marks of the rule, N·m. */
  ticks: number[];
  /** Shares of the way, 0 to 1. */
  target: { from: number; to: number };
  applied?: number;
  found?: number;
}

/** Steps of a rule that a hand reads easily, with their tens. */
const STEPS = [1, 2, 5, 10] as const;

/**
 * Where target, applied and found lie on one rule that begins at nought, so that half as much looks half as much.
 * @param of the torques, N·m, above 0
 * @returns the rule and the shares of its length
 * @example torqueScale({ target: [5, 5], applied: 4 }).applied //=> 0.6666666666666666
 */
export function torqueScale({ target: [lo, hi], applied, found }: ThreeTorques): TorqueScale {
  const most = Math.max(hi, applied ?? 0, found ?? 0);
  const ten = 10 ** Math.floor(Math.log10(most / 3));
  const step = ten * (STEPS.find((one) => ten * one * 5 >= most) ?? 10);
  const count = Math.floor(most / step) + 1;
  const endNm = count * step;
  return {
    endNm,
    ticks: Array.from({ length: count + 1 }, (_, at) => Number((at * step).toPrecision(6))),
    target: { from: lo / endNm, to: hi / endNm },
    ...(applied === undefined ? {} : { applied: applied / endNm }),
    ...(found === undefined ? {} : { found: found / endNm }),
  };
}

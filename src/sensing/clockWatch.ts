/** Smaller steps are drift, put right by the network; a change to summer time moves no instant at all. */
const JUMP_MS = 60_000;

export interface Clocks {
  /** The wall clock, ms since 1970 UTC, which can be set. */
  wallMs(): number;
  /** A clock that only ever runs on, ms. On many phones it stands still while the phone sleeps. */
  steadyMs(): number;
}

/** The wall clock moved against the steady one. */
export interface ClockJump {
  /** By how much, ms; forward is positive. */
  byMs: number;
  /** It happened after this instant, ms by the clock as it runs now. */
  afterMs: number;
}

export interface ClockWatch {
  /**
   * Compares the two clocks.
   * @param mayHaveSlept whether the page was out of sight at any time since the last look
   * @returns the jump since the last one told; nothing below one minute, or where sleep explains it
   */
  look(mayHaveSlept?: boolean): ClockJump | undefined;
}

const browserClocks: Clocks = { wallMs: () => Date.now(), steadyMs: () => performance.now() };

/**
 * Notices that the clock of the phone was set. Both clocks are read at each look, and what one gained on the other
 * is the jump. A steady clock that stops in sleep makes sleep look like a jump forward; so a jump forward counts only
 * while the page was in sight. A jump back is never sleep.
 * @param clocks the browser's own when left out
 * @example clockWatch({ wallMs: () => 0, steadyMs: () => 0 }).look() //=> undefined
 */
export function clockWatch(clocks: Clocks = browserClocks): ClockWatch {
  const apart = () => clocks.wallMs() - clocks.steadyMs();
  let lastApartMs = apart();
  let lastLookMs = clocks.wallMs();
  return {
    look(mayHaveSlept = false) {
      const apartMs = apart();
      const byMs = apartMs - lastApartMs;
      const afterMs = lastLookMs + byMs;
      lastLookMs = clocks.wallMs();
      if (Math.abs(byMs) < JUMP_MS) return undefined;
      lastApartMs = apartMs;
      return byMs > 0 && mayHaveSlept ? undefined : { byMs, afterMs };
    },
  };
}

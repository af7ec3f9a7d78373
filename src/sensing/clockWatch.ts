/** Smaller steps are drift, put right by the network; a change to summer time moves no instant at all. */
const JUMP_MS = 60_000;

export interface Clocks {
  /** The wall clock, ms since 1970 UTC: what people set. */
  wallMs(): number;
  /** A clock that only ever runs on, ms. */
  steadyMs(): number;
}

export interface ClockWatch {
  /**
   * Compares the two clocks.
   * @returns by how much the wall clock was moved since the last jump told, ms (forward is positive), or 0 below one minute
   */
  look(): number;
}

const browserClocks: Clocks = { wallMs: () => Date.now(), steadyMs: () => performance.now() };

/**
 * Notices that the clock of the phone was set. Both clocks are read at each look, and what one gained on the other
 * is the jump. A phone asleep may stop the steady clock, which looks like a jump forward: so a jump is a reason to
 * ask whether the times are right, never to change one.
 * @param clocks the browser's own when left out
 * @example clockWatch({ wallMs: () => 0, steadyMs: () => 0 }).look() //=> 0
 */
export function clockWatch(clocks: Clocks = browserClocks): ClockWatch {
  const apart = () => clocks.wallMs() - clocks.steadyMs();
  let lastApartMs = apart();
  return {
    look() {
      const apartMs = apart();
      const jumpMs = apartMs - lastApartMs;
      if (Math.abs(jumpMs) < JUMP_MS) return 0;
      lastApartMs = apartMs;
      return jumpMs;
    },
  };
}

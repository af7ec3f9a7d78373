const AHEAD_MS = 60 * 86_400_000;

/**
 * What to ask the logbook for what is due and what waits. The span only bounds the list, so it moves by months:
 * asked again within them, the question is the same and so is the answer.
 * @param nowMs the present, ms UTC
 * @returns the question, for a span of two to four months ahead
 * @example dueAhead(0) //=> { untilMs: 5_184_000_000 }
 */
export function dueAhead(nowMs: number): { untilMs: number } {
  return { untilMs: Math.ceil(nowMs / AHEAD_MS + 1) * AHEAD_MS };
}

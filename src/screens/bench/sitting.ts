/** When the bench was last in sight, and at which step. */
export interface Sitting {
  stepId: string;
  seenAtMs: number;
  /** When the page itself was opened: another value is another page. */
  pageMs: number;
}

/** After a longer break than this the open step is asked about. */
export const AWAY_MS = 120_000;

/**
 * Whether work on the open step was interrupted, so that its state has to be asked about.
 * A step opened elsewhere, as from the plan, was chosen this moment and is not asked about.
 * @param last the sitting before, if one is remembered
 * @param openStepId the step that is open now
 * @param nowMs the present, ms UTC
 * @param pageMs when this page was opened, ms UTC
 * @example interrupted(undefined, 's', 0, 0) //=> true
 */
export function interrupted(
  last: Sitting | undefined,
  openStepId: string,
  nowMs: number,
  pageMs: number,
): boolean {
  if (!last || last.pageMs !== pageMs) return true;
  if (last.stepId !== openStepId) return false;
  return nowMs - last.seenAtMs > AWAY_MS;
}

const sittingKey = (bikeId: string) => `sitting:${bikeId}`;

/** The sitting remembered for a bike; a browser that keeps none has none. */
export function lastSitting(bikeId: string): Sitting | undefined {
  try {
    const text = sessionStorage.getItem(sittingKey(bikeId));
    return text === null ? undefined : (JSON.parse(text) as Sitting);
  } catch {
    return undefined;
  }
}

/** Remembers that the bench is in sight at a step. */
export function sitAt(bikeId: string, stepId: string, nowMs: number): void {
  try {
    const sitting: Sitting = { stepId, seenAtMs: nowMs, pageMs: performance.timeOrigin };
    sessionStorage.setItem(sittingKey(bikeId), JSON.stringify(sitting));
  } catch {
    // Not remembered, the next look asks once too often: the safe side.
  }
}

const chosenKey = (bikeId: string) => `chosen:${bikeId}`;

/** Remembers a step chosen in the plan, for the bench to begin with: also one that is done or skipped. */
export function chooseStep(bikeId: string, stepId: string): void {
  try {
    sessionStorage.setItem(chosenKey(bikeId), stepId);
  } catch {
    // Not remembered, the bench begins where work goes on.
  }
}

/** The step chosen in the plan; it is given once. */
export function takeChosen(bikeId: string): string | undefined {
  try {
    const stepId = sessionStorage.getItem(chosenKey(bikeId)) ?? undefined;
    sessionStorage.removeItem(chosenKey(bikeId));
    return stepId;
  } catch {
    return undefined;
  }
}

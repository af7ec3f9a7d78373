let kept: { zone: string; askedMs: number; offsetMin: number } | undefined;

/**
 * The phone's time zone. Asking takes longer than deciding a command, so the answer is kept for a minute; a
 * changed offset asks at once.
 * @returns IANA name
 * @example zoneNow() //=> 'Europe/Zurich'
 */
export function zoneNow(): string {
  const now = new Date();
  const offsetMin = now.getTimezoneOffset();
  if (!kept || kept.offsetMin !== offsetMin || Math.abs(now.getTime() - kept.askedMs) > 60_000) {
    const { timeZone: zone } = Intl.DateTimeFormat().resolvedOptions();
    kept = { zone, askedMs: now.getTime(), offsetMin };
  }
  return kept.zone;
}

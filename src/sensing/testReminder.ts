/** What got through of a test reminder. */
export interface TestOutcome {
  /** How late it came, ms. */
  lateMs: number;
  rang: boolean;
  shown: boolean;
}

/** How a reminder reaches the person; a phone that lacks a way resolves to false. */
export interface TestWays {
  now(): number;
  ring(): boolean;
  show(): Promise<boolean>;
  after(ms: number, then: () => void): () => void;
}

/**
 * Tries once, after a span, what a reminder would do, and tells how it went: a phone that put the app to sleep comes late.
 * @param spanMs until then, ms
 * @returns the way to stop it
 */
export function testReminder(
  spanMs: number,
  ways: TestWays,
  report: (outcome: TestOutcome) => void,
): () => void {
  const dueMs = ways.now() + spanMs;
  return ways.after(spanMs, async () => {
    const lateMs = Math.max(0, ways.now() - dueMs);
    const rang = ways.ring();
    const shown = await ways.show().catch(() => false);
    report({ lateMs, rang, shown });
  });
}

/** A message of this phone, through its worker; false where none may be shown. */
export async function showTestMessage(title: string, body: string): Promise<boolean> {
  if (globalThis.Notification?.permission !== 'granted') return false;
  const registration = await navigator.serviceWorker?.getRegistration();
  await registration?.showNotification(title, { body, tag: 'test', icon: '/icons/icon-192.png' });
  return registration !== undefined;
}

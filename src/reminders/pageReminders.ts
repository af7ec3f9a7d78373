import type { DueLine, Logbook } from '../logbook.ts';
import { announceDue } from './announceDue.ts';
import type { DueNotice } from './notice.ts';
import { showNotice } from './showNotice.ts';

/** A timer armed for longer is not trusted: the phone sleeps, and its clock is set. */
const LONGEST_TIMER_MS = 30_000;
const SOON_MS = 24 * 3_600_000;

export interface PageReminders {
  /** Called with what fell due while the page is seen. */
  onDue(lines: DueLine[]): void;
  /** Called after every look with all that is overdue: what was announced may have been settled since. */
  onOverdue(lines: DueLine[]): void;
}

/**
 * The page's share of the reminders: looks at the start, at every return to view, after every commit, and
 * when the next due instant comes while the page is open.
 * @returns the way to stop
 */
export function startPageReminders(logbook: Logbook, page: PageReminders): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stopped = false;

  async function show(notice: DueNotice): Promise<void> {
    if (!('Notification' in globalThis) || Notification.permission !== 'granted') return;
    const registration = await navigator.serviceWorker?.getRegistration();
    if (registration) await showNotice(registration, notice);
  }

  async function look(): Promise<void> {
    clearTimeout(timer);
    if (stopped) return;
    try {
      const nowMs = logbook.now();
      const lines = await announceDue(logbook, show);
      if (lines.length > 0) page.onDue(lines);
      const ahead = await logbook.read('due', { untilMs: nowMs + SOON_MS });
      // Seen from now and not from before the claim, or what fell due in between would not count as overdue.
      const claimedMs = logbook.now();
      page.onOverdue(ahead.filter(({ dueAtMs }) => dueAtMs <= claimedMs));
      const next = ahead.find(({ dueAtMs }) => dueAtMs > nowMs);
      const inMs = next ? Math.min(next.dueAtMs - nowMs, LONGEST_TIMER_MS) : LONGEST_TIMER_MS;
      if (!stopped) timer = setTimeout(look, inMs);
    } catch {
      // The store is away for the moment; the next look finds the same duties.
      if (!stopped) timer = setTimeout(look, LONGEST_TIMER_MS);
    }
  }

  const onView = () => {
    if (document.visibilityState === 'visible') void look();
  };
  document.addEventListener('visibilitychange', onView);
  addEventListener('pageshow', onView);
  const unwatch = logbook.watch(() => void look());
  void look();
  return () => {
    stopped = true;
    clearTimeout(timer);
    document.removeEventListener('visibilitychange', onView);
    removeEventListener('pageshow', onView);
    unwatch();
  };
}

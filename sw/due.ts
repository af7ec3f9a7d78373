import { openDue } from '../src/logbook.ts';
import { announceDue } from '../src/reminders/announceDue.ts';
import { owedOf } from '../src/reminders/owed.ts';
import { showNotice } from '../src/reminders/showNotice.ts';

/**
 * Says what fell due, and how much is overdue. Without leave to show notices nothing is claimed, so that the page can
 * still say it.
 */
export async function announce(sw: ServiceWorkerGlobalScope): Promise<void> {
  const mayShow = 'Notification' in sw && Notification.permission === 'granted';
  const logbook = await openDue();
  try {
    if (mayShow) await announceDue(logbook, (notice) => showNotice(sw.registration, notice));
    const badge = sw.navigator as { setAppBadge?: (count: number) => Promise<void> };
    await badge.setAppBadge?.(owedOf(await logbook.overdue()).length);
  } finally {
    logbook.close();
  }
}

/** A tap on a notice leads to what it is about, in an open page if there is one. */
export async function openFrom(sw: ServiceWorkerGlobalScope, event: NotificationEvent): Promise<void> {
  event.notification.close();
  // Of the address only the place within the app is taken: no notice leads elsewhere.
  const { notification, action } = event;
  const { hash } = new URL(`${notification.data?.href}${action && `/${action}`}`, sw.location.origin);
  const href = `/${hash}`;
  const [page] = await sw.clients.matchAll({ type: 'window' });
  if (!page) {
    await sw.clients.openWindow(href);
    return;
  }
  await page.focus();
  await page.navigate(href);
}

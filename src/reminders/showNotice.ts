import type { DueNotice } from './notice.ts';

/** Puts a notice before the person as the phone does; page and worker show it alike. */
export function showNotice(
  registration: ServiceWorkerRegistration,
  { title, body, tag, href, actions }: DueNotice,
): Promise<void> {
  const about = { body, tag, icon: '/icons/icon-192.png', data: { href }, actions };
  return registration.showNotification(title, about as NotificationOptions);
}

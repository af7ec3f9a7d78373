import type { DueNotice } from './notice.ts';

/** Puts a notice before the person as the phone does; page and worker show it alike. */
export function showNotice(
  registration: ServiceWorkerRegistration,
  { title, body, tag, href }: DueNotice,
): Promise<void> {
  return registration.showNotification(title, { body, tag, icon: '/icons/icon-192.png', data: { href } });
}

import { respond } from './answer.ts';
import { install, takeOver } from './cache.ts';
import { announce, openFrom } from './due.ts';

declare const self: ServiceWorkerGlobalScope;

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(takeOver(self)));
self.addEventListener('fetch', (event) => respond(self, event));
self.addEventListener('message', (event) => event.data?.type === 'SKIP_WAITING' && self.skipWaiting());
self.addEventListener('periodicsync' as 'sync', (event) =>
  (event as ExtendableEvent).waitUntil(announce(self)),
);
self.addEventListener('notificationclick', (event) => event.waitUntil(openFrom(self, event)));

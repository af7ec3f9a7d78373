import type { PrecacheEntry } from './precache.ts';

declare const __PRECACHE__: PrecacheEntry[];
declare const __VERSION__: string;

const PREFIX = 'pinchbolt:';

/** Cache names carry the time of their install, so that a version can tell older ones from the one that waits. */
async function ownCache(): Promise<string | undefined> {
  return (await caches.keys()).find((name) => name.startsWith(PREFIX) && name.endsWith(`:${__VERSION__}`));
}

/** Fetches every shipped file past the browser's own cache; one that fails fails the install, and the old version stays. */
export async function precache(): Promise<void> {
  const name = (await ownCache()) ?? `${PREFIX}${Date.now()}:${__VERSION__}`;
  const cache = await caches.open(name);
  await Promise.all(
    __PRECACHE__.map(async ({ url }) => {
      const response = await fetch(url, { cache: 'reload' });
      if (!response.ok) throw new Error(`${url}: ${response.status}`);
      await cache.put(url, response);
    }),
  );
}

/** Takes the open pages; files of an older version stay for as long as a page of it may ask for them. */
export async function takeOver(sw: ServiceWorkerGlobalScope): Promise<void> {
  await sw.clients.claim();
  await dropOlder(sw);
}

async function dropOlder(sw: ServiceWorkerGlobalScope): Promise<void> {
  const pages = await sw.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (pages.length > 0) return;
  const own = await ownCache();
  const at = Number(own?.split(':')[1]);
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX) && name !== own && Number(name.split(':')[1]) < at) await caches.delete(name);
  }
}

/** Answers from the shipped files; any page address gets the one page. Nothing is asked of another origin. */
export function respond(sw: ServiceWorkerGlobalScope, event: FetchEvent): void {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== sw.location.origin) return;
  if (request.mode === 'navigate') {
    event.respondWith(fromCache(url.pathname === '/' ? '/index.html' : url.pathname, '/index.html', request));
    // With the first page of a new session no page of an older version is left.
    event.waitUntil(dropOlder(sw));
    return;
  }
  event.respondWith(fromCache(url.pathname, undefined, request));
}

async function fromCache(path: string, otherwise: string | undefined, request: Request): Promise<Response> {
  const own = await ownCache();
  const cache = own === undefined ? undefined : await caches.open(own);
  const found =
    (await cache?.match(path)) ?? (otherwise ? await cache?.match(otherwise) : undefined) ?? (await caches.match(path));
  return found ?? fetch(request);
}

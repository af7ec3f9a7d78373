import type { PrecacheEntry } from './build/precache.ts';

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
  if (request.mode !== 'navigate') {
    event.respondWith(shipped(url.pathname, request));
    return;
  }
  const page = url.pathname === '/' ? '/index.html' : url.pathname;
  const answer = shipped(page, request, '/index.html');
  event.respondWith(answer);
  // With the first page of a new session no page of an older version is left; the answer goes first.
  event.waitUntil(answer.then(() => dropOlder(sw)));
}

/** The files of this version, opened once for the life of the worker: every request passes here. */
let own: Promise<Cache | undefined> | undefined;

function ownFiles(): Promise<Cache | undefined> {
  own ??= ownCache().then((name) => (name === undefined ? undefined : caches.open(name)));
  return own;
}

async function shipped(path: string, request: Request, otherwise?: string): Promise<Response> {
  const cache = await ownFiles();
  const found =
    (await cache?.match(path)) ??
    (otherwise === undefined ? undefined : await cache?.match(otherwise)) ??
    // A page of an older version asks for its own files.
    (await caches.match(path));
  return found ?? fetch(request);
}

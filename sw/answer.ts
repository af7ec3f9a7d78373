import { SHARE_PATH } from '../src/exchange/copy/sharedFile.ts';
import { olderFile, shippedFile, tidyUp } from './cache.ts';
import { answerWith, isShipped, PAGE } from './files.ts';
import { receive } from './receive.ts';

/** Put in by the build: the page that saves the logbook when the app does not start, and its script. */
declare const __RESCUE__: { page: string; script: string };
const rescuePages = __RESCUE__;

const RESCUE_PAGE = '/rescue.html';
const RESCUE_SCRIPT = '/rescue.js';

/** Answers from the shipped files; any page address gets the one page. Nothing is asked of another origin. */
export function respond(sw: ServiceWorkerGlobalScope, event: FetchEvent): void {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== sw.location.origin) return;
  if (request.method === 'POST' && url.pathname === SHARE_PATH) event.respondWith(receive(request));
  if (request.method !== 'GET') return;
  const answer =
    rescue(url.pathname) ?? (request.mode === 'navigate' ? page(url, request) : file(url, request));
  event.respondWith(answer);
  event.waitUntil(answer.then(() => tidyUp(sw)).catch(() => {}));
}

/** The rescue page lies in the worker itself: it is there when nothing else is. */
function rescue(path: string): Promise<Response> | undefined {
  if (path === RESCUE_SCRIPT) return Promise.resolve(answerWith(rescuePages.script, path));
  if (path === RESCUE_PAGE || path === '/rescue') return rescuePage();
  return undefined;
}

const rescuePage = async (status = 200) => answerWith(rescuePages.page, RESCUE_PAGE, status);

async function page({ pathname }: URL, request: Request): Promise<Response> {
  try {
    return await shippedFile(isShipped(pathname) ? pathname : PAGE);
  } catch {
    const other = await fetch(request).catch(() => undefined);
    return other && (other.ok || other.type === 'opaqueredirect') ? other : rescuePage(503);
  }
}

async function file({ pathname }: URL, request: Request): Promise<Response> {
  if (isShipped(pathname)) return shippedFile(pathname).catch(() => Response.error());
  return (await olderFile(pathname)) ?? fetch(request);
}

import { SHARED, SHARED_FIELD, SHARED_FILE } from '../src/exchange/copy/sharedFile.ts';

/**
 * Keeps a file that another app shares and opens the settings, where it is checked first. Any page of the web can send
 * such a form too: so one file is kept at a time, and nothing of it is added without a tap.
 */
export async function receive(request: Request): Promise<Response> {
  // Where there is no room for it the settings open without it.
  await keep(request).catch(() => {});
  return Response.redirect(new URL('/#/settings', request.url), 303);
}

async function keep(request: Request): Promise<void> {
  const file = (await request.formData()).get(SHARED_FIELD);
  // A form without a file must not take the place of one that waits.
  if (file instanceof Blob) await (await caches.open(SHARED)).put(SHARED_FILE, new Response(file));
}

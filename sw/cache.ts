import { fetchFile, isShipped, paths, wholeFile } from './files.ts';

declare const __VERSION__: string;

const PREFIX = 'pinchbolt:';
/** Within the own cache: the ids of the pages that were open when this version took over. */
const PAGES_BEFORE = '/:pages-before';

/** Cache names carry the time of their making, so that a version can tell older ones from one that waits. */
async function nameOfOwn(): Promise<string | undefined> {
  return (await caches.keys()).find((name) => name.startsWith(PREFIX) && name.endsWith(`:${__VERSION__}`));
}

/** The files of this version, opened once for the life of the worker: every request passes here. */
let own: Promise<Cache> | undefined;

/** @param madeMs time for the name of a cache that is not there; one that was thrown away counts as old */
function ownFiles(madeMs = 1): Promise<Cache> {
  own ??= nameOfOwn().then((name) => caches.open(name ?? `${PREFIX}${madeMs}:${__VERSION__}`));
  return own;
}

/** Puts by the files that are not there yet: from an older version where they are the same, else from the server. */
async function fill(madeMs?: number): Promise<void> {
  const name = await nameOfOwn();
  const kept = name === undefined ? undefined : await caches.open(name);
  const lacking = await Promise.all(
    paths.map(async (path) => {
      if (await kept?.match(path)) return undefined;
      const older = await wholeFile(path, await caches.match(path));
      return [path, older ?? (await fetchFile(path))] as const;
    }),
  );
  // Nothing is written before all of it is there: a refused version leaves nothing behind.
  const files = await ownFiles(madeMs);
  await Promise.all(lacking.map((one) => one && files.put(...one)));
}

/** Puts all files by, each compared with the hash it was shipped with. One that differs refuses the install. */
export async function install(): Promise<void> {
  const before = await nameOfOwn();
  try {
    await fill(Date.now());
  } catch (thrown) {
    const made = await nameOfOwn();
    own = undefined;
    if (made && !before) await caches.delete(made);
    throw thrown;
  }
}

/** A file was not where it should be, so others may be gone as well. */
let absentFiles = false;

/** A file of this version; one that the browser threw away is fetched again. Rejects when it cannot be had. */
export async function shippedFile(path: string): Promise<Response> {
  const kept = await (await ownFiles()).match(path);
  if (kept) return kept;
  own = undefined;
  absentFiles = true;
  const fresh = await fetchFile(path);
  await (await ownFiles()).put(path, fresh.clone());
  return fresh;
}

/** A file of another version, which a page of that version asks for. What begins with a colon is kept, and no file. */
export async function olderFile(path: string): Promise<Response | undefined> {
  return isShipped(path) || path.startsWith('/:') ? undefined : caches.match(path);
}

/** Takes the open pages. They are of an older version, whose files stay for as long as one of them is open. */
export async function takeOver(sw: ServiceWorkerGlobalScope): Promise<void> {
  await sw.clients.claim();
  if ((await spareCaches(sw)).length === 0) return;
  await (await ownFiles()).put(PAGES_BEFORE, new Response(JSON.stringify(await openPages(sw))));
  await tidyUp(sw);
}

async function openPages(sw: ServiceWorkerGlobalScope): Promise<string[]> {
  const pages = await sw.clients.matchAll({ type: 'window', includeUncontrolled: true });
  return pages.map(({ id }) => id);
}

/** Caches of versions that are past. While another version is being put by, younger ones may be its. */
async function spareCaches({ registration }: ServiceWorkerGlobalScope): Promise<string[]> {
  const kept = await nameOfOwn();
  const madeMs = (name = '') => Number(name.split(':')[1]);
  const another = registration.installing ?? registration.waiting;
  const isSpare = (name: string) => name !== kept && (!another || madeMs(name) < madeMs(kept));
  return (await caches.keys()).filter((name) => name.startsWith(PREFIX) && isSpare(name));
}

/** Nothing is left over of older versions, as far as this worker has seen. */
let tidy = false;

/** After an answer: throws away what no open page can ask for any more, and fetches what is missing. */
export async function tidyUp(sw: ServiceWorkerGlobalScope): Promise<void> {
  if (!tidy) {
    tidy = true;
    tidy = await dropSpare(sw);
  }
  if (!absentFiles) return;
  absentFiles = false;
  await fill();
}

async function dropSpare(sw: ServiceWorkerGlobalScope): Promise<boolean> {
  const spare = await spareCaches(sw);
  if (spare.length === 0) return true;
  const files = await ownFiles();
  const before: string[] = (await (await files.match(PAGES_BEFORE))?.json()) ?? [];
  const open = await openPages(sw);
  if (before.some((id) => open.includes(id))) return false;
  await files.delete(PAGES_BEFORE);
  await Promise.all(spare.map((name) => caches.delete(name)));
  return true;
}

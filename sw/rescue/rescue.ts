import { dayOfName, offerFile, onTap } from './tap.ts';

// Stands by itself: it must work whatever has become of the app, so nothing of the app is used here. What it knows
// of the store are three names: the database, its store of journal lines, and its store of photos.
const DATABASE = 'pinchbolt';
const BATCH = 500;
const WAIT_MS = 5000;

type StoreReading = { blob: Blob; kept: number; lost: number };

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
}

/** Opens the logbook as it lies there; one that is not there is not made. */
function openLogbook(): Promise<IDBDatabase> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open(DATABASE);
    opening.onupgradeneeded = () => {
      failed(new Error('There is no logbook on this phone.'));
      opening.transaction?.abort();
    };
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
    setTimeout(
      () => failed(new Error('Another tab holds the logbook. Close all other tabs, then try again.')),
      WAIT_MS,
    );
  });
}

/** All of one store as lines of JSON. A row that cannot be read is counted, and the rest is read. */
async function linesOf(name: string, lineOf: (row: unknown) => Promise<string>): Promise<StoreReading> {
  const database = await openLogbook();
  const reading = { parts: [] as Blob[], kept: 0, lost: 0 };
  const store = () => database.transaction(name).objectStore(name);
  const keep = async (rows: unknown[]) => {
    const lines = await Promise.all(rows.map(lineOf));
    // A blob may lie on the disk; so many lines together would not fit into memory.
    reading.parts.push(new Blob(lines.map((line) => `${line}\n`)));
    reading.kept += rows.length;
  };
  try {
    const keys = await answer(store().getAllKeys());
    const batch = name === 'photos' ? 1 : BATCH;
    for (let at = 0; at < keys.length; at += batch) {
      const wanted = keys.slice(at, at + batch);
      const range = IDBKeyRange.bound(wanted[0], wanted.at(-1));
      try {
        await keep(await answer(store().getAll(range)));
      } catch {
        for (const key of wanted) {
          try {
            await keep([await answer(store().get(key))]);
          } catch {
            reading.lost += 1;
          }
        }
      }
    }
  } finally {
    database.close();
  }
  return {
    blob: new Blob(reading.parts, { type: 'application/jsonl' }),
    kept: reading.kept,
    lost: reading.lost,
  };
}

/** A photo's bytes in base64, since JSON has no bytes. */
function photoLine(row: unknown): Promise<string> {
  const { buf, ...rest } = row as { buf: ArrayBuffer };
  return new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () =>
      done(JSON.stringify({ ...rest, base64: String(reader.result).split(',')[1] ?? '' }));
    reader.onerror = () => failed(reader.error);
    reader.readAsDataURL(new Blob([buf]));
  });
}

function saves(store: string, what: string, lineOf: (row: unknown) => Promise<string>): void {
  onTap(store, 'saved', async (say) => {
    const { blob, kept, lost } = await linesOf(store, lineOf);
    offerFile(blob, `pinchbolt-${store}-${dayOfName()}.jsonl`);
    say(`${what} in the file: ${kept}.${lost > 0 ? ` Not readable: ${lost}.` : ''}`);
  });
}

saves('journal', 'Entries', async (row) => JSON.stringify(row));
saves('photos', 'Photos', photoLine);

onTap('again', 'fetched', async (say) => {
  const there = await fetch('/sw.js', { cache: 'no-store' }).catch(() => undefined);
  const kind = there?.headers.get('content-type') ?? '';
  if (!there?.ok || !/javascript/.test(kind))
    return say('The server does not answer as it should. Try again later.');
  const registrations = await navigator.serviceWorker.getRegistrations();
  await Promise.all(registrations.map((registration) => registration.unregister()));
  for (const name of await caches.keys()) if (/^pinchbolt:\d/.test(name)) await caches.delete(name);
  location.replace('/');
});

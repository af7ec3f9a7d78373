/** The files of the app that are kept on this phone. */
export interface Shipped {
  version: string;
  sinceMs: number;
}

/**
 * What the name of a file cache says; the worker names them by the time of the install and the version.
 * @example shippedOf('pinchbolt:1760000000000:0a1b2c') //=> { version: '0a1b2c', sinceMs: 1760000000000 }
 */
export function shippedOf(cacheName: string): Shipped | undefined {
  const [, since, version] = /^pinchbolt:(\d+):([0-9a-f]+)$/.exec(cacheName) ?? [];
  return since && version ? { version, sinceMs: Number(since) } : undefined;
}

/** The newest version whose files hold the page's own script; undefined while none is kept. */
export async function newestShipped(): Promise<Shipped | undefined> {
  const script = document.querySelector<HTMLScriptElement>('script[src]')?.src;
  if (!script || !('caches' in globalThis)) return undefined;
  const kept: Shipped[] = [];
  for (const name of await caches.keys()) {
    const shipped = shippedOf(name);
    if (shipped && (await caches.match(script, { cacheName: name }))) kept.push(shipped);
  }
  return kept.toSorted((a, b) => b.sinceMs - a.sinceMs)[0];
}

import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { findBrowser } from './findBrowser.mjs';
import { processesOf } from './processesOf.ts';

const KINDS: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webp': 'image/webp',
};

/** What a server says to one request, where it says anything but the file. */
export interface Answer {
  status?: number;
  headers?: Record<string, string>;
  body?: string;
}

/** The built product behind a plain file server that counts what it is asked for. */
export interface Served {
  origin: string;
  hits: string[];
  /** Other files under the same addresses, for instance of a newer build. */
  serve(folder: string): void;
  /** A server that goes wrong, or is set up in its own way: what it says instead of the file at a path. */
  answer(instead: (path: string) => Answer | undefined): void;
  /** What it says with every file from now on. */
  add(headers: Record<string, string>): void;
  stop(): Promise<void>;
}

export async function serveDist(first = 'dist'): Promise<Served> {
  let folder = first;
  let instead: (path: string) => Answer | undefined = () => undefined;
  let added: Record<string, string> = {};
  const hits: string[] = [];
  const server: Server = createServer((request, response) => {
    // The URL parser has taken `..` out already.
    const path = new URL(request.url ?? '/', 'http://x').pathname;
    hits.push(path);
    const other = instead(path);
    if (other) {
      response.writeHead(other.status ?? 200, { 'content-type': KINDS['.html'], ...other.headers });
      response.end(other.body ?? '');
      return;
    }
    const file = join(folder, path === '/' ? '/index.html' : path);
    try {
      if (!statSync(file).isFile()) throw new Error('not a file');
      const body = readFileSync(file);
      response.writeHead(200, {
        'content-type': KINDS[extname(file)] ?? 'application/octet-stream',
        'cache-control': 'no-cache',
        ...added,
      });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const address = server.address();
  if (typeof address !== 'object' || address === null) throw new Error('no port');
  return {
    origin: `http://127.0.0.1:${address.port}`,
    hits,
    serve(next) {
      folder = next;
    },
    answer(next) {
      instead = next;
    },
    add(headers) {
      added = headers;
    },
    async stop() {
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}

/** A browser with a profile of its own on disk, so that it can be killed and opened again. */
export interface Phone {
  context: BrowserContext;
  page: Page;
  /** Requests that went anywhere but to the product; must stay empty. */
  strays: string[];
  /** What the content policy had to refuse; must stay empty. */
  refusals: string[];
  profile: string;
  /** Closes the browser. Fails when anything left the origin or the content policy had to refuse anything. */
  close(): Promise<void>;
  /** Ends every process of the browser at once, as an empty battery would. */
  kill(): Promise<void>;
}

export interface PhoneOptions {
  profile?: string;
  landscape?: boolean;
  dark?: boolean;
  zone?: string;
  /** Language of the phone, as a BCP 47 tag; the decimal sign follows it. */
  locale?: string;
  /** A sound file that the microphone hears, over and over; the phone says yes when it is asked for. */
  heard?: string;
}

export function newProfile(): string {
  return mkdtempSync(join(tmpdir(), 'pinchbolt-phone-'));
}

export async function openPhone(origin: string, options: PhoneOptions = {}): Promise<Phone> {
  const { path, why } = findBrowser({ install: false });
  if (!path) throw new Error(why);
  const profile = options.profile ?? newProfile();
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: path,
    headless: true,
    viewport: options.landscape ? { width: 844, height: 390 } : { width: 390, height: 844 },
    hasTouch: true,
    deviceScaleFactor: 2,
    colorScheme: options.dark ? 'dark' : 'light',
    ...(options.zone ? { timezoneId: options.zone } : {}),
    ...(options.locale ? { locale: options.locale } : {}),
    args: [
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      ...(options.heard
        ? [
            '--use-fake-device-for-media-stream',
            '--use-fake-ui-for-media-stream',
            `--use-file-for-fake-audio-capture=${options.heard}`,
          ]
        : []),
    ],
  });
  const strays: string[] = [];
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (asked !== origin && protocol.startsWith('http')) strays.push(request.url());
  });
  const refusals: string[] = [];
  context.on('console', (message) => {
    if (/Content Security Policy|Trusted(Script|HTML)|Permissions policy violation/.test(message.text()))
      refusals.push(message.text());
  });
  const page = context.pages()[0] ?? (await context.newPage());
  return {
    context,
    page,
    strays,
    refusals,
    profile,
    async close() {
      await context.close();
      if (!options.profile) rmSync(profile, { recursive: true, force: true });
      const wrong = [...strays.map((url) => `[N1] a request left the origin: ${url}`), ...refusals];
      if (wrong.length > 0) throw new Error(wrong.join('\n'));
    },
    async kill() {
      const gone = new Promise((done) => context.once('close', done));
      for (const pid of processesOf(profile)) {
        try {
          process.kill(pid, 'SIGKILL');
        } catch {
          // It has ended already.
        }
      }
      await gone;
    },
  };
}

/** Opens the product and waits until its worker holds every file. */
export async function firstVisit(phone: Phone, origin: string): Promise<void> {
  await phone.page.goto(`${origin}/`);
  await phone.page.getByRole('heading', { level: 1 }).waitFor();
  await phone.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller) {
      await new Promise((done) =>
        navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }),
      );
    }
  });
}

/**
 * The browser throws away the files that the worker has put by. The worker rests as well, since while it runs it
 * holds on to what it has opened; the page ends up on an empty one.
 */
export async function throwAwayFiles(phone: Phone): Promise<void> {
  await phone.page.evaluate(async () => {
    for (const name of await caches.keys()) await caches.delete(name);
  });
  const session = await phone.context.newCDPSession(phone.page);
  await session.send('ServiceWorker.enable');
  await session.send('ServiceWorker.stopAllWorkers');
  await session.detach();
  await phone.page.goto('about:blank');
}

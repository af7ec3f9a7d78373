import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { type Build, nextBuild } from './builds.ts';
import { eachOnItsOwnPhone, phone, served } from './ownPhone.ts';
import type { Answer } from './product.ts';

const builds: Build[] = [];

/** As `eachOnItsOwnPhone`; the builds that a test made go with it. */
export function eachWithItsBuilds(): void {
  // What is asked for first comes last: nothing uses the builds any more.
  afterEach(() => {
    for (const build of builds.splice(0)) build.remove();
  });
  eachOnItsOwnPhone();
}

export async function buildNext(...wanted: Parameters<typeof nextBuild>): Promise<Build> {
  const build = await nextBuild(...wanted);
  builds.push(build);
  return build;
}

/** Gives one script of a build other bytes, as a real change would. */
export const touch = (name: string) => (build: Build) => {
  const path = build.path(scriptOf(name, build.folder));
  writeFileSync(path, `${readFileSync(path, 'utf8')}\n// changed`);
};

export function scriptOf(name: string, folder = 'dist'): string {
  const found = readdirSync(join(folder, 'assets')).find((file) => file.startsWith(`${name}-`));
  if (!found) throw new Error(`no script is called ${name}`);
  return `assets/${found}`;
}

/** Asks for an update and waits until the browser has dealt with it. */
export const update = () =>
  phone.page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => {});
    const { installing } = registration;
    if (installing)
      await new Promise<void>((done) =>
        installing.addEventListener('statechange', () => installing.state !== 'installing' && done()),
      );
    return registration.waiting !== null;
  });

export const cacheNames = () => phone.page.evaluate(() => caches.keys());
export const versionOfPage = () => phone.page.evaluate(() => document.documentElement.dataset['version']);
export const heading = (name: string) => phone.page.getByRole('heading', { level: 1, name }).waitFor();

export async function goTo(hash: string): Promise<void> {
  await phone.page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

/** Closes the page and opens the app again, with no server to ask. */
export async function startOffline(hash = '#/home'): Promise<void> {
  await phone.context.setOffline(true);
  await phone.page.goto('about:blank');
  await phone.page.goto(`${served.origin}/${hash}`);
}

export const MAINTENANCE = '<!doctype html><title>Back soon</title><h1>Back soon</h1>';
export const WRONG: [string, Answer][] = [
  ['an HTML page', { body: MAINTENANCE }],
  [
    'an HTML page that says it is a script',
    { body: MAINTENANCE, headers: { 'content-type': 'text/javascript' } },
  ],
  ['an empty file', { headers: { 'content-type': 'text/javascript' } }],
  ['a script of another build', { body: 'let other;', headers: { 'content-type': 'text/javascript' } }],
];

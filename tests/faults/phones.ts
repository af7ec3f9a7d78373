import { cpSync, readlinkSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Page } from 'playwright-core';
import { newProfile, openPhone, type Phone, type PhoneOptions } from '../browser/product.ts';

export { newProfile, type Phone };

/** Longer than any screen takes, also on a machine with other work. */
const SLOW_MS = 60_000;

/** Opens a browser on a profile that lies on the disk and stays there. */
export async function switchOn(origin: string, profile: string, options: PhoneOptions = {}): Promise<Phone> {
  const phone = await openPhone(origin, { ...options, profile });
  phone.page.setDefaultTimeout(SLOW_MS);
  return phone;
}

/** A copy of a phone that is switched off: the same site data under another folder. */
export function copyOf(profile: string): string {
  const copy = newProfile();
  // The lock belongs to the process that made it.
  cpSync(profile, copy, {
    recursive: true,
    verbatimSymlinks: true,
    filter: (path) => !basename(path).startsWith('Singleton'),
  });
  return copy;
}

export const throwAway = (profile: string) => rmSync(profile, { recursive: true, force: true });

/** The process that leads the browser, by the lock it keeps in its profile. */
function leaderOf(profile: string): number | undefined {
  try {
    const pid = Number(readlinkSync(join(profile, 'SingletonLock')).split('-').at(-1));
    return Number.isInteger(pid) && pid > 1 ? pid : undefined;
  } catch {
    return undefined;
  }
}

/** SIGKILL to the whole process group of the browser at once: nothing of it can write another byte. */
export async function cutOff(phone: Phone): Promise<void> {
  const pid = leaderOf(phone.profile);
  if (pid === undefined) return phone.kill();
  const gone = new Promise((done) => phone.context.once('close', done));
  try {
    process.kill(-pid, 'SIGKILL');
  } catch {
    // It leads no group of its own here: then every process that names the profile is ended.
    return phone.kill();
  }
  await gone;
}

/** Opens the app and waits until it shows a screen of its own. */
export async function openApp(page: Page, origin: string, hash = '#/home'): Promise<void> {
  await page.goto(`${origin}/${hash}`);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
}

/** A page of the origin in which nothing of the product runs: a picture of its own. */
export async function quietPage(page: Page, origin: string): Promise<void> {
  await page.goto(`${origin}/icons/icon-32.png`);
}

import { rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { newProfile, openPhone, type Phone, type Served, serveDist } from '../product.ts';
import { entries, rows } from './rawStore.ts';

export const MINUTE_MS = 60_000;
export const DAY_MS = 86_400_000;
/** Longer than any screen takes, also on a machine with other work. */
export const SLOW_MS = 90_000;
/** A Saturday at two in the afternoon in Vienna; in Auckland it is Sunday already. Summer time comes a fortnight later. */
const BEGUN_MS = Date.UTC(2031, 2, 15, 13, 0);

interface Where {
  zone: string;
  locale: string;
}

/** Where the bike is built; the decimal sign there is a comma. */
export const HOME: Where = { zone: 'Europe/Vienna', locale: 'de-AT' };

/** The phone of this story and what is on it; every one of these is another one after the phone was put down. */
export let phone: Phone;
export let page: Page;
export let bikeId = '';
let served: Served;
let profile = '';
const strays: string[] = [];

/** Takes the phone in hand at an instant; the clock of the page runs on from there. */
async function takeInHand(atMs: number, where: Where): Promise<void> {
  phone = await openPhone(served.origin, { profile, ...where });
  page = phone.page;
  page.setDefaultTimeout(SLOW_MS);
  await phone.context.clock.install({ time: atMs });
}

async function takeInHandOffline(atMs: number, where: Where): Promise<void> {
  await takeInHand(atMs, where);
  await phone.context.setOffline(true);
  await page.goto(`${served.origin}/#/home`);
  await page.getByRole('heading', { level: 1, name: 'Workshop' }).waitFor();
}

/** The product served once, and a phone that has never seen it. */
export async function begin(): Promise<void> {
  profile = newProfile();
  served = await serveDist();
  await takeInHand(BEGUN_MS, HOME);
}

/** From here on it is this bike that is built. */
export async function buildOn(name: string): Promise<void> {
  bikeId = called(await rows(page, 'bike'), name).bikeId;
}

/** The address the product is served at. */
export const origin = () => served.origin;

/** From here on neither network nor server. */
export async function leaveTheNetwork(): Promise<void> {
  await phone.context.setOffline(true);
  await served.stop();
}

/** The present of the page, ms UTC. */
export const nowMs = () => page.evaluate(() => Date.now());

/** The battery gives out, and a little later the phone is on again. */
export async function killAndReopen(): Promise<void> {
  const atMs = await nowMs();
  strays.push(...phone.strays);
  await phone.kill();
  await takeInHandOffline(atMs + 20_000, HOME);
}

/** Closed in good order and opened again later, perhaps elsewhere. */
export async function putDownFor(spanMs: number, where: Where = HOME): Promise<void> {
  const atMs = await nowMs();
  strays.push(...phone.strays);
  await phone.close();
  await takeInHandOffline(atMs + spanMs, where);
}

/** Closes the phone for good. @returns every request of the story that went elsewhere than to the product */
export async function end(): Promise<string[]> {
  strays.push(...phone.strays);
  await phone.close();
  rmSync(profile, { recursive: true, force: true });
  return strays;
}

/** The row a person gave this name to. */
function called<R extends { name: string }>(all: readonly R[], name: string): R {
  const found = all.find((row) => row.name === name);
  if (!found) throw new Error(`nothing is called ${name}`);
  return found;
}

export const joint = async (name: string) => called(await rows(page, 'joint'), name);
export const part = async (name: string) => called(await rows(page, 'part'), name);

/** The list of steps, in its order. */
export const steps = async () =>
  (await rows(page, 'step')).filter(({ state }) => state !== 'dropped').sort((a, b) => a.rank - b.rank);

/** Every torque logged for a joint, oldest first. */
export async function torquesOf(name: string) {
  const { jointId } = await joint(name);
  return (await entries(page, 'torque-applied')).filter((entry) => entry.jointId === jointId);
}

/** Waits until the bench says that it is kept. */
export const saved = () => page.getByText('Saved', { exact: true }).waitFor();
export const alert = (words: string | RegExp) => page.getByRole('alert').filter({ hasText: words });

import type { Page } from 'playwright-core';
import { Acknowledged } from '../acknowledged.ts';
import type { Dice } from '../dice.ts';
import { type Answer, give, listen, type Order, takeDoor } from '../door.ts';
import { type Attack, type Ground, inRound, rest } from '../ground.ts';
import { judge } from '../judge.ts';
import { type Known, knownFrom, randomOrder, torqueOn } from '../orders.ts';
import { copyOf, cutOff, openApp, type Phone, switchOn, throwAway } from '../phones.ts';
import { readStored, type Stored, type StoredEntry } from '../stored.ts';
import { nothingFound, together, type Verdict } from '../tally.ts';
import { wholesOf } from '../wholes.ts';
import { demoCounts, demoFaults, demoThere, ofDemo, tapDemo } from './demoLoad.ts';
import { fillStore } from './filled.ts';
import { ageRows } from './oldRows.ts';

/** Two pages of one phone, both with the logbook open, and what they acknowledged. */
interface TwoPages {
  phone: Phone;
  pages: readonly [Page, Page];
  kept: Acknowledged;
}

async function withTwoPages(
  { served, clean, finds, fold }: Ground,
  where: string,
  race: (two: TwoPages) => Promise<Verdict>,
): Promise<void> {
  const profile = copyOf(clean);
  const kept = new Acknowledged();
  const phone = await switchOn(served.origin, profile);
  await phone.context.grantPermissions(['notifications'], { origin: served.origin });
  await listen(phone.context, (entries) => kept.entries(entries));
  const other = await phone.context.newPage();
  const pages = [phone.page, other] as const;
  try {
    for (const page of pages) {
      await openApp(page, served.origin);
      await takeDoor(page);
    }
    const found = await race({ phone, pages, kept });
    finds.attacked(where, together(found, await judge(await readStored(phone.page), kept, fold)));
  } finally {
    await cutOff(phone);
    throwAway(profile);
  }
}

/** A command may be refused; one that breaks off without a reason was not carried out as it should. */
function brokenOff(answers: readonly Answer[]): Verdict {
  const whys = answers.flatMap((answer) => (answer.is === 'failed' ? [answer.why] : []));
  return { lost: [], wrong: [...new Set(whys)].map((why) => `a command broke off: ${why}`) };
}

function randomOrders(
  dice: Dice,
  count: number,
  known: ReturnType<typeof knownFrom>,
  kept: Acknowledged,
): Order[] {
  const orders = Array.from({ length: count }, () => randomOrder(dice, known));
  for (const order of orders) for (const whole of wholesOf(order)) kept.whole(whole);
  return orders;
}

/** Wakes the worker as the phone would from time to time: it reads what is due and claims the right to say so. */
async function wakeWorker(page: Page, origin: string): Promise<() => Promise<void>> {
  const session = await page.context().newCDPSession(page);
  let registrationId: string | undefined;
  session.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
    registrationId = registrations.find(({ scopeURL }) => scopeURL.startsWith(origin))?.registrationId;
  });
  await session.send('ServiceWorker.enable');
  return async () => {
    if (registrationId === undefined) return;
    await session.send('ServiceWorker.dispatchPeriodicSyncEvent', { origin, registrationId, tag: 'due' });
  };
}

/** Both pages give many commands at once, again and again, while the worker claims what is due. */
async function bursts(ground: Ground, at: number): Promise<void> {
  const dice = ground.dice.named(`bursts ${at}`);
  await withTwoPages(ground, `bursts ${at}`, async ({ pages, kept }) => {
    await fillStore(pages[0], dice, 20, kept);
    const wake = await wakeWorker(pages[0], ground.served.origin);
    let found = nothingFound();
    let [given, done] = [0, 0];
    for (let round = 0; round < 6; round += 1) {
      const known = knownFrom(await readStored(pages[0]));
      // Both speak of the same things: the same joints, steps and waits.
      const answers = await Promise.all([
        ...pages.map((page) => give(page, randomOrders(dice, 40, known, kept), dice.one([0, 0, 2]))),
        wake().then(() => []),
      ]);
      found = together(found, brokenOff(answers.flat()));
      given += answers.flat().length;
      done += answers.flat().filter(({ is }) => is === 'done').length;
    }
    ground.finds.say(`${done} of ${given} commands at once were carried out, the others refused`);
    return found;
  });
}

/** One page is loaded anew and sorts the rows, while the other goes on writing. */
async function sortingWhileWriting(ground: Ground, at: number): Promise<void> {
  const dice = ground.dice.named(`sorting ${at}`);
  await withTwoPages(ground, `sorting while writing ${at}`, async ({ pages: [first, second], kept }) => {
    await fillStore(first, dice, 200, kept);
    const stored = await readStored(first);
    const known = knownFrom(stored);
    await ageRows(first, stored);
    const both = dice.chance(0.5);
    const again = async (page: Page) => {
      await page.reload({ waitUntil: 'commit' });
      await page.getByRole('heading', { level: 1 }).first().waitFor();
      return takeDoor(page);
    };
    const [state, answers] = await Promise.all([
      again(second),
      both
        ? again(first).then((): Answer[] => [])
        : rest(dice.whole(0, 500)).then(() => give(first, randomOrders(dice, 60, known, kept), 4)),
    ]);
    const said = nothingFound();
    if (state !== 'open') said.wrong.push(`the page that sorted is ${state}`);
    // A page whose rows were made old under it may refuse to write; it may not write half.
    const refusedToWrite = answers.filter(({ is }) => is === 'failed').length;
    if (refusedToWrite > 0)
      ground.finds.say(`${refusedToWrite} of ${answers.length} commands were turned away meanwhile`);
    return said;
  });
}

/** The demo is asked for in both pages at once. */
async function demoTwice(ground: Ground, at: number): Promise<void> {
  const whole: Record<string, number> = {};
  await withTwoPages(ground, `demo once ${at}`, async ({ pages: [first] }) => {
    await tapDemo(first);
    await demoThere(first);
    Object.assign(whole, demoCounts(await readStored(first)));
    return nothingFound();
  });
  await withTwoPages(ground, `demo from two pages ${at}`, async ({ pages }) => {
    // The button of a page goes when the other's demo is there first.
    await Promise.all(pages.map((page) => tapDemo(page).catch(() => demoThere(page))));
    await Promise.all(pages.map((page) => demoThere(page)));
    await rest(500);
    return { lost: [], wrong: demoFaults(await readStored(pages[0]), whole) };
  });
}

/** The demo is taken out in one page, while the other has work of its own and some on the demo's joints in hand. */
async function demoTakenOut(ground: Ground, at: number): Promise<void> {
  const dice = ground.dice.named(`taken out ${at}`);
  await withTwoPages(ground, `demo taken out ${at}`, async ({ pages: [first, second], kept }) => {
    await tapDemo(first);
    await demoThere(first);
    await fillStore(second, dice, 0, kept);
    const stored = await readStored(second);
    const [ofIt, own] = split(stored);
    const work = (count: number) => [
      ...randomOrders(dice, count, own, kept),
      ...Array.from({ length: count }, (): Order => torqueOn(dice.one(ofIt.joints))),
    ];
    await give(second, work(10));
    const gone = first.getByRole('button', { name: 'Remove the demo' }).first().click();
    const answers = await give(second, work(30), 3);
    await gone;
    await first.getByText('Demo bikes loaded').waitFor({ state: 'detached' });
    const after = await give(second, work(10), 3);
    const { lines } = await readStored(first);
    if (lines.some(({ entry }) => entry.type === 'demo-removed')) kept.forget(ofDemo);
    return brokenOff([...answers, ...after]);
  });
}

/** What is the demo's, and what is not. */
function split(stored: Stored): readonly [ofIt: Known, own: Known] {
  const part = (demo: boolean) =>
    knownFrom({
      ...stored,
      rows: stored.rows.filter((row) => ofDemo(row as unknown as StoredEntry) === demo),
      lines: stored.lines.filter(({ entry }) => ofDemo(entry) === demo),
    });
  return [part(true), part(false)];
}

export const tabs: Attack = {
  name: 'tabs',
  about: 'two pages and the worker race: bursts, a sorting while the other writes, the demo from both',
  counted: true,
  async run(ground) {
    const races: readonly (readonly [rounds: number, race: typeof bursts])[] = [
      [8, bursts],
      [8, sortingWhileWriting],
      [2, demoTwice],
      [3, demoTakenOut],
    ];
    for (const [rounds, race] of races) {
      for (let at = 0; at < ground.times(rounds); at += 1)
        await inRound(`${race.name} ${at}`, ground, () => race(ground, at));
    }
  },
};

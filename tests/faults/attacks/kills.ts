import type { Page } from 'playwright-core';
import { Acknowledged } from '../acknowledged.ts';
import type { Dice } from '../dice.ts';
import { give, listen, type Order, takeDoor } from '../door.ts';
import { type Attack, type Ground, inLanes, rest } from '../ground.ts';
import { judge } from '../judge.ts';
import { type Known, knownFrom, randomOrder, smallBike } from '../orders.ts';
import { copyOf, cutOff, openApp, switchOn, throwAway } from '../phones.ts';
import { readStored } from '../stored.ts';
import { nothingFound, together, type Verdict } from '../tally.ts';
import { wholesOf } from '../wholes.ts';
import { handActs, type Typed, typeAndLeave, typedNow } from './handWork.ts';

/** Kills of one phone, one after the other, before the next begins with an empty logbook. */
const KILLS_EACH = 20;
/** What is typed this long before a kill must be there afterwards, ms. */
const KEPT_AFTER_MS = 1000;

/** The state of one phone between two kills. */
interface Story {
  kept: Acknowledged;
  typed?: Typed | undefined;
}

async function giveKept(page: Page, orders: Order[], gapMs: number, { kept }: Story): Promise<void> {
  for (const order of orders) for (const whole of wholesOf(order)) kept.whole(whole);
  await give(page, orders, gapMs);
}

/** Works on the bike until the browser is gone. */
async function work(page: Page, dice: Dice, first: Known, story: Story): Promise<void> {
  let known = first;
  if (known.bikes.length < 3) {
    const bike = smallBike(dice.whole(1, 3));
    const orders = dice.chance(0.5) ? [{ command: bike }] : bike.map((command) => ({ command }));
    await giveKept(page, orders, 0, story);
    known = knownFrom(await readStored(page));
  }
  for (;;) {
    const throwOf = dice.share();
    if (throwOf < 0.6) {
      const orders = Array.from({ length: dice.whole(1, 14) }, () => randomOrder(dice, known));
      await giveKept(page, orders, dice.one([0, 0, 3, 20]), story);
    } else if (throwOf < 0.7) {
      story.typed = undefined;
      story.typed = await typeAndLeave(page, dice);
    } else {
      const act = dice.one(handActs);
      // Saving a bike lets the words of that form go.
      if (act === handActs[0]) story.typed = undefined;
      await act(page, dice, known, story.kept);
    }
    known = knownFrom(await readStored(page));
  }
}

/** What the screens say after the start: the bikes, and what was half typed. */
async function screenFaults(page: Page, known: Known, { typed }: Story, killedMs: number): Promise<Verdict> {
  const found = nothingFound();
  const [bike] = known.bikes;
  if (bike) {
    const seen = page.getByText(String(bike['name']), { exact: true }).first();
    const drawn = await seen.waitFor({ timeout: 15_000 }).then(
      () => true,
      () => false,
    );
    if (!drawn) found.wrong.push(`the first screen does not show ${String(bike['name'])}`);
  }
  if (typed && killedMs - typed.atMs > KEPT_AFTER_MS) {
    const words = await typedNow(page, typed);
    if (words !== typed.words) found.lost.push(`half typed: “${typed.words}”, after the start “${words}”`);
  }
  return found;
}

async function oneStory(at: number, kills: number, ground: Ground): Promise<void> {
  const { served, fold, finds } = ground;
  const dice = ground.dice.named(`phone ${at}`);
  const profile = copyOf(ground.clean);
  const story: Story = { kept: new Acknowledged() };
  let killedMs = 0;
  try {
    for (let kill = 0; kill <= kills; kill += 1) {
      const phone = await switchOn(served.origin, profile);
      await listen(phone.context, (entries) => story.kept.entries(entries));
      await openApp(phone.page, served.origin);
      const state = await takeDoor(phone.page);
      const stored = await readStored(phone.page);
      const known = knownFrom(stored);
      if (kill > 0) {
        const said = nothingFound();
        if (state !== 'open') said.wrong.push(`the store is ${state} after the start`);
        const verdict = together(
          await judge(stored, story.kept, fold),
          said,
          await screenFaults(phone.page, known, story, killedMs),
        );
        finds.attacked(`phone ${at}, kill ${kill}`, verdict);
        // What is gone stays gone: it is counted once.
        if (verdict.lost.length + verdict.wrong.length > 0) return await cutOff(phone);
      }
      if (kill === kills || ground.over()) return await cutOff(phone);
      const worked = work(phone.page, dice.named(`kill ${kill}`), known, story);
      let brokeOff: unknown;
      let killed = false;
      const ended = worked.catch((thrown) => {
        if (!killed) brokeOff = thrown;
      });
      const spanMs = dice.chance(0.5) ? dice.whole(20, 700) : dice.whole(300, 3500);
      await Promise.race([ended, rest(spanMs)]);
      killed = true;
      killedMs = Date.now();
      await cutOff(phone);
      await ended;
      if (brokeOff) throw brokeOff;
    }
  } finally {
    finds.say(`${finds.attacks} kills so far; phone ${at} had ${story.kept.size} acknowledged`);
    throwAway(profile);
  }
}

export const kills: Attack = {
  name: 'kills',
  about: 'the browser is killed at random moments of a build: forms, taps, bursts of commands, photos',
  counted: true,
  async run(ground) {
    const all = ground.times(300);
    const stories = Math.ceil(all / KILLS_EACH);
    await inLanes(stories, ground, (at) => oneStory(at, Math.min(KILLS_EACH, all - at * KILLS_EACH), ground));
  },
};

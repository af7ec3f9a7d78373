import type { Page } from 'playwright-core';
import { Acknowledged } from '../acknowledged.ts';
import { type Answer, give, listen, type Order, takeDoor } from '../door.ts';
import { type Attack, type Ground, inLanes } from '../ground.ts';
import { judge } from '../judge.ts';
import { knownFrom, smallBike, word } from '../orders.ts';
import { copyOf, cutOff, openApp, switchOn, throwAway } from '../phones.ts';
import { readStored } from '../stored.ts';
import { nothingFound, together } from '../tally.ts';

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;

interface OddClock {
  pinchboltWallMs?: number;
  pinchboltSteadyMs?: number;
}

/** Puts both clocks of a page under the hand of the attack; runs before the page's own scripts. */
function takeClocks(): void {
  const here = globalThis as OddClock;
  const wall = Date.now.bind(Date);
  const steady = performance.now.bind(performance);
  const begun = Number(localStorage.getItem('odd-clock-wall') ?? 0);
  here.pinchboltWallMs = begun;
  here.pinchboltSteadyMs = 0;
  const nowMs = () => wall() + (here.pinchboltWallMs ?? 0);
  const RealDate = Date;
  globalThis.Date = new Proxy(RealDate, {
    construct: (made, given) => Reflect.construct(made, given.length === 0 ? [nowMs()] : given),
    get: (made, field) => (field === 'now' ? nowMs : Reflect.get(made, field)),
  });
  performance.now = () => steady() + (here.pinchboltSteadyMs ?? 0);
}

/** Moves the clocks of a page: `wallMs` is what the phone shows, `steadyMs` what has truly run. */
async function move(page: Page, wallMs: number, steadyMs: number): Promise<void> {
  await page.evaluate(
    ([wall, steady]) => {
      const here = globalThis as OddClock;
      here.pinchboltWallMs = (here.pinchboltWallMs ?? 0) + wall;
      here.pinchboltSteadyMs = (here.pinchboltSteadyMs ?? 0) + steady;
      localStorage.setItem('odd-clock-wall', String(here.pinchboltWallMs));
    },
    [wallMs, steadyMs] as const,
  );
}

const JUMPS: readonly (readonly [name: string, wallMs: (of: number) => number])[] = [
  ['set ahead by minutes', (of) => Math.round((2 + of * 50) * MINUTE_MS)],
  ['set ahead by days', (of) => Math.round((1 + of * 400) * DAY_MS)],
  ['set back by minutes', (of) => -Math.round((2 + of * 50) * MINUTE_MS)],
  ['set back by days', (of) => -Math.round((1 + of * 400) * DAY_MS)],
];

/** Refusals that only a clock can be the cause of, since every order here is meant and ten seconds apart. */
const CLOCK_REFUSALS = new Set(['double-tap', 'in-the-future']);

function refusedByClock(answers: readonly Answer[], when: string): string[] {
  return answers.flatMap((answer) => {
    if (answer.is === 'failed') return [`${when}: a command broke off: ${answer.why}`];
    if (answer.is === 'refused' && CLOCK_REFUSALS.has(answer.refused))
      return [`${when}: refused as ${answer.refused}, ten seconds after the one before`];
    return [];
  });
}

async function oneRound(at: number, ground: Ground): Promise<void> {
  const { served, clean, fold, finds } = ground;
  const dice = ground.dice.named(`round ${at}`);
  const profile = copyOf(clean);
  const kept = new Acknowledged();
  const phone = await switchOn(served.origin, profile);
  const { page } = phone;
  const said = nothingFound();
  try {
    await phone.context.addInitScript(takeClocks);
    await listen(phone.context, (entries) => kept.entries(entries));
    await openApp(page, served.origin);
    await takeDoor(page);
    await give(
      page,
      smallBike(2).map((command) => ({ command })),
    );
    const { joints, bikes } = knownFrom(await readStored(page));
    const { jointId } = dice.one(joints);
    const { bikeId } = dice.one(bikes);
    /** The same torque, ride, hand-tightening and note again: each is meant, and ten seconds after the last. */
    const again = async (when: string) => {
      const equal: Order[] = [
        {
          command: {
            ...{ type: 'apply-torque', jointId, applied: { value: 5, unit: 'N.m', typed: '5' } },
            ...{ entered: 'tap', bolts: 1, passes: 1 },
          },
        },
        { command: { type: 'log-ride', bikeId, km: 12 } },
        { command: { type: 'add-note', bikeId, words: word('Note') } },
        { command: { type: 'hand-tighten', jointId, bolts: 1 } },
      ];
      for (const order of equal) said.wrong.push(...refusedByClock(await give(page, [order]), when));
      await move(page, 10_000, 10_000);
    };
    await again('before');
    for (let jump = 0; jump < 4; jump += 1) {
      const [name, byMs] = dice.one(JUMPS);
      const asleep = dice.chance(0.25);
      // Asleep, the phone's clock goes on and the steady one may stop.
      if (asleep) await sleep(page, dice.whole(10 * MINUTE_MS, 20 * 60 * MINUTE_MS));
      else await move(page, byMs(dice.share()), 0);
      await again(asleep ? 'after a sleep' : name);
      await again(asleep ? 'later after a sleep' : `later, ${name}`);
      if (dice.chance(0.3)) {
        await page.reload();
        await takeDoor(page);
        await again(`loaded anew, ${name}`);
      }
    }
    // The clock is put right again: work goes on in the present.
    await page.evaluate(() => {
      const here = globalThis as OddClock;
      here.pinchboltWallMs = here.pinchboltSteadyMs ?? 0;
    });
    await again('put right');
    await again('later, put right');
    finds.attacked(`round ${at}`, together(said, await judge(await readStored(page), kept, fold)));
  } finally {
    await cutOff(phone);
    throwAway(profile);
  }
}

async function sleep(page: Page, spanMs: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Page.setWebLifecycleState', { state: 'frozen' });
  await session.send('Page.setWebLifecycleState', { state: 'active' });
  await session.detach();
  await move(page, spanMs, 0);
}

export const clocks: Attack = {
  name: 'clocks',
  about: 'the clock is set ahead and back, and stops in sleep; entries go on',
  counted: true,
  async run(ground) {
    await inLanes(ground.times(12), ground, (at) => oneRound(at, ground));
  },
};

import { Acknowledged } from '../acknowledged.ts';
import { listen, takeDoor } from '../door.ts';
import { type Attack, type Ground, inLanes, rest } from '../ground.ts';
import { judge } from '../judge.ts';
import { copyOf, cutOff, openApp, switchOn, throwAway } from '../phones.ts';
import { readStored } from '../stored.ts';
import { together } from '../tally.ts';
import { demoCounts, demoFaults, demoThere, ofDemo, tapDemo } from './demoLoad.ts';

const KILLS_EACH = 6;

interface WholeDemo {
  counts: Record<string, number>;
  loadMs: number;
}

async function wholeDemo({ served, clean }: Ground): Promise<WholeDemo> {
  const profile = copyOf(clean);
  const phone = await switchOn(served.origin, profile);
  await openApp(phone.page, served.origin);
  const from = Date.now();
  await tapDemo(phone.page);
  await demoThere(phone.page);
  const loadMs = Date.now() - from;
  const counts = demoCounts(await readStored(phone.page));
  await cutOff(phone);
  throwAway(profile);
  return { counts, loadMs };
}

async function onePhone(at: number, kills: number, whole: WholeDemo, ground: Ground): Promise<void> {
  const { served, fold, finds } = ground;
  const dice = ground.dice.named(`phone ${at}`);
  const profile = copyOf(ground.clean);
  const kept = new Acknowledged();
  let removing = false;
  try {
    for (let kill = 0; kill <= kills; kill += 1) {
      const phone = await switchOn(served.origin, profile);
      const { page } = phone;
      await listen(phone.context, (entries) => kept.entries(entries));
      await openApp(page, served.origin);
      await takeDoor(page);
      const stored = await readStored(page);
      const there = Object.keys(demoCounts(stored)).length > 0;
      // Once taken out, its entries are gone on purpose.
      if (removing && !there) kept.forget(ofDemo);
      if (kill > 0) {
        const halves = { lost: [], wrong: demoFaults(stored, whole.counts) };
        const found = together(await judge(stored, kept, fold), halves);
        finds.attacked(`phone ${at}, kill ${kill}${removing ? ' while taken out' : ''}`, found);
        if (found.lost.length + found.wrong.length > 0) return await cutOff(phone);
      }
      if (kill === kills || ground.over()) return await cutOff(phone);
      removing = there;
      if (there) await page.getByRole('button', { name: 'Remove the demo' }).click();
      else await tapDemo(page);
      await rest(dice.whole(0, there ? 400 : Math.round(whole.loadMs * 1.1)));
      await cutOff(phone);
    }
  } finally {
    throwAway(profile);
  }
}

export const demo: Attack = {
  name: 'demo',
  about: 'the browser is killed while the demo is brought in, and while it is taken out',
  counted: true,
  async run(ground) {
    const whole = await wholeDemo(ground);
    ground.finds.say(`bringing the demo in takes ${whole.loadMs} ms`);
    const all = ground.times(36);
    await inLanes(Math.ceil(all / KILLS_EACH), ground, (at) =>
      onePhone(at, Math.min(KILLS_EACH, all - at * KILLS_EACH), whole, ground),
    );
  },
};

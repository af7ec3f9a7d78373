import { firstVisit, type Served, serveDist } from '../browser/product.ts';
import { attacks, selfTest } from './attacks.ts';
import { diceOf } from './dice.ts';
import { startFold } from './foldElsewhere.ts';
import type { Attack, Ground } from './ground.ts';
import { newProfile, switchOn, throwAway } from './phones.ts';
import { Finds, type Tally } from './tally.ts';

export interface Asked {
  seed: string;
  only?: string | undefined;
  share: number;
  /** After so many minutes nothing new is begun; what ran counts. */
  minutes: number;
  selfTest: boolean;
}

const say = (line: string) => console.log(line);

function chosen({ only }: Asked): Attack[] {
  if (only === undefined) return attacks.filter(({ counted }) => counted);
  const one = attacks.filter(({ name }) => name === only);
  if (one.length === 0) throw new Error(`--only is one of ${attacks.map(({ name }) => name).join(', ')}`);
  return one;
}

/** Opens the app once, waits until its worker holds every file, and switches the phone off again. */
async function visitedOnce(served: Served): Promise<string> {
  const profile = newProfile();
  const phone = await switchOn(served.origin, profile);
  await firstVisit(phone, served.origin);
  await phone.close();
  return profile;
}

/** Runs what was asked for. @returns the exit code: 0 when nothing was lost or wrong */
export async function runFaults(asked: Asked): Promise<number> {
  const begun = Date.now();
  const served = await serveDist();
  const fold = await startFold();
  const clean = await visitedOnce(served);
  const times = (whole: number) => Math.max(1, Math.round(whole * asked.share));
  const over = () => Date.now() - begun > asked.minutes * 60_000;
  const sum: Tally = { attacks: 0, lost: 0, wrong: 0 };
  try {
    const groundFor = (name: string): Ground => ({
      ...{ served, fold, clean, times, over },
      dice: diceOf(asked.seed).named(name),
      finds: new Finds(name, say),
    });
    if (asked.selfTest) return await selfTest(groundFor('self-test'));
    for (const attack of chosen(asked)) {
      say(`${attack.name}: ${attack.about}`);
      const ground = groundFor(attack.name);
      const from = Date.now();
      try {
        await attack.run(ground);
      } catch (thrown) {
        // An attack that cannot be carried out proves nothing, so it may not pass.
        ground.finds.attacked('harness', { lost: [], wrong: [`it broke off: ${(thrown as Error).stack}`] });
      }
      const { finds } = ground;
      say(
        `${attack.name}: ${finds.attacks} attacks, ${finds.lost} lost, ${finds.wrong} wrong, ${seconds(from)} s`,
      );
      sum.attacks += finds.attacks;
      sum.lost += finds.lost;
      sum.wrong += finds.wrong;
    }
  } finally {
    fold.stop();
    throwAway(clean);
    await served.stop();
  }
  say(`seed ${asked.seed}, ${seconds(begun)} s`);
  say(`${sum.attacks} attacks, ${sum.lost} lost, ${sum.wrong} wrong`);
  return sum.attacks > 0 && sum.lost === 0 && sum.wrong === 0 ? 0 : 1;
}

const seconds = (from: number) => Math.round((Date.now() - from) / 1000);

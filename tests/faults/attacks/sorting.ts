import { takeDoor } from '../door.ts';
import { type Attack, type Ground, inLanes, rest } from '../ground.ts';
import { judge } from '../judge.ts';
import { copyOf, cutOff, openApp, quietPage, switchOn, throwAway } from '../phones.ts';
import { readStored } from '../stored.ts';
import { nothingFound, together } from '../tally.ts';
import { type Filled, filledPhone } from './filled.ts';
import { ageRows, notedVersion } from './oldRows.ts';

const KILLS_EACH = 12;
const ORDERS = 700;

/** How long opening takes when the rows must be sorted anew, ms. */
async function sortingMs({ served }: Ground, filled: Filled): Promise<number> {
  const profile = copyOf(filled.profile);
  const phone = await switchOn(served.origin, profile);
  await quietPage(phone.page, served.origin);
  await ageRows(phone.page, await readStored(phone.page));
  const from = Date.now();
  await openApp(phone.page, served.origin);
  await takeDoor(phone.page);
  const ms = Date.now() - from;
  await cutOff(phone);
  throwAway(profile);
  return ms;
}

async function onePhone(at: number, kills: number, spanMs: number, filled: Filled, ground: Ground) {
  const { served, fold, finds } = ground;
  const dice = ground.dice.named(`phone ${at}`);
  const profile = copyOf(filled.profile);
  try {
    let current: number | undefined;
    for (let kill = 0; kill <= kills; kill += 1) {
      const phone = await switchOn(served.origin, profile);
      await quietPage(phone.page, served.origin);
      const stored = await readStored(phone.page);
      current ??= notedVersion(stored);
      const sorted = stored.there && notedVersion(stored) === current;
      if (kill > 0) {
        // Rows that the store does not call current may be anything; lines may not.
        const found = sorted ? await judge(stored, filled.kept, fold) : filled.kept.check(stored);
        finds.attacked(`phone ${at}, kill ${kill}${sorted ? ', sorted' : ''}`, found);
        if (found.lost.length + found.wrong.length > 0) return await cutOff(phone);
      }
      if (kill === kills || ground.over()) {
        await openApp(phone.page, served.origin);
        const said = nothingFound();
        const state = await takeDoor(phone.page);
        if (state !== 'open') said.wrong.push(`after the kills the store is ${state}`);
        const after = await readStored(phone.page);
        finds.attacked(`phone ${at}, opened`, together(said, await judge(after, filled.kept, fold)));
        return await cutOff(phone);
      }
      if (sorted) await ageRows(phone.page, stored);
      await phone.page.goto(`${served.origin}/#/home`, { waitUntil: 'commit' });
      await rest(dice.whole(0, spanMs));
      await cutOff(phone);
    }
  } finally {
    throwAway(profile);
  }
}

export const sorting: Attack = {
  name: 'sorting',
  about: 'the browser is killed while the rows are sorted anew after an update',
  counted: true,
  async run(ground) {
    const filled = await filledPhone(ground, ORDERS);
    try {
      const spanMs = await sortingMs(ground, filled);
      ground.finds.say(`sorting ${filled.kept.size} entries anew and opening takes ${spanMs} ms`);
      const all = ground.times(48);
      await inLanes(Math.ceil(all / KILLS_EACH), ground, (at) =>
        onePhone(at, Math.min(KILLS_EACH, all - at * KILLS_EACH), spanMs, filled, ground),
      );
    } finally {
      throwAway(filled.profile);
    }
  },
};

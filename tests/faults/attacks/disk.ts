import type { Page } from 'playwright-core';
import { v7 } from 'uuid';
import type { Acknowledged } from '../acknowledged.ts';
import type { Dice } from '../dice.ts';
import { give, listen, type Order, takeDoor } from '../door.ts';
import { type Attack, type Ground, inLanes } from '../ground.ts';
import { judge } from '../judge.ts';
import { knownFrom, word } from '../orders.ts';
import { copyOf, cutOff, openApp, type Phone, switchOn, throwAway } from '../phones.ts';
import { readStored } from '../stored.ts';
import { nothingFound, together } from '../tally.ts';
import { wholesOf } from '../wholes.ts';
import { type Filled, filledPhone, fillStore } from './filled.ts';

/** A phone whose store has so much room left from its start on; the browser asks for the room as the store is opened. */
async function roomFor(
  phone: Phone,
  origin: string,
  bytes: number,
): Promise<(bytes?: number) => Promise<void>> {
  const session = await phone.context.newCDPSession(phone.page);
  const { usage } = await session.send('Storage.getUsageAndQuota', { origin });
  const set = async (more?: number) => {
    const quotaSize = more === undefined ? {} : { quotaSize: Math.max(1, usage + more) };
    await session.send('Storage.overrideQuotaForOrigin', { origin, ...quotaSize });
  };
  await set(bytes);
  return set;
}

const noteOrder = (bikeId: string, bytes: number): Order => {
  const photoId = v7();
  const command = { type: 'add-note', bikeId, words: word('Note'), photoIds: [photoId] };
  return { command, photos: [{ photoId, bytes }] };
};

/** Notes with photos, until not even a small one fits. @returns why those that failed did */
async function fillDisk(page: Page, dice: Dice, bikeId: string, kept: Acknowledged): Promise<Set<string>> {
  const whys = new Set<string>();
  for (const mostBytes of [200_000, 40_000, 8000, 1000]) {
    let full = false;
    for (let round = 0; round < 40 && !full; round += 1) {
      const orders = Array.from({ length: 6 }, () => noteOrder(bikeId, dice.whole(mostBytes / 4, mostBytes)));
      for (const order of orders) for (const whole of wholesOf(order)) kept.whole(whole);
      for (const answer of await give(page, orders)) {
        if (answer.is !== 'failed') continue;
        full = true;
        whys.add(answer.why.split(':')[0] ?? '');
      }
    }
  }
  return whys;
}

/** A note typed by hand into a store without room: said, kept on the form, and in the journal once there is room. */
async function typeIntoFull(page: Page, bikeId: string, kept: Acknowledged, giveRoom: () => Promise<void>) {
  const said = nothingFound();
  const words = `${word('Typed while the disk was full')} ${'and much more '.repeat(100)}`.trim();
  await page.evaluate((to) => {
    location.hash = to;
  }, `#/bike/${bikeId}`);
  await page.getByRole('button', { name: 'Note or photo' }).click();
  const sheet = page.getByRole('dialog');
  await sheet.getByRole('textbox').first().fill(words);
  await sheet.getByRole('button', { name: 'Save' }).click();
  const told = await sheet
    .getByText(/storage full/)
    .first()
    .waitFor({ timeout: 20_000 })
    .then(
      () => true,
      () => false,
    );
  const there = (await readStored(page)).lines.some(({ entry }) => entry.words === words);
  if (!told) {
    said.wrong.push(there ? 'the disk was not full for a typed note' : 'a full disk is not said on the form');
    return said;
  }
  if (there) said.wrong.push('refused on the form, and in the journal all the same');
  if ((await sheet.getByRole('textbox').first().inputValue()) !== words)
    said.lost.push('what was typed is gone from the form');
  await giveRoom();
  await sheet.getByRole('button', { name: 'Save' }).click();
  await sheet.waitFor({ state: 'detached' });
  kept.promise({ type: 'note-added', words });
  return said;
}

async function oneRound(at: number, filled: Filled, ground: Ground): Promise<void> {
  const { served, fold, finds } = ground;
  const dice = ground.dice.named(`round ${at}`);
  const profile = copyOf(filled.profile);
  const kept = filled.kept.copy();
  const phone = await switchOn(served.origin, profile);
  const { page } = phone;
  try {
    const room = await roomFor(phone, served.origin, dice.whole(1000, 900_000));
    await listen(phone.context, (entries) => kept.entries(entries));
    await openApp(page, served.origin);
    await takeDoor(page);
    const { bikes } = knownFrom(await readStored(page));
    const bikeId = String(dice.one(bikes)['bikeId']);
    const whys = await fillDisk(page, dice, bikeId, kept);
    const said = nothingFound();
    if (whys.size === 0) said.wrong.push('the disk was never full: the attack proves nothing');
    for (const why of whys)
      if (why !== 'QuotaExceededError') said.wrong.push(`a full disk broke a command off as ${why}`);
    await room(-1000);
    const typed = await typeIntoFull(page, bikeId, kept, room);
    await fillStore(page, dice, 10, kept);
    finds.attacked(`round ${at}`, together(said, typed, await judge(await readStored(page), kept, fold)));
  } finally {
    await cutOff(phone);
    throwAway(profile);
  }
}

export const disk: Attack = {
  name: 'disk',
  about: 'the disk is full: what does not fit is refused whole, and said; what is typed stays',
  counted: true,
  async run(ground) {
    const filled = await filledPhone(ground, 30);
    await inLanes(ground.times(8), ground, (at) => oneRound(at, filled, ground));
    throwAway(filled.profile);
  },
};

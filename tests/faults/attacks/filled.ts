import type { Page } from 'playwright-core';
import { Acknowledged } from '../acknowledged.ts';
import type { Dice } from '../dice.ts';
import { give, listen, type Order, takeDoor } from '../door.ts';
import type { Ground } from '../ground.ts';
import { knownFrom, randomOrder, smallBike } from '../orders.ts';
import { copyOf, openApp, switchOn } from '../phones.ts';
import { readStored } from '../stored.ts';
import { wholesOf } from '../wholes.ts';

/** A phone that is switched off, and what it acknowledged. */
export interface Filled {
  profile: string;
  kept: Acknowledged;
}

/** Writes some small bikes and random work on them through the page's own door. */
export async function fillStore(page: Page, dice: Dice, orders: number, kept: Acknowledged): Promise<void> {
  const bikes = [1, 2, 3].flatMap((joints) => smallBike(joints)).map((command): Order => ({ command }));
  await giveAll(page, bikes, kept);
  for (let given = 0; given < orders; given += 50) {
    const known = knownFrom(await readStored(page));
    const some = Array.from({ length: Math.min(50, orders - given) }, () => randomOrder(dice, known));
    await giveAll(page, some, kept);
  }
}

async function giveAll(page: Page, orders: Order[], kept: Acknowledged): Promise<void> {
  for (const order of orders) for (const whole of wholesOf(order)) kept.whole(whole);
  await give(page, orders);
}

/** A phone with so many orders carried out, closed in good order. */
export async function filledPhone({ served, clean, dice }: Ground, orders: number): Promise<Filled> {
  const profile = copyOf(clean);
  const kept = new Acknowledged();
  const phone = await switchOn(served.origin, profile);
  await listen(phone.context, (entries) => kept.entries(entries));
  await openApp(phone.page, served.origin);
  await takeDoor(phone.page);
  await fillStore(phone.page, dice.named('filling'), orders, kept);
  await phone.close();
  return { profile, kept };
}

import { v7 } from 'uuid';
import { Acknowledged } from '../acknowledged.ts';
import { give, listen, type Order, takeDoor } from '../door.ts';
import { type Attack, type Ground, inLanes } from '../ground.ts';
import { judge } from '../judge.ts';
import { knownFrom, word } from '../orders.ts';
import { copyOf, cutOff, openApp, switchOn, throwAway } from '../phones.ts';
import { readStored } from '../stored.ts';
import { nothingFound, together } from '../tally.ts';
import { wholesOf } from '../wholes.ts';
import { fillStore } from './filled.ts';

async function oneRound(at: number, ground: Ground): Promise<void> {
  const { served, clean, fold, finds } = ground;
  const dice = ground.dice.named(`round ${at}`);
  const profile = copyOf(clean);
  const kept = new Acknowledged();
  const phone = await switchOn(served.origin, profile);
  const { page } = phone;
  const said = nothingFound();
  try {
    await listen(phone.context, (entries) => kept.entries(entries));
    await openApp(page, served.origin);
    await takeDoor(page);
    await fillStore(page, dice, 20, kept);
    const { bikes } = knownFrom(await readStored(page));
    const bikeId = String(dice.one(bikes)['bikeId']);
    const session = await phone.context.newCDPSession(page);
    const { origin } = served;
    const room = (bytes: number | undefined) =>
      session.send('Storage.overrideQuotaForOrigin', {
        origin,
        ...(bytes === undefined ? {} : { quotaSize: bytes }),
      });
    const { usage } = await session.send('Storage.getUsageAndQuota', { origin });

    // Room for a few photos, then for none: each note is there with its photo, or not at all.
    await room(usage + dice.whole(1000, 400_000));
    const orders = Array.from({ length: 12 }, (): Order => {
      const photoId = v7();
      const command = { type: 'add-note', bikeId, words: word('Note'), photoIds: [photoId] };
      return { command, photos: [{ photoId, bytes: dice.whole(20_000, 200_000) }] };
    });
    for (const order of orders) for (const whole of wholesOf(order)) kept.whole(whole);
    const answers = await give(page, orders, 20);
    const failed = answers.flatMap((answer) => (answer.is === 'failed' ? [answer.why] : []));
    if (failed.length === 0) said.wrong.push('the disk was never full: the attack proves nothing');
    for (const why of new Set(failed)) {
      if (!why.startsWith('QuotaExceededError')) said.wrong.push(`a full disk broke a command off as ${why}`);
    }

    // By hand: the sentence is shown, the words stay, and once there is room they go in.
    await room(Math.round(usage / 2));
    const words = word('Typed while the disk was full');
    await page.goto(`${origin}/#/bike/${bikeId}`);
    await page.getByRole('button', { name: 'Note or photo' }).click();
    const sheet = page.getByRole('dialog');
    await sheet.getByRole('textbox').first().fill(words);
    await sheet.getByRole('button', { name: 'Write it down' }).click();
    const told = await sheet
      .getByText(/no room left/)
      .first()
      .waitFor({ timeout: 15_000 })
      .then(
        () => true,
        () => false,
      );
    if (!told) said.wrong.push('a full disk is not said on the form');
    else if ((await sheet.getByRole('textbox').first().inputValue()) !== words)
      said.lost.push('what was typed is gone from the form');
    const meanwhile = await readStored(page);
    if (meanwhile.lines.some(({ entry }) => entry.words === words))
      said.wrong.push('refused on the form, and in the journal all the same');
    await room(undefined);
    if (told) {
      await sheet.getByRole('button', { name: 'Write it down' }).click();
      await sheet.waitFor({ state: 'detached' });
      kept.promise({ type: 'note-added', words });
    }
    await fillStore(page, dice, 10, kept);
    const found = await judge(await readStored(page), kept, fold);
    finds.attacked(`round ${at}`, together(said, found));
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
    await inLanes(ground.times(8), (at) => oneRound(at, ground));
  },
};

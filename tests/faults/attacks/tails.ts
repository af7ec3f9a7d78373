import { readdirSync, statSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { Acknowledged } from '../acknowledged.ts';
import { give, listen, takeDoor } from '../door.ts';
import { type Attack, type Ground, inLanes, rest } from '../ground.ts';
import { knownFrom, partOrder, randomOrder, smallBike } from '../orders.ts';
import { copyOf, cutOff, type Phone, switchOn, throwAway } from '../phones.ts';
import { readStored } from '../stored.ts';
import { typeAndLeave } from './handWork.ts';

/** The log into which the browser appends what it was given last. */
function logOf(profile: string): string {
  const folder = join(profile, 'Default', 'IndexedDB');
  const store = readdirSync(folder).find((name) => name.endsWith('.indexeddb.leveldb'));
  const logs = store ? readdirSync(join(folder, store)).filter((name) => name.endsWith('.log')) : [];
  const last = logs.sort().at(-1);
  if (!store || !last) throw new Error('the browser keeps no log where it is looked for');
  return join(folder, store, last);
}

/** By then the second copy has followed: within a second. */
const COPIED_MS = 1000;

/** Words of the first screen that only stand there while nothing was ever written down. */
const GREETING = 'made from mixed parts';

/** What a start shows of a logbook that was acknowledged. */
interface Seen {
  /** Acknowledged entries that are not in the journal. */
  missing: number;
  journal: number;
  /** The first screen reads as on the first day. */
  greeted: boolean;
}

async function look(phone: Phone, origin: string, kept: Acknowledged): Promise<Seen> {
  await phone.page.goto(`${origin}/#/home`);
  await phone.page.getByRole('heading', { level: 1 }).first().waitFor();
  await rest(300);
  const stored = await readStored(phone.page);
  const { lost } = kept.check(stored);
  const greeted = (await phone.page.getByText(GREETING).count()) > 0;
  return { missing: lost.length, journal: stored.lines.length, greeted };
}

/** How a start counts, in the order from good to bad. */
function verdictOf({ missing, journal, greeted }: Seen): string {
  if (missing === 0) return 'all there';
  if (journal === 0 && greeted) return 'everything gone, greeted as new';
  if (journal === 0) return 'everything gone, and said';
  return 'some gone';
}

/** Brings back by the screens whatever the second copy holds and the store does not. */
async function bringBack(phone: Phone, origin: string): Promise<void> {
  const { page } = phone;
  await page.goto(`${origin}/#/home`);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  const restore = page.getByRole('button', { name: 'Restore the logbook' });
  const check = page.getByRole('button', { name: 'Check now' });
  // Where nothing of the logbook is left, the first screen itself offers it.
  if ((await readStored(page)).lines.length === 0) {
    await restore.click();
    await restore.waitFor({ state: 'detached' });
    return;
  }
  await page.goto(`${origin}/#/check`);
  await check.click();
  const wrong = page.getByText('Something is wrong');
  await page.getByText('Nothing wrong').or(wrong).first().waitFor();
  const fromCopy = page.getByRole('button', { name: 'Restore from the second copy' });
  if ((await fromCopy.count()) === 0) return;
  await fromCopy.click();
  await page.getByText('brought back').waitFor();
}

async function oneCut(at: number, ground: Ground, sums: Map<string, number>): Promise<void> {
  const { served } = ground;
  const dice = ground.dice.named(`cut ${at}`);
  const profile = copyOf(ground.clean);
  const kept = new Acknowledged();
  const open = async () => {
    const phone = await switchOn(served.origin, profile);
    await listen(phone.context, (entries) => kept.entries(entries));
    return phone;
  };
  try {
    const phone = await open();
    await phone.page.goto(`${served.origin}/#/home`);
    await phone.page.getByRole('heading', { level: 1 }).first().waitFor();
    await takeDoor(phone.page);
    await give(
      phone.page,
      smallBike(dice.whole(1, 3)).map((command) => ({ command })),
    );
    const known = knownFrom(await readStored(phone.page));
    const orders = Array.from({ length: dice.whole(5, 40) }, () => randomOrder(dice, known));
    await give(phone.page, orders, 5);
    await rest(COPIED_MS);
    const flushed = statSync(logOf(profile)).size;
    await typeAndLeave(phone.page, dice);
    await rest(dice.whole(0, 300));
    await cutOff(phone);
    const log = logOf(profile);
    const { size } = statSync(log);
    const bytes = dice.whole(1, 700);
    truncateSync(log, Math.max(0, size - bytes));
    const where = size - bytes >= flushed ? 'behind what was flushed' : 'into what was flushed';

    const first = await open();
    const afterFirst = await look(first, served.origin, kept);
    if (afterFirst.journal > 0) await takeDoor(first.page);
    // What is taken as saved from now on must be there at the next start as well.
    const answers = afterFirst.journal > 0 ? await give(first.page, [{ command: partOrder(undefined) }]) : [];
    await rest(COPIED_MS);
    await cutOff(first);

    const second = await open();
    const afterSecond = await look(second, served.origin, kept);
    await bringBack(second, served.origin);
    const { lost, wrong } = kept.check(await readStored(second.page));
    await cutOff(second);
    for (const [start, { greeted }] of [afterFirst, afterSecond].entries())
      if (greeted) wrong.push(`start ${start + 1} greeted as new, with ${kept.size} acknowledged`);
    const added = answers.some(({ is }) => is === 'done') ? 'one more taken' : 'none taken';
    const line = `cut ${where}: first start ${verdictOf(afterFirst)}, ${added}, second start ${verdictOf(afterSecond)}`;
    sums.set(line, (sums.get(line) ?? 0) + 1);
    ground.finds.say(
      `${at}: ${bytes} of ${size} bytes (${flushed} flushed), missing ${afterFirst.missing} then ${afterSecond.missing} of ${kept.size}; ${line}`,
    );
    ground.finds.attacked(`cut ${at}`, { lost, wrong });
  } finally {
    throwAway(profile);
  }
}

/**
 * A log whose end is torn, as by a battery that dies while a note is typed: the browser may throw the whole store away
 * at either start. Nothing that was acknowledged a second before may be lost for good, and neither start may greet.
 */
export const tails: Attack = {
  name: 'tails',
  about:
    'the log of the store is cut back by 1 to 700 bytes after a kill, the app is started twice, and what the second copy holds is brought back',
  counted: true,
  async run(ground) {
    const sums = new Map<string, number>();
    await inLanes(ground.times(50), ground, (at) => oneCut(at, ground, sums));
    for (const [line, times] of [...sums].toSorted(([a], [b]) => (a < b ? -1 : 1))) {
      ground.finds.say(`${times} times: ${line}`);
    }
  },
};

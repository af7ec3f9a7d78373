import type { Page } from 'playwright-core';
import { Acknowledged } from '../acknowledged.ts';
import { give, listen, takeDoor } from '../door.ts';
import type { Ground } from '../ground.ts';
import { judge } from '../judge.ts';
import { smallBike } from '../orders.ts';
import { copyOf, cutOff, openApp, quietPage, switchOn, throwAway } from '../phones.ts';
import { changeStored, type RawChange, readStored, type Stored, type StoredRow } from '../stored.ts';
import { wholesOf } from '../wholes.ts';

type Line = Stored['lines'][number];

interface Plant {
  name: string;
  expects: 'lost' | 'wrong';
  change(stored: Stored): RawChange[];
}

function lineOf(stored: Stored, type: string): Line {
  const line = stored.lines.find(({ entry }) => entry.type === type);
  if (!line) throw new Error(`no ${type} to plant a fault in`);
  return line;
}

function rowOf(stored: Stored, is: string): StoredRow {
  const row = stored.rows.find((one) => one.is === is);
  if (!row) throw new Error(`no ${is} row to plant a fault in`);
  return row;
}

/** Faults a product could have, each put into a sound store by hand. */
const PLANTS: readonly Plant[] = [
  {
    name: 'a line of the journal is gone',
    expects: 'lost',
    change: (stored) => [{ store: 'journal', remove: lineOf(stored, 'torque-applied') }],
  },
  {
    name: 'a line says something else',
    expects: 'lost',
    change: (stored) => {
      const line = lineOf(stored, 'torque-applied');
      const applied = { ...line.entry.applied, value: 1.5 };
      return [{ store: 'journal', put: { ...line, entry: { ...line.entry, applied } } }];
    },
  },
  {
    name: 'a count of a bike is one too many',
    expects: 'wrong',
    change: (stored) => {
      const row = rowOf(stored, 'bike');
      return [{ store: 'views', put: { ...row, stepsDone: Number(row['stepsDone']) + 1 } }];
    },
  },
  {
    name: 'a joint shows another figure',
    expects: 'wrong',
    change: (stored) => {
      const row = rowOf(stored, 'joint');
      const applied = row['applied'] as { applied: object };
      return [
        {
          store: 'views',
          put: { ...row, applied: { ...applied, applied: { ...applied.applied, value: 9.5 } } },
        },
      ];
    },
  },
  {
    name: 'a row is gone',
    expects: 'wrong',
    change: (stored) => [{ store: 'views', remove: rowOf(stored, 'part') }],
  },
  {
    name: 'a row comes from nothing',
    expects: 'wrong',
    change: (stored) => [
      { store: 'views', put: { ...rowOf(stored, 'part'), key: 'part/none', partId: 'none' } },
    ],
  },
  {
    name: 'half of a plan is missing, rows and all',
    expects: 'wrong',
    change: (stored) => {
      const line = stored.lines.find(
        ({ entry }) => entry.type === 'step-added' && entry.kind === 'fit',
      ) as Line;
      return [
        { store: 'journal', remove: line },
        { store: 'views', remove: `step/${line.entry.stepId}` },
      ];
    },
  },
  // Last: the bytes of a photo cannot be put back.
  {
    name: 'a photo is gone',
    expects: 'wrong',
    change: ({ photoIds }) => [{ store: 'photos', remove: photoIds[0] ?? '' }],
  },
];

/** Undoes a planted fault from what was read before it. */
async function putBack(page: Page, { lines, rows }: Stored, changes: readonly RawChange[]): Promise<void> {
  const back = changes.flatMap((change): RawChange[] => {
    if (change.store === 'journal') return lines.map((put) => ({ store: 'journal', put }));
    if (change.store !== 'views') return [];
    const planted: RawChange[] =
      'put' in change && !rows.some(({ key }) => key === (change.put as StoredRow).key)
        ? [{ store: 'views', remove: change.put }]
        : [];
    return [...planted, ...rows.map((put): RawChange => ({ store: 'views', put }))];
  });
  await changeStored(page, back);
}

/**
 * Plants faults in a sound store and sees that each is reported: a harness that finds nothing must have been able
 * to find something.
 * @returns the exit code
 */
export async function selfTest({ served, fold, clean }: Ground): Promise<number> {
  const profile = copyOf(clean);
  const kept = new Acknowledged();
  let missed = 0;
  try {
    const phone = await switchOn(served.origin, profile);
    const { page } = phone;
    await listen(phone.context, (entries) => kept.entries(entries));
    await openApp(page, served.origin);
    await takeDoor(page);
    const commands = smallBike(2);
    const jointId = String(commands.find(({ type }) => type === 'make-joint')?.['jointId']);
    const bikeId = String(commands[0]?.['bikeId']);
    const applied = { value: 5, unit: 'N.m', typed: '5' };
    const photoId = crypto.randomUUID();
    const orders = [
      ...commands.map((command) => ({ command })),
      { command: { type: 'apply-torque', jointId, applied, entered: 'tap', bolts: 1, passes: 1 } },
      {
        command: { type: 'add-note', bikeId, words: 'With a photo', photoIds: [photoId] },
        photos: [{ photoId, bytes: 500 }],
      },
    ];
    for (const order of orders) for (const whole of wholesOf(order)) kept.whole(whole);
    const answers = await give(page, orders);
    const bad = answers.filter(({ is }) => is !== 'done');
    if (bad.length > 0) throw new Error(`the sound store could not be made: ${JSON.stringify(bad)}`);
    await quietPage(page, served.origin);
    const sound = await readStored(page);
    const before = await judge(sound, kept, fold);
    const quiet = before.lost.length + before.wrong.length === 0;
    console.log(
      `${quiet ? 'quiet ' : 'LOUD  '}  a sound store ${[...before.lost, ...before.wrong].join('; ')}`,
    );
    if (!quiet) missed += 1;
    for (const plant of PLANTS) {
      const change = plant.change(sound);
      const photo = await changeStored(page, change).then(() => readStored(page));
      const found = await judge(photo, kept, fold);
      const noticed = found[plant.expects].length > 0;
      console.log(`${noticed ? 'noticed' : 'MISSED '} ${plant.name}: ${found[plant.expects][0] ?? ''}`);
      if (!noticed) missed += 1;
      await putBack(page, sound, change);
    }
    await cutOff(phone);
  } finally {
    throwAway(profile);
  }
  console.log(`${PLANTS.length} planted, ${missed} missed`);
  return missed === 0 ? 0 : 1;
}

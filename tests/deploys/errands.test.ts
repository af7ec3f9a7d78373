import { expect, test } from 'vitest';
import { eachOnItsOwnPhone, phone, served } from '../browser/ownPhone.ts';
import { firstVisit } from '../browser/product.ts';

eachOnItsOwnPhone();

/** A hand that counts: taps, a choice in a list as two of them, and the characters typed. */
function countingHand() {
  const { page } = phone;
  const cost = { taps: 0, characters: 0 };
  return {
    cost,
    async tap(name: string | RegExp) {
      cost.taps += 1;
      await page
        .getByRole('button', { name, exact: typeof name === 'string' })
        .first()
        .click();
    },
    async open(name: string | RegExp) {
      cost.taps += 1;
      await page
        .getByRole('link', { name, exact: typeof name === 'string' })
        .or(page.getByRole('button', { name, exact: typeof name === 'string' }))
        .first()
        .click();
    },
    async choose(label: string, option: string) {
      cost.taps += 2;
      await page.getByLabel(label, { exact: true }).selectOption({ label: option });
    },
    /** @param focused the field has the focus already: typing costs no tap */
    async type(label: string, text: string, focused: 'focused' | 'tapped' = 'tapped') {
      if (focused === 'tapped') cost.taps += 1;
      cost.characters += text.length;
      await page.getByLabel(label, { exact: true }).first().fill(text);
    },
  };
}

type Hand = ReturnType<typeof countingHand>;

/** What a newcomer wants to log from the first screen, and the most it may cost. */
const errands: readonly {
  what: string;
  most: { taps: number; characters: number };
  walk(hand: Hand): Promise<void>;
  said: RegExp;
}[] = [
  {
    what: 'a torque on the stem of a new bike',
    most: { taps: 7, characters: 10 },
    async walk(hand) {
      await hand.open('Log');
      await hand.open('Torque');
      await hand.choose('Bike', 'New bike');
      await hand.type('Name of the bike', 'Heron', 'focused');
      await hand.type('Joint', 'stem');
      await hand.type('Torque applied', '5');
      await hand.tap('Log it');
    },
    said: /5 N·m/,
  },
  {
    what: 'threadlocker on the rotor bolts, from the bike',
    most: { taps: 5, characters: 0 },
    async walk(hand) {
      await hand.open('Log');
      await hand.open('Threadlocker');
      await hand.tap('Rotor on front hub');
      await hand.tap(/^Medium strength, often blue/);
      await hand.tap('Log it');
    },
    said: /ride after/,
  },
  {
    what: 'a tyre with sealant, a look again in 20 min, from the bike',
    most: { taps: 5, characters: 0 },
    async walk(hand) {
      await hand.open('Log');
      await hand.open('Tyre');
      await hand.tap('Rear tyre on rim');
      await hand.tap('20 min');
      await hand.tap('Log it');
    },
    said: /Rear tyre on rim: logged/,
  },
  {
    what: 'a joint that came loose: do not ride, from the bike',
    most: { taps: 4, characters: 0 },
    async walk(hand) {
      await hand.open('Log');
      await hand.open('Problem');
      await hand.tap('Came loose');
      await hand.tap('Log: do not ride');
    },
    said: /do not ride/i,
  },
];

for (const [width, height] of [
  [390, 664],
  [320, 568],
] as const)
  test(`errands of a newcomer cost no more than their bars, on ${width} × ${height}`, async () => {
    const { page } = phone;
    await page.setViewportSize({ width, height });
    await firstVisit(phone, served.origin);
    await page.getByRole('button', { name: /Look at the demo/ }).click();
    await page.getByText('Magpie (demo)').waitFor();
    await page.getByText(/Loading the demo/).waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Dismiss' }).click();
    const table = [];
    for (const { what, most, walk, said } of errands) {
      const start = what.endsWith('from the bike') ? '#/bike/demo-magpie' : '#/home';
      await page.goto(`${served.origin}/${start}`);
      await page.getByRole('heading', { level: 1 }).waitFor();
      const hand = countingHand();
      await walk(hand);
      await page.getByRole('status').filter({ hasText: said }).first().waitFor();
      table.push({
        what,
        ...hand.cost,
        within: hand.cost.taps <= most.taps && hand.cost.characters <= most.characters,
      });
    }
    console.table(table);
    expect(table.filter(({ within }) => !within)).toEqual([]);
  });

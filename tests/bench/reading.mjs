import { median, result } from './result.mjs';

const ROUNDS = 5;
/** Times the bare reading: what grows faster than the history passes it. */
const LIMIT = 4;

/**
 * What reads a whole long history: the as-built sheet, and words looked for in it. Both on a CPU four times slower,
 * held against a bare reading of the same lines from the same store, in the same page.
 * @param bikeId a bike with a long history
 */
export async function benchReading(page, bikeId, entries) {
  const session = await page.context().newCDPSession(page);
  const away = async () => {
    await page.evaluate(() => {
      location.hash = '#/shelf';
    });
    await page.waitForFunction(() => document.title.startsWith('Shelf'));
  };
  const bare = () =>
    page.evaluate(async (place) => {
      const from = performance.now();
      await new Promise((done, failed) => {
        const opening = indexedDB.open('pinchbolt');
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const index = opening.result.transaction('journal').objectStore('journal').index('places');
          const asked = index.getAll(IDBKeyRange.bound(`${place}:`, `${place};`, false, true));
          asked.onsuccess = () => {
            opening.result.close();
            done(asked.result);
          };
        };
      });
      return performance.now() - from;
    }, `b:${bikeId}`);
  const sheet = () =>
    page.evaluate(
      (hash) =>
        new Promise((done) => {
          const from = performance.now();
          location.hash = hash;
          const look = () =>
            document.querySelector('.paper-block')
              ? requestAnimationFrame(() => done(performance.now() - from))
              : setTimeout(look, 0);
          look();
        }),
      `#/sheet/${bikeId}`,
    );
  const find = async () => {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#/history/b:${bikeId}`);
    const field = page.getByLabel('Find words');
    await field.waitFor();
    await field.fill('looked 27');
    const from = Date.now();
    await page.getByText(/found in [\d,. ]+ entries/).waitFor({ timeout: 120_000 });
    return Date.now() - from;
  };
  const took = { bare: [], sheet: [], find: [] };
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  for (let at = 0; at <= ROUNDS; at += 1) {
    const round = { bare: await bare() };
    await away();
    round.sheet = await sheet();
    await away();
    round.find = await find();
    await away();
    if (at > 0) for (const name of Object.keys(took)) took[name].push(round[name]);
  }
  await session.detach();
  const floor = median(took.bare);
  return [
    result(
      `as-built sheet of a bike with ${entries} entries, 4x slower CPU`,
      median(took.sheet),
      floor,
      'ms',
      LIMIT,
    ),
    result(`words looked for in ${entries} entries, 4x slower CPU`, median(took.find), floor, 'ms', LIMIT),
  ];
}

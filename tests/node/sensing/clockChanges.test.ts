import { describe, expect, test } from 'vitest';
import { clockChanges, noChanges, noticedJump, type SharedPlace } from '../../../src/sensing/clockChanges.ts';

const HOUR_MS = 3_600_000;

/** One phone: what its pages share, and one piece of work at a time over all of them. */
function phone() {
  let kept: string | null = null;
  let last: Promise<unknown> = Promise.resolve();
  const place: SharedPlace = {
    read: () => kept,
    write: (text) => {
      kept = text;
    },
    alone(work) {
      const done = last.then(work);
      last = done.catch(() => {});
      return done;
    },
  };
  return { page: () => clockChanges(place) };
}

test('example of the docstring', () =>
  expect(noticedJump(noChanges, { byMs: HOUR_MS, afterMs: 0 }, 10).question).toEqual({
    byMs: HOUR_MS,
    changeId: 'clock 3600 at 10',
  }));

describe('[W2] two pages that notice one change', () => {
  const jump = (afterMs: number, byMs = HOUR_MS) => ({ byMs, afterMs });

  test('hand over the same id, and only one of them answers', async () => {
    const { page } = phone();
    const [one, other] = [page(), page()];
    const first = await one.notice(jump(5000), 9000);
    const second = await other.notice(jump(1000, HOUR_MS + 40), 14_000);
    expect(second).toEqual(first);
    let moved = 0;
    const move = async () => {
      await Promise.resolve();
      moved += 1;
    };
    const changeId = first?.changeId ?? '';
    expect(await Promise.all([one.answer(changeId, move), other.answer(changeId, move)])).toEqual([
      true,
      false,
    ]);
    expect(moved).toBe(1);
    expect(other.open()).toBeUndefined();
  });

  test('one that wakes long after the answer does not ask again', async () => {
    const { page } = phone();
    const question = await page().notice(jump(5000, -HOUR_MS), 9000);
    await page().answer(question?.changeId ?? '', async () => {});
    expect(await page().notice(jump(4000, -HOUR_MS), 40 * HOUR_MS)).toBeUndefined();
  });
});

test('a reload before the answer finds the question again', async () => {
  const { page } = phone();
  const question = await page().notice({ byMs: -HOUR_MS, afterMs: 0 }, 5000);
  expect(page().open()).toEqual(question);
});

test('an answer that could not be written leaves the question open', async () => {
  const { page } = phone();
  const question = await page().notice({ byMs: HOUR_MS, afterMs: 0 }, 5000);
  const fails = async () => {
    throw new Error('the store is full');
  };
  await expect(page().answer(question?.changeId ?? '', fails)).rejects.toThrow('full');
  expect(page().open()).toEqual(question);
});

test('a clock put right again before the answer asks nothing; two changes are asked about as one', async () => {
  const { page } = phone();
  await page().notice({ byMs: HOUR_MS, afterMs: 0 }, HOUR_MS + 5000);
  const both = await page().notice({ byMs: HOUR_MS / 2, afterMs: HOUR_MS + 200_000 }, HOUR_MS + 300_000);
  expect(both?.byMs).toBe(1.5 * HOUR_MS);
  expect(await page().notice({ byMs: -1.5 * HOUR_MS, afterMs: 500_000 }, 600_000)).toBeUndefined();
});

test('what lies there and cannot be read counts as nothing', () => {
  const torn: SharedPlace = { read: () => '{"noticed":5', write() {}, alone: (work) => work() };
  expect(clockChanges(torn).open()).toBeUndefined();
});

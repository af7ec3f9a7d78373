import { expect, test } from 'vitest';
import { type TestOutcome, testReminder } from '../../../src/sensing/testReminder.ts';

function aPhone(how: { show: () => Promise<boolean>; rings?: boolean }) {
  let nowMs = 1000;
  let due: (() => void) | undefined;
  return {
    ways: {
      now: () => nowMs,
      ring: () => how.rings ?? true,
      show: how.show,
      after: (ms: number, then: () => void) => {
        expect(ms).toBe(60_000);
        due = then;
        return () => {
          due = undefined;
        };
      },
    },
    wakeAt: async (ms: number) => {
      nowMs = ms;
      await due?.();
    },
  };
}

test('in time, with sound and a message', async () => {
  const { ways, wakeAt } = aPhone({ show: async () => true });
  const seen: TestOutcome[] = [];
  testReminder(60_000, ways, (outcome) => seen.push(outcome));
  await wakeAt(61_000);
  expect(seen).toEqual([{ lateMs: 0, rang: true, shown: true }]);
});

test('a phone that slept comes late, and a message that fails is told as none', async () => {
  const { ways, wakeAt } = aPhone({ show: () => Promise.reject(new TypeError('denied')), rings: false });
  const seen: TestOutcome[] = [];
  testReminder(60_000, ways, (outcome) => seen.push(outcome));
  await wakeAt(361_000);
  expect(seen).toEqual([{ lateMs: 300_000, rang: false, shown: false }]);
});

test('stopped, nothing comes', async () => {
  const { ways, wakeAt } = aPhone({ show: async () => true });
  const seen: TestOutcome[] = [];
  testReminder(60_000, ways, (outcome) => seen.push(outcome))();
  await wakeAt(61_000);
  expect(seen).toEqual([]);
});

import { expect, test } from 'vitest';
import { unlockSound } from '../../../src/sensing/unlockSound.ts';

function bellThatRunsAt(tries: number) {
  const bell = {
    asked: 0,
    running: false,
    mayRing: () => bell.running,
    unlock: async () => {
      bell.asked += 1;
      bell.running = bell.asked >= tries;
      return bell.running;
    },
  };
  return bell;
}

test('a finger that goes down unlocks nothing, one that goes up does', () => {
  const page = new EventTarget();
  const bell = bellThatRunsAt(1);
  unlockSound(bell, page);
  page.dispatchEvent(new Event('pointerdown'));
  expect(bell.asked).toBe(0);
  page.dispatchEvent(new Event('pointerup'));
  expect(bell.asked).toBe(1);
});

test('it goes on asking until the sound runs, then stops asking', () => {
  const page = new EventTarget();
  const bell = bellThatRunsAt(3);
  unlockSound(bell, page);
  for (const touch of ['pointerup', 'click', 'keydown', 'click']) page.dispatchEvent(new Event(touch));
  expect(bell.asked).toBe(3);
});

test('sound that the phone took away is asked for again at the next touch', () => {
  const page = new EventTarget();
  const bell = bellThatRunsAt(1);
  const stop = unlockSound(bell, page);
  page.dispatchEvent(new Event('click'));
  bell.running = false;
  page.dispatchEvent(new Event('keydown'));
  expect(bell.asked).toBe(2);
  stop();
  bell.running = false;
  page.dispatchEvent(new Event('click'));
  expect(bell.asked).toBe(2);
});

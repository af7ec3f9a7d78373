import { describe, expect, test } from 'vitest';
import { type AwakeDevice, type AwakeState, keepAwake } from '../../../src/sensing/wakeLock.ts';

/** A phone after W3C Screen Wake Lock: hiding the page releases the lock and fires `release` on it. */
function phone({ refuses = false, lacks = false } = {}) {
  let visible = true;
  let requests = 0;
  const held = new Set<() => void>();
  const listeners = new Set<() => void>();
  const device: AwakeDevice = {
    wakeLock: lacks
      ? undefined
      : {
          async request() {
            requests++;
            if (refuses || !visible) throw new DOMException('refused', 'NotAllowedError');
            let fire = () => {};
            const free = () => {
              if (held.delete(free)) fire();
            };
            held.add(free);
            return {
              async release() {
                free();
              },
              addEventListener(_, callback) {
                fire = callback;
              },
            };
          },
        },
    isVisible: () => visible,
    onVisible(callback) {
      listeners.add(callback);
      return () => listeners.delete(callback);
    },
  };
  return {
    device,
    heldCount: () => held.size,
    requests: () => requests,
    hide() {
      visible = false;
      for (const free of [...held]) free();
    },
    show() {
      visible = true;
      for (const tell of listeners) tell();
    },
  };
}
const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('the screen is kept awake', () => {
  test('until it is released', async () => {
    const states: AwakeState[] = [];
    const { device, heldCount } = phone();
    const kept = keepAwake((state) => states.push(state), device);
    await settle();
    expect([kept.state, heldCount()]).toEqual(['held', 1]);
    await kept.release();
    expect([kept.state, heldCount()]).toEqual(['released', 0]);
    expect(states).toEqual(['held', 'released']);
  });

  test('and asked for again when the page comes back', async () => {
    const states: AwakeState[] = [];
    const { device, hide, show, heldCount } = phone();
    keepAwake((state) => states.push(state), device);
    await settle();
    hide();
    expect(states.at(-1)).toBe('lost');
    show();
    await settle();
    expect(states).toEqual(['held', 'lost', 'held']);
    expect(heldCount()).toBe(1);
  });

  test('no more after release, also when the page comes back', async () => {
    const { device, hide, show, heldCount } = phone();
    const kept = keepAwake(() => {}, device);
    await settle();
    await kept.release();
    hide();
    show();
    await settle();
    expect(heldCount()).toBe(0);
  });

  test('released before the phone has answered: nothing stays held', async () => {
    const { device, heldCount } = phone();
    const kept = keepAwake(() => {}, device);
    await kept.release();
    await settle();
    expect([kept.state, heldCount()]).toEqual(['released', 0]);
  });
});

test('a refusal is told as lost', async () => {
  const { device, show, requests } = phone({ refuses: true });
  const kept = keepAwake(() => {}, device);
  await settle();
  expect(kept.state).toBe('lost');
  show();
  await settle();
  expect(requests()).toBe(2);
});

test('a browser without the lock says so', async () => {
  const { device } = phone({ lacks: true });
  const kept = keepAwake(() => {}, device);
  await settle();
  expect(kept.state).toBe('unsupported');
  await kept.release();
  expect(kept.state).toBe('unsupported');
});

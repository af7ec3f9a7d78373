import { describe, expect, test } from 'vitest';
import { type Abilities, abilityLines, reminderLines } from '../../../src/sensing/platform.ts';

const all: Abilities = {
  installed: true,
  notifications: 'granted',
  periodicSync: 'granted',
  badge: true,
  wakeLock: true,
  vibrate: true,
  shareFiles: true,
  persisted: true,
};
const none: Abilities = {
  installed: false,
  notifications: 'absent',
  periodicSync: 'absent',
  badge: false,
  wakeLock: false,
  vibrate: false,
  shareFiles: false,
  persisted: 'unknown',
};

test('every ability has its sentence, once', () =>
  expect(
    abilityLines(all)
      .map((line) => line.name)
      .toSorted(),
  ).toEqual(Object.keys(all).toSorted()));

test('a phone that can do everything is told so, one that can do nothing too', () => {
  expect(abilityLines(all).every((line) => line.good)).toBe(true);
  expect(abilityLines(none).some((line) => line.good)).toBe(false);
});

test('no sentence serves for both can and cannot', () => {
  const can = abilityLines(all).map((line) => line.sentence);
  const cannot = abilityLines(none).map((line) => line.sentence);
  expect(new Set([...can, ...cannot]).size).toBe(can.length + cannot.length);
});

describe('a promise the browser has not given is never claimed', () => {
  test.each([false, 'unknown'] as const)('persisted %s', (persisted) =>
    expect(abilityLines({ ...all, persisted }).find((line) => line.name === 'persisted')?.good).toBe(false),
  );
  test.each(['denied', 'ask', 'absent'] as const)('notifications %s', (notifications) =>
    expect(abilityLines({ ...all, notifications }).find((line) => line.name === 'notifications')?.good).toBe(
      false,
    ),
  );
});

test('about reminders it says what this phone reported: messages, home screen, waking, number, shaking', () => {
  const names = ['notifications', 'installed', 'periodicSync', 'badge', 'vibrate'];
  expect(reminderLines(all).map(({ name, good }) => [name, good])).toEqual(names.map((name) => [name, true]));
  expect(reminderLines(none).map(({ name, good }) => [name, good])).toEqual(
    names.map((name) => [name, false]),
  );
  const sentences = [...reminderLines(all), ...reminderLines(none)].map(({ sentence }) => sentence);
  expect(new Set(sentences).size).toBe(sentences.length);
});

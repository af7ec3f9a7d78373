import { expect, test } from 'vitest';
import { declineMessages, mayAskForMessages } from '../../../src/sensing/messagesAsked.ts';

function aPlace() {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

test('asked while the phone has not answered; never again after a no', () => {
  const place = aPlace();
  expect(mayAskForMessages('default', place)).toBe(true);
  expect(mayAskForMessages('default', place)).toBe(true);
  declineMessages(place);
  expect(mayAskForMessages('default', place)).toBe(false);
});

test.each(['granted', 'denied', undefined] as const)('not asked where the phone says %s', (permission) =>
  expect(mayAskForMessages(permission, aPlace())).toBe(false),
);

test('not asked where an answer cannot be kept', () => {
  const shut = {
    getItem: () => {
      throw new Error('shut');
    },
    setItem: () => {
      throw new Error('shut');
    },
  };
  expect(mayAskForMessages('default', shut)).toBe(false);
  expect(() => declineMessages(shut)).not.toThrow();
});

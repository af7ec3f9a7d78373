import { expect, test } from 'vitest';
import { reasonOf } from '../../../src/words/reasonOf.ts';

test.each([
  [new Error('no room'), 'no room'],
  [new DOMException('private', 'SecurityError'), 'private'],
  ['a word', 'a word'],
  [undefined, 'undefined'],
])('%s is told as %s', (thrown, words) => {
  expect(reasonOf(thrown)).toBe(words);
});

import { expect, test } from 'vitest';
import { overWord, waitWords } from '../../../src/words/waitWords.ts';

test.each([
  ['seal', 'Rear bead', 'Seal: Rear bead'],
  ['cure', 'Rotor on rear hub', 'Threadlocker: Rotor on rear hub'],
  // Its own name says it already.
  ['cure', 'Threadlocker on the rotor', 'Threadlocker on the rotor'],
  ['adhesive', 'adhesive under the grips', 'adhesive under the grips'],
  ['other', 'Paint on the shim', 'Paint on the shim'],
])('%s, called %s, is told as %s', (kind, title, words) => {
  expect(waitWords(kind, title)).toBe(words);
});

test.each([
  ['cure', 'Cured'],
  ['adhesive', 'Cured'],
  // A tyre needs a look, and so does a wait of the person's own.
  ['seal', undefined],
  ['other', undefined],
])('%s, its time over, is %s', (kind, word) => {
  expect(overWord(kind)).toBe(word);
});

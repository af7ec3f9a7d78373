import { expect, test } from 'vitest';
import { completeSets } from '../../../src/fit/sets/completeSets.ts';
import { bikeSlots } from '../../../src/fit/sets/setSlots.ts';
import { buyWords, costWords, slotWords, unjudgedBrakes } from '../../../src/words/setWords.ts';
import { magpie } from '../../fixtures/magpie.ts';

const [frame, ...shelf] = magpie;
if (!frame) throw new Error('the pile is empty');

test('every place has a name of its own', () => {
  const names = bikeSlots.map(({ slot }) => slotWords(slot));
  expect(names).toContain('Rim, rear');
  expect(names).toContain('Rotor and brake caliper, front');
  expect(new Set(names).size).toBe(names.length);
});

test('the invented pile: what speaks against its set, and the end that is not judged', () => {
  const [set] = completeSets(shelf, frame).sets;
  if (!set) throw new Error('no set');
  expect(costWords(set)).toBe('1 permanent change, 5 bridges, 2 open questions');
  expect(unjudgedBrakes(set)).toEqual(['rear']);
});

test('without a caliper only that is to be bought, and the front is not called unjudged', () => {
  const { sets, toBuy } = completeSets(
    shelf.filter(({ kind }) => kind !== 'caliper'),
    frame,
  );
  expect(toBuy.map(buyWords)).toEqual(['Brake caliper, front']);
  expect(sets.map(unjudgedBrakes)).toEqual(sets.map(() => ['rear']));
});

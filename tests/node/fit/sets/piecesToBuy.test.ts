import { expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import { completeSets } from '../../../../src/fit/sets/completeSets.ts';
import { piecesToBuy } from '../../../../src/fit/sets/piecesToBuy.ts';
import { magpie } from '../../../fixtures/magpie.ts';
import { face, part } from '../../../fixtures/pileParts.ts';

const [frame, ...shelf] = magpie;
if (!frame) throw new Error('the pile is empty');
const ids = (parts: typeof shelf): string[] =>
  piecesToBuy(completeSets(parts, frame).sets.map(({ check }) => check)).map(({ id }) => id);

test('the invented pile: three shims and the adapter of the caliper have to be got for any bike of it', () => {
  expect(ids(shelf).sort()).toEqual([
    'bar-shim-31.8-26',
    'is-post-160-180',
    'seatpost-shim-27.2-25.4',
    'steerer-shim-28.6-25.4',
  ]);
});

test('a shim at hand need not be bought', () => {
  const own = part('own-shim', 'shim', [
    face('bar-centre', { diameterMm: 31.8 }),
    face('bar-clamp', { boreMm: 26 }),
  ]);
  expect(ids([...shelf, own])).not.toContain('bar-shim-31.8-26');
});

test('a second bar that needs none: one set does without the shim, so none is named', () => {
  const bar = part('wide-bar', 'bar', [
    face('bar-centre', { diameterMm: 31.8 }),
    face('grip-area', { diameterMm: 22.2 }),
  ]);
  expect(ids([...shelf, bar])).not.toContain('bar-shim-31.8-26');
});

test('two rims with wide holes want a sleeve each', () => {
  const sleeves = piecesToBuy([checkPile(magpie)]).filter(({ id }) => id === 'valve-sleeve-8-6.4');
  expect(sleeves.length).toBe(2);
  expect(piecesToBuy([])).toEqual([]);
});

import { expect, test } from 'vitest';
import { placeKeeper } from '../../../src/sensing/places.ts';

function pageAt(step: string | undefined) {
  const state = { step, depth: 0, most: 2000 };
  const keeper = placeKeeper({
    step: () => state.step,
    depth: () => state.depth,
    most: () => state.most,
    to: (depth) => {
      state.depth = depth;
    },
  });
  const scroll = (depth: number) => {
    state.depth = depth;
    keeper.moved();
  };
  const show = (next: string, most: number) => {
    Object.assign(state, { step: next, most });
    keeper.arrived();
    scroll(0);
  };
  return { state, keeper, scroll, show };
}

test('going back shows a list where it was left, as soon as it is long enough again', () => {
  const { state, keeper, scroll, show } = pageAt('list');
  scroll(900);
  show('part', 300);
  expect(keeper.settle()).toBe(true);
  expect(state.depth).toBe(0);
  show('list', 100);
  expect(keeper.settle()).toBe(false);
  keeper.moved();
  state.most = 2000;
  expect(keeper.settle()).toBe(true);
  expect(state.depth).toBe(900);
});

test('a step that was never seen begins at its top', () => {
  const { state, keeper, scroll, show } = pageAt('list');
  scroll(900);
  show('another list', 2000);
  expect(keeper.settle()).toBe(true);
  expect(state.depth).toBe(0);
});

test('a hand that scrolls on the way is left alone', () => {
  const { state, keeper, scroll, show } = pageAt('list');
  scroll(900);
  show('part', 300);
  show('list', 100);
  keeper.giveUp();
  state.most = 2000;
  expect(keeper.settle()).toBe(true);
  expect(state.depth).toBe(0);
});

test('a browser that does not tell its steps apart keeps nothing', () => {
  const { state, keeper, scroll } = pageAt(undefined);
  scroll(900);
  keeper.arrived();
  state.depth = 0;
  expect(keeper.settle()).toBe(true);
  expect(state.depth).toBe(0);
});

test('what scrolls before the next step is shown belongs to the one before', () => {
  const { state, keeper, scroll, show } = pageAt('form');
  scroll(300);
  state.step = 'saved';
  scroll(297);
  show('saved', 2000);
  expect(keeper.settle()).toBe(true);
  expect(state.depth).toBe(0);
  show('form', 2000);
  keeper.settle();
  expect(state.depth).toBe(297);
});

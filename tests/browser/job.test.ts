import { afterAll, beforeAll, expect } from 'vitest';
import { built, killed } from './job/bench.ts';
import { carriedAway, readLater } from './job/later.ts';
import { rechecked, released, sealed } from './job/riding.ts';
import { begin, end } from './job/story.ts';
import { planned, writtenDown } from './job/writing.ts';

// The whole job of one bike, by hand through the screens, as one story: each chapter goes on where the last one ended.
beforeAll(begin);
afterAll(async () => {
  expect(await end(), '[N1] no request leaves the origin').toEqual([]);
});

writtenDown();
planned();
built();
killed();
sealed();
released();
rechecked();
readLater();
carriedAway();

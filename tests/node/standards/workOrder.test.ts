import { describe, expect, test } from 'vitest';
import { jointKinds } from '../../../src/standards/jointKinds.ts';
import { jointWork } from '../../../src/standards/jointWork.ts';
import { type Worked, type WorkPair, type WorkPlace, workOrder } from '../../../src/standards/workOrder.ts';

/** Kinds of joints that stand in no pair but those of their own joint, and why. Common practice, no source. */
const anyTime: Partial<Record<WorkPlace, string>> = {
  seatpost: 'Nothing else hangs on the post while the bike is in the stand.',
  'saddle-rails': 'The saddle can be clamped on the post in the bike or beside it.',
  rack: 'A rack goes on whenever its eyes are free.',
  other: 'What it is, is not known.',
};

/** What may be done at each place; a kind of joint has its own work. */
const doings = (place: WorkPlace): Worked[] => {
  if (place === 'piece') return ['get'];
  const work = place === 'sleeve' ? undefined : jointWork[place];
  const own = [...(work?.first ?? []), ...(work?.afterwards ?? [])].map((step) => step.work);
  return ['bond', 'together', 'locker', 'torque', ...own];
};
const places: WorkPlace[] = [...jointKinds.map(({ kind }) => kind), 'sleeve', 'piece'];

/** Every pair of works that a row orders, whatever joints share; a row about one joint orders work of one kind. */
function ordered({ before, doing, after, thenDoing, within }: WorkPair): [string, string][] {
  const works = (at: readonly WorkPlace[], only: readonly Worked[] | undefined) =>
    at.flatMap((place) =>
      doings(place).flatMap((one) => ((only?.includes(one) ?? true) ? [{ place, one }] : [])),
    );
  return works(before, doing).flatMap((one) =>
    works(after, thenDoing).flatMap((other): [string, string][] =>
      within === 'joint' && one.place !== other.place
        ? []
        : [[`${one.place} ${one.one}`, `${other.place} ${other.one}`]],
    ),
  );
}

const edges = workOrder.flatMap(ordered);

/** A circle, where the pairs have one. */
function circle(): string[] {
  const next = new Map<string, string[]>();
  for (const [before, after] of edges) next.set(before, [...(next.get(before) ?? []), after]);
  const done = new Set<string>();
  const walk = (at: string, path: string[]): string[] => {
    if (path.includes(at)) return [...path.slice(path.indexOf(at)), at];
    if (done.has(at)) return [];
    for (const after of next.get(at) ?? []) {
      const found = walk(after, [...path, at]);
      if (found.length > 0) return found;
    }
    done.add(at);
    return [];
  };
  for (const at of next.keys()) {
    const found = walk(at, []);
    if (found.length > 0) return found;
  }
  return [];
}

describe('[B5] the order of work as pairs', () => {
  test('goes round in no circle', () => expect(circle()).toEqual([]));

  test.each(workOrder.map((pair) => [pair.because, pair] as const))('%s', (because, pair) => {
    expect(because).toMatch(/^[A-Z].{10,}\.$/);
    expect(pair.source).not.toBe('');
    // A row that orders nothing is a slip.
    expect(ordered(pair)).not.toEqual([]);
  });

  test('two reasons for the same two works are one too many', () => {
    const seen = new Map<string, number>();
    for (const [before, after] of edges)
      seen.set(`${before} > ${after}`, (seen.get(`${before} > ${after}`) ?? 0) + 1);
    expect([...seen].filter(([, times]) => times > 1)).toEqual([]);
  });

  test('every kind of joint is placed among the others, or says why it need not be', () => {
    const placed = new Set(
      workOrder
        .filter(({ within }) => !['joint', 'part'].includes(within))
        .flatMap((pair) => [...pair.before, ...pair.after]),
    );
    expect(jointKinds.map(({ kind }) => kind).filter((kind) => placed.has(kind) === kind in anyTime)).toEqual(
      [],
    );
  });

  test('everything that is done at a joint is placed', () => {
    const placed = new Set(edges.flat());
    const works = places.flatMap((place) => doings(place).map((doing) => `${place} ${doing}`));
    expect(works.filter((work) => !placed.has(work))).toEqual([]);
  });

  test.each([
    ['crown-race together', 'fork together'],
    ['spokes together', 'bead together'],
    ['spokes dish', 'bead together'],
    ['bead together', 'front-axle together'],
    ['rear-axle together', 'chain count'],
    ['chain slack', 'rear-axle torque'],
    ['rear-axle torque', 'caliper torque'],
    ['rotor locker', 'rotor torque'],
    ['headset play', 'stem-steerer torque'],
    ['sleeve bond', 'sleeve together'],
    ['piece get', 'stem-steerer together'],
  ])('%s comes before %s (common practice, no source)', (before, after) =>
    expect(edges).toContainEqual([before, after]),
  );
});

/** What two choices cost together: `cost[i][j]` for option i of one place and option j of the other. */
export interface PairCost {
  one: number;
  other: number;
  cost: readonly (readonly number[])[];
}

export interface Choice {
  /** Option taken at each place. */
  options: readonly number[];
  cost: number;
}

/** A cost that depends on some places, laid out flat: the last place runs fastest. */
interface Table {
  places: readonly number[];
  values: Float64Array;
}

/**
 * Every way to take one option at each place, cheapest first, as a lazy sequence.
 * Places are eliminated one by one, each leaving the least cost it adds for every choice of its neighbours; read
 * backwards these tables tell the exact rest cost of any beginning, so the walk never opens a dead end.
 * Fast where few places touch each other, as on a bicycle; a pile where all touch all would need the whole product.
 * @param singles cost of each option at each place; `Infinity` forbids it
 * @param pairs costs of two options together
 * @throws RangeError when a cost is NaN or −Infinity, a table has the wrong shape, or two places are one
 * @example [...cheapestChoices([[0, 5], [1, 0]], [])][0] //=> { options: [0, 1], cost: 0 }
 */
export function* cheapestChoices(
  singles: readonly (readonly number[])[],
  pairs: readonly PairCost[],
): Generator<Choice> {
  const sizes = singles.map(({ length }) => length);
  const sizeOf = (place: number): number => sizes[place] ?? 0;
  refuseBadCosts(singles, pairs, sizeOf);

  const chosen = new Int32Array(sizes.length);
  const indexOf = (places: readonly number[]): number =>
    places.reduce((index, place) => index * sizeOf(place) + (chosen[place] ?? 0), 0);
  const at = ({ places, values }: Table): number => values[indexOf(places)] ?? 0;

  let tables: Table[] = [
    ...singles.map((costs, place) => ({ places: [place], values: Float64Array.from(costs) })),
    ...pairs.map(({ one, other, cost }) => ({
      places: [one, other],
      values: Float64Array.from(cost.flat()),
    })),
  ];
  const buckets: { place: number; held: Table[]; least: Table }[] = [];
  const left = new Set(sizes.keys());
  while (left.size > 0) {
    const { place, around } = fewestNeighbours(left, tables);
    const held = tables.filter(({ places }) => places.includes(place));
    const least: Table = {
      places: around,
      values: new Float64Array(around.reduce((n, p) => n * sizeOf(p), 1)),
    };
    for (let index = 0; index < least.values.length; index++) {
      spread(index, around);
      let best = Number.POSITIVE_INFINITY;
      for (let option = 0; option < sizeOf(place); option++) {
        chosen[place] = option;
        best = Math.min(
          best,
          held.reduce((sum, table) => sum + at(table), 0),
        );
      }
      least.values[index] = best;
    }
    buckets.push({ place, held, least });
    tables = [...tables.filter((table) => !held.includes(table)), least];
    left.delete(place);
  }

  const total = tables.reduce((sum, table) => sum + at(table), 0);
  const queue = new Map<number, { depth: number; options: Int32Array }[]>();
  const waiting: number[] = [];
  const push = (cost: number, depth: number, options: Int32Array): void => {
    if (cost === Number.POSITIVE_INFINITY) return;
    const row = queue.get(cost);
    if (row) row.push({ depth, options });
    else {
      queue.set(cost, [{ depth, options }]);
      sift(waiting, cost);
    }
  };
  push(total, buckets.length, new Int32Array(sizes.length));
  while (waiting.length > 0) {
    const cost = waiting[0] ?? 0;
    const row = queue.get(cost) ?? [];
    const step = row.pop();
    if (!step) {
      waiting.shift();
      queue.delete(cost);
      continue;
    }
    const bucket = buckets[step.depth - 1];
    if (!bucket) {
      yield { options: [...step.options], cost };
      continue;
    }
    chosen.set(step.options);
    const least = at(bucket.least);
    for (let option = sizeOf(bucket.place) - 1; option >= 0; option--) {
      chosen.set(step.options);
      chosen[bucket.place] = option;
      const here = bucket.held.reduce((sum, table) => sum + at(table), 0);
      push(cost - least + here, step.depth - 1, chosen.slice());
    }
  }

  function spread(index: number, places: readonly number[]): void {
    let rest = index;
    for (let position = places.length - 1; position >= 0; position--) {
      const place = places[position] ?? 0;
      chosen[place] = rest % sizeOf(place);
      rest = Math.floor(rest / sizeOf(place));
    }
  }
}

/** The next place to eliminate: the one whose table will be smallest in places. */
function fewestNeighbours(
  left: ReadonlySet<number>,
  tables: readonly Table[],
): { place: number; around: number[] } {
  let best: { place: number; around: number[] } | undefined;
  for (const place of left) {
    const around = [
      ...new Set(tables.filter(({ places }) => places.includes(place)).flatMap(({ places }) => places)),
    ].filter((neighbour) => neighbour !== place);
    if (!best || around.length < best.around.length) best = { place, around };
  }
  if (!best) throw new RangeError('no place left to eliminate');
  return best;
}

/** Keeps a list of distinct costs in order; there are few of them. */
function sift(waiting: number[], cost: number): void {
  let [lo, hi] = [0, waiting.length];
  while (lo < hi) {
    const middle = (lo + hi) >> 1;
    if ((waiting[middle] ?? 0) < cost) lo = middle + 1;
    else hi = middle;
  }
  waiting.splice(lo, 0, cost);
}

function refuseBadCosts(
  singles: readonly (readonly number[])[],
  pairs: readonly PairCost[],
  sizeOf: (place: number) => number,
): void {
  const bad = (cost: number): boolean => Number.isNaN(cost) || cost === Number.NEGATIVE_INFINITY;
  if (singles.some((costs) => costs.length === 0 || costs.some(bad)))
    throw new RangeError('a place has no cost');
  for (const { one, other, cost } of pairs)
    if (
      one === other ||
      cost.length !== sizeOf(one) ||
      cost.some((row) => row.length !== sizeOf(other) || row.some(bad))
    )
      throw new RangeError(`costs of ${one} with ${other} do not match their options`);
}

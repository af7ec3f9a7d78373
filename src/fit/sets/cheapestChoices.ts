/**
 * What options of several places cost together, for every combination of them; the last place changes first.
 */
export interface JointCost {
  places: readonly number[];
  costs: ArrayLike<number>;
}

export interface CheapestSet {
  /** Option taken at each place. */
  options: readonly number[];
  cost: number;
}

/** A cost that waits to be looked up, with how far apart its entries lie for a step at each place. */
interface CostTable extends JointCost {
  strides: readonly number[];
}

/** A place that was eliminated: the tables that knew it, and the least they can add for each choice around it. */
interface Bucket {
  place: number;
  held: readonly CostTable[];
  least: CostTable;
}

/**
 * Every way to take one option at each place, cheapest first, as a lazy sequence.
 * Places are eliminated one by one, each leaving the least cost it adds for every choice of its neighbours; read
 * backwards these tables tell the exact rest cost of any beginning, so the walk never opens a dead end.
 * Fast where few places touch each other, as on a bicycle; a pile where all touch all would need the whole product.
 * @param singles cost of each option at each place; `Infinity` forbids it
 * @param joint costs of options of several places together
 * @throws RangeError when a cost is NaN or −Infinity, a table has the wrong size, or names a place twice
 * @example [...cheapestChoices([[0, 5], [1, 0]], [])][0] //=> { options: [0, 1], cost: 0 }
 */
export function* cheapestChoices(
  singles: readonly (readonly number[])[],
  joint: readonly JointCost[],
): Generator<CheapestSet> {
  const sizes = singles.map(({ length }) => length);
  refuseBadCosts(singles, joint, sizes);
  const chosen = new Int32Array(sizes.length);
  const tables = [
    ...singles.map((costs, place) => tableOf({ places: [place], costs }, sizes)),
    ...joint.map((one) => tableOf(one, sizes)),
  ];
  const { buckets, total } = eliminate(tables, sizes, chosen);

  const waiting = new CostQueue<{ depth: number; options: Int32Array }>();
  waiting.add(total, { depth: buckets.length, options: new Int32Array(sizes.length) });
  for (let next = waiting.take(); next; next = waiting.take()) {
    const [cost, { depth, options }] = next;
    const bucket = buckets[depth - 1];
    if (!bucket) {
      yield { options: [...options], cost };
      continue;
    }
    chosen.set(options);
    const least = at(bucket.least, chosen);
    for (let option = (sizes[bucket.place] ?? 0) - 1; option >= 0; option--) {
      chosen[bucket.place] = option;
      waiting.add(cost - least + sumAt(bucket.held, chosen), { depth: depth - 1, options: chosen.slice() });
    }
  }
}

function tableOf({ places, costs }: JointCost, sizes: readonly number[]): CostTable {
  const strides: number[] = [];
  places.reduceRight((stride, place, index) => {
    strides[index] = stride;
    return stride * (sizes[place] ?? 0);
  }, 1);
  return { places, costs, strides };
}

function at({ places, strides, costs }: CostTable, chosen: Int32Array): number {
  let index = 0;
  for (let position = 0; position < places.length; position++)
    index += (strides[position] ?? 0) * (chosen[places[position] ?? 0] ?? 0);
  return costs[index] ?? 0;
}

function sumAt(tables: readonly CostTable[], chosen: Int32Array): number {
  let sum = 0;
  for (const table of tables) sum += at(table, chosen);
  return sum;
}

/** Takes the places away one after the other; `chosen` is only written on. */
function eliminate(
  tables: readonly CostTable[],
  sizes: readonly number[],
  chosen: Int32Array,
): { buckets: Bucket[]; total: number } {
  const buckets: Bucket[] = [];
  let rest = tables;
  const left = new Set(sizes.keys());
  while (left.size > 0) {
    const { place, around } = smallestTable(left, rest, sizes);
    const held = rest.filter(({ places }) => places.includes(place));
    const costs = new Float64Array(around.reduce((count, neighbour) => count * (sizes[neighbour] ?? 0), 1));
    const least = tableOf({ places: around, costs }, sizes);
    for (let index = 0; index < costs.length; index++) {
      spread(index, least, sizes, chosen);
      let best = Number.POSITIVE_INFINITY;
      for (let option = 0; option < (sizes[place] ?? 0); option++) {
        chosen[place] = option;
        best = Math.min(best, sumAt(held, chosen));
      }
      costs[index] = best;
    }
    buckets.push({ place, held, least });
    rest = [...rest.filter((table) => !held.includes(table)), least];
    left.delete(place);
  }
  return { buckets, total: sumAt(rest, chosen) };
}

/** Writes the options an entry of a table stands for. */
function spread(
  index: number,
  { places, strides }: CostTable,
  sizes: readonly number[],
  chosen: Int32Array,
): void {
  for (const [position, place] of places.entries())
    chosen[place] = Math.floor(index / (strides[position] ?? 1)) % (sizes[place] ?? 1);
}

/** The next place to eliminate: the one that leaves the smallest table. */
function smallestTable(
  left: ReadonlySet<number>,
  tables: readonly CostTable[],
  sizes: readonly number[],
): { place: number; around: number[] } {
  let best: { place: number; around: number[]; entries: number } | undefined;
  for (const place of left) {
    const around = [
      ...new Set(tables.filter(({ places }) => places.includes(place)).flatMap(({ places }) => places)),
    ].filter((neighbour) => neighbour !== place);
    const entries = around.reduce((count, neighbour) => count * (sizes[neighbour] ?? 0), 1);
    if (!best || entries < best.entries) best = { place, around, entries };
  }
  if (!best) throw new RangeError('no place left to eliminate');
  return best;
}

/** What waits, least cost first; among equals the last that came, so that one choice is finished before the next. */
class CostQueue<T> {
  readonly #byCost = new Map<number, T[]>();
  /** The costs in the map, dearest first: there are few of them. */
  readonly #costs: number[] = [];

  add(cost: number, item: T): void {
    if (cost === Number.POSITIVE_INFINITY) return;
    const row = this.#byCost.get(cost);
    if (row) {
      row.push(item);
      return;
    }
    this.#byCost.set(cost, [item]);
    let [lo, hi] = [0, this.#costs.length];
    while (lo < hi) {
      const middle = (lo + hi) >> 1;
      if ((this.#costs[middle] ?? 0) > cost) lo = middle + 1;
      else hi = middle;
    }
    this.#costs.splice(lo, 0, cost);
  }

  take(): [cost: number, item: T] | undefined {
    const cost = this.#costs.at(-1);
    if (cost === undefined) return undefined;
    const row = this.#byCost.get(cost);
    const item = row?.pop();
    if (row?.length === 0) {
      this.#byCost.delete(cost);
      this.#costs.pop();
    }
    return item === undefined ? undefined : [cost, item];
  }
}

function refuseBadCosts(
  singles: readonly (readonly number[])[],
  joint: readonly JointCost[],
  sizes: readonly number[],
): void {
  const bad = (cost: number): boolean => Number.isNaN(cost) || cost === Number.NEGATIVE_INFINITY;
  if (singles.some((costs) => costs.length === 0 || costs.some(bad)))
    throw new RangeError('a place has no cost');
  for (const { places, costs } of joint)
    if (
      new Set(places).size !== places.length ||
      costs.length !== places.reduce((count, place) => count * (sizes[place] ?? 0), 1) ||
      Array.from(costs).some(bad)
    )
      throw new RangeError(`the costs of places ${places.join()} do not match their options`);
}

import type { WheelInfluence } from './wheelInfluence.ts';

/** A wheel as it was read; null where a spoke or a place was not. */
export interface WheelState {
  /** N, spoke 1 first */
  tensionsN: readonly (number | null)[];
  /** mm toward the drive side of where the rim is to stand */
  sidewaysMm: readonly (number | null)[];
  /** mm outward of the mean radius */
  outwardMm: readonly (number | null)[];
}

/** What is good enough. */
export interface TruingBands {
  /** rim to either side of its middle, mm: half of a full run-out */
  sidewaysMm: number;
  /** rim to either side of its mean radius, mm */
  outwardMm: number;
  /** each spoke from the tension its side is to have, as a share: 0.1 is 10 % */
  tensionShare: number;
}

export interface TruingPlan {
  /** quarter turns of each nipple, tightening positive, spoke 1 first */
  quarters: number[];
  /** whether the model expects all within its bands afterwards */
  within: boolean;
  /** the farthest from where it is to be, as a share of its band; 0 where all is within */
  worst: number;
  /** where the model expects the wheel to be afterwards, null where it was not read */
  expected: WheelState;
}

/** A nipple that needs more than two turns is no matter of truing: count the thread again. Own judgement. */
const MOST_QUARTERS = 8;
const MOST_STEPS = 600;

/** One thing looked at, as a share of its band, and what a quarter turn of each nipple does to it. */
interface Judged {
  share: number;
  perQuarter: readonly number[];
}

function gaugesOf(
  state: WheelState,
  targetsN: readonly number[],
  bands: TruingBands,
  influence: WheelInfluence,
): Judged[] {
  const rows = (
    values: readonly (number | null)[],
    from: readonly number[] | undefined,
    bandOf: (at: number) => number,
    matrix: readonly (readonly number[])[],
  ): Judged[] =>
    values.flatMap((value, at) =>
      value === null
        ? []
        : [
            {
              share: (value - (from?.[at] ?? 0)) / bandOf(at),
              perQuarter: (matrix[at] as number[]).map((one) => one / 4 / bandOf(at)),
            },
          ],
    );
  // Roundness is about the mean radius, so all nipples together change nothing of it.
  const means = influence.outward[0]?.map(
    (_, column) =>
      influence.outward.reduce((sum, row) => sum + (row[column] as number), 0) / influence.outward.length,
  );
  const round = influence.outward.map((row) => row.map((one, column) => one - (means?.[column] ?? 0)));
  return [
    ...rows(state.sidewaysMm, undefined, () => bands.sidewaysMm, influence.sideways),
    ...rows(state.outwardMm, undefined, () => bands.outwardMm, round),
    ...rows(
      state.tensionsN,
      targetsN,
      (at) => bands.tensionShare * (targetsN[at] as number),
      influence.tension,
    ),
  ];
}

/**
 * How far a share lies beyond what is aimed at, squared; inside, a little for every share, so that ties fall to the
 * better wheel.
 */
const beyond = (share: number, aim: number): number => {
  const over = Math.abs(share) - aim;
  return (over > 0 ? over * over : 0) + 1e-4 * share * share;
};

/** A turn that gains less than this is none. */
const LEAST_GAIN = 1e-9;

/** What all shares lie beyond the aim together. */
function excessOf(shares: Float64Array, aim: number): number {
  let sum = 0;
  for (const share of shares) sum += beyond(share, aim);
  return sum;
}

/**
 * The same after a turn of one nipple.
 * @param most above this the answer does not matter, and the sum is left off
 */
function excessAfter(
  shares: Float64Array,
  column: Float64Array,
  turn: number,
  aim: number,
  most = Number.POSITIVE_INFINITY,
): number {
  let sum = 0;
  for (let at = 0; at < shares.length && sum <= most; at++)
    sum += beyond((shares[at] as number) + turn * (column[at] as number), aim);
  return sum;
}

const worst = (shares: Float64Array): number =>
  shares.reduce((most, share) => Math.max(most, Math.abs(share)), 0);
const within = (shares: Float64Array, aim = 1): boolean => worst(shares) <= aim + 1e-9;

/**
 * How much of the band is aimed at, in turn: turning a quarter at a time toward the band itself often ends a hair
 * outside, where a narrower aim ends well inside.
 */
const AIMS = [1, 0.9, 0.7, 0.5, 0.3, 0];

/** Turns one nipple after the other a quarter, each time the one that helps most, until all is within or nothing helps. */
function descend(
  shares: Float64Array,
  columns: readonly Float64Array[],
  quarters: number[],
  aim: number,
): void {
  for (let step = 0; step < MOST_STEPS && !within(shares, aim); step++) {
    let best = { left: excessOf(shares, aim) - LEAST_GAIN, spoke: -1, turn: 0 };
    for (const [spoke, column] of columns.entries())
      for (const turn of [1, -1]) {
        if (Math.abs((quarters[spoke] as number) + turn) > MOST_QUARTERS) continue;
        const left = excessAfter(shares, column, turn, aim, best.left);
        if (left < best.left) best = { left, spoke, turn };
      }
    if (best.spoke < 0) return;
    apply(shares, columns[best.spoke] as Float64Array, best.turn);
    quarters[best.spoke]! += best.turn;
  }
}

/** Single turns that come nearest to helping; of these the pairs are tried. Own choice. */
const PAIRED_MOST = 40;

/** The two turns that together help most; false when no two help. */
function turnTwo(shares: Float64Array, columns: readonly Float64Array[], quarters: number[]): boolean {
  const single = columns
    .flatMap((column, spoke) =>
      [1, -1].map((turn) => ({ spoke, turn, left: excessAfter(shares, column, turn, 1) })),
    )
    .filter(({ spoke, turn }) => Math.abs((quarters[spoke] as number) + turn) < MOST_QUARTERS)
    .sort((a, b) => a.left - b.left)
    .slice(0, PAIRED_MOST);
  let best = { left: excessOf(shares, 1) - LEAST_GAIN, turns: [] as { spoke: number; turn: number }[] };
  const tried = Float64Array.from(shares);
  for (const [at, one] of single.entries()) {
    tried.set(shares);
    apply(tried, columns[one.spoke] as Float64Array, one.turn);
    for (const other of single.slice(at)) {
      const left = excessAfter(tried, columns[other.spoke] as Float64Array, other.turn, 1, best.left);
      if (left < best.left) best = { left, turns: [one, other] };
    }
  }
  for (const { spoke, turn } of best.turns) {
    apply(shares, columns[spoke] as Float64Array, turn);
    quarters[spoke]! += turn;
  }
  return best.turns.length > 0;
}

function apply(shares: Float64Array, column: Float64Array, turn: number): void {
  for (let at = 0; at < shares.length; at++) shares[at]! += turn * (column[at] as number);
}

/** Takes back every quarter turn that is not needed. */
function prune(shares: Float64Array, columns: readonly Float64Array[], quarters: number[]): void {
  for (let again = true; again; ) {
    again = false;
    for (const [spoke, column] of columns.entries()) {
      const turn = -Math.sign(quarters[spoke] as number);
      if (turn === 0) continue;
      apply(shares, column, turn);
      if (within(shares)) {
        quarters[spoke]! += turn;
        again = true;
      } else apply(shares, column, -turn);
    }
  }
}

const turnsIn = (quarters: readonly number[]): number =>
  quarters.reduce((sum, one) => sum + Math.abs(one), 0);

/** Leaves one nipple alone after the other, where the rest then come within with fewer turns. */
function leaveOut(shares: Float64Array, columns: readonly Float64Array[], quarters: number[]): void {
  for (const [spoke, column] of columns.entries()) {
    if (quarters[spoke] === 0) continue;
    const tried = Float64Array.from(shares);
    const turns = [...quarters];
    apply(tried, column, -(turns[spoke] as number));
    turns[spoke] = 0;
    descend(tried, columns, turns, 1);
    if (!within(tried)) continue;
    prune(tried, columns, turns);
    if (turnsIn(turns) >= turnsIn(quarters)) continue;
    shares.set(tried);
    quarters.splice(0, quarters.length, ...turns);
  }
}

/**
 * The fewest quarter turns that bring rim and tensions within their bands, as far as a search finds them: the most
 * helpful turn again and again, then every turn that is not needed is taken back.
 * @param state as read; what is null is neither judged nor mended
 * @param targetsN tension each spoke is to have, N, above 0
 * @param bands each above 0
 * @param influence of the same wheel
 * @returns the turns, and where the wheel is expected to be; true already gives none
 * @throws RangeError when lists differ in length or a band is not above 0
 * Source: search over a linear model; own. In the tests its turns are carried out on random wheels of finite elements,
 * beside those of the rule of thumb: on a few of them that rule comes nearer.
 * @example nextTurns(trueWheel, targets, bands, influence).quarters // all 0
 */
export function nextTurns(
  state: WheelState,
  targetsN: readonly number[],
  bands: TruingBands,
  influence: WheelInfluence,
): TruingPlan {
  const spokes = influence.tension.length;
  const lists = [targetsN, state.tensionsN, state.sidewaysMm, state.outwardMm];
  if (lists.some((list) => list.length !== spokes))
    throw new RangeError('the readings do not match the spokes');
  if (
    !(bands.sidewaysMm > 0 && bands.outwardMm > 0 && bands.tensionShare > 0 && targetsN.every((n) => n > 0))
  )
    throw new RangeError('bands and targets must be above 0');
  const gauges = gaugesOf(state, targetsN, bands, influence);
  const begun = Float64Array.from(gauges, ({ share }) => share);
  const columns = targetsN.map((_, spoke) =>
    Float64Array.from(gauges, ({ perQuarter }) => perQuarter[spoke] ?? 0),
  );
  const better = (a: Tried, b: Tried) => (a.within && b.within ? a.turns - b.turns : a.worst - b.worst);
  const first = AIMS.map((aim) => tryToward(aim, begun, columns)).sort(better);
  const tries = first[0]!.within ? first : first.map((one) => goOnInPairs(one, columns)).sort(better);
  const [best] = tries;
  const { quarters, within: good, worst: farthest } = best!;
  return { quarters, within: good, worst: farthest, expected: wheelAfter(state, quarters, influence) };
}

/** Where no single turn helps any more, two at once may. */
const MOST_PAIRS = 24;

interface Tried {
  shares: Float64Array;
  quarters: number[];
  within: boolean;
  turns: number;
  worst: number;
}

function tryToward(aim: number, begun: Float64Array, columns: readonly Float64Array[]): Tried {
  const shares = Float64Array.from(begun);
  const quarters = columns.map(() => 0);
  descend(shares, columns, quarters, aim);
  return finished(shares, columns, quarters);
}

function goOnInPairs({ shares, quarters }: Tried, columns: readonly Float64Array[]): Tried {
  for (let pair = 0; pair < MOST_PAIRS && !within(shares); pair++) {
    if (!turnTwo(shares, columns, quarters)) break;
    descend(shares, columns, quarters, 1);
  }
  return finished(shares, columns, quarters);
}

function finished(shares: Float64Array, columns: readonly Float64Array[], quarters: number[]): Tried {
  const good = within(shares);
  if (good) {
    prune(shares, columns, quarters);
    leaveOut(shares, columns, quarters);
  }
  return { shares, quarters, within: good, turns: turnsIn(quarters), worst: good ? 0 : worst(shares) };
}

/**
 * Where a wheel is expected to be after some turns.
 * @param quarters of each nipple, tightening positive
 * @example wheelAfter(state, [1, 0, …], influence).tensionsN[0] // higher than before
 */
export function wheelAfter(
  state: WheelState,
  quarters: readonly number[],
  influence: WheelInfluence,
): WheelState {
  const moved = (values: readonly (number | null)[], matrix: readonly (readonly number[])[]) =>
    values.map((value, at) =>
      value === null
        ? null
        : value +
          (matrix[at] as number[]).reduce((sum, one, spoke) => sum + (one * (quarters[spoke] ?? 0)) / 4, 0),
    );
  return {
    tensionsN: moved(state.tensionsN, influence.tension),
    sidewaysMm: moved(state.sidewaysMm, influence.sideways),
    outwardMm: moved(state.outwardMm, influence.outward),
  };
}

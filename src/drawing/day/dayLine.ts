/** Something that takes time, min from now. */
export interface TimeBar {
  fromMin: number;
  toMin: number;
}

/** A bar on the line, in units of the drawing. */
export interface DayBar {
  x: number;
  width: number;
  /** Waits that run at the same time lie under each other, 0 nearest to the line. */
  lane: number;
  /** It goes on beyond the end of the line. */
  cut: boolean;
}

/** A line in time: the hands above it, what goes on by itself under it. */
export interface DayLine {
  width: number;
  hands: DayBar[];
  waits: DayBar[];
  lanes: number;
  /** Where the marks of the clock stand, and at which minute from now. */
  ticks: { x: number; atMin: number }[];
  /** What the line ends with, min. */
  endMin: number;
}

const WIDTH = 360;
/** Spans between two marks, min. */
const TICKS = [15, 30, 60, 120, 180, 360, 720, 1440] as const;
const MOST_TICKS = 5;
/** Waits go on to this much beyond the last turn of the hands; what is longer is cut off there. */
const BEYOND = 1.5;
/** The narrowest bar that is still seen. */
const NARROW = 2;

/**
 * Shapes of a day as a line in time.
 * @param hands what the hands do, one after the other
 * @param waits what goes on by itself
 * @param clockMin minutes since midnight now: marks stand at round times of the clock
 * @example dayLine([{ fromMin: 0, toMin: 60 }], [], 0).ticks.map(({ x }) => x) //=> [0, 90, 180, 270, 360]
 */
export function dayLine(hands: readonly TimeBar[], waits: readonly TimeBar[], clockMin: number): DayLine {
  const handsEnd = Math.max(1, ...hands.map(({ toMin }) => toMin));
  const endMin = Math.min(Math.max(handsEnd, ...waits.map(({ toMin }) => toMin)), handsEnd * BEYOND);
  const xOf = (min: number) => (Math.min(min, endMin) / endMin) * WIDTH;
  const barOf = ({ fromMin, toMin }: TimeBar, lane: number): DayBar => ({
    ...{ x: xOf(fromMin), width: Math.max(NARROW, xOf(toMin) - xOf(fromMin)), lane, cut: toMin > endMin },
  });
  const until: number[] = [];
  const laid = waits
    .filter(({ fromMin }) => fromMin < endMin)
    .toSorted((a, b) => a.fromMin - b.fromMin)
    .map((wait) => {
      const free = until.findIndex((end) => end <= wait.fromMin);
      const lane = free < 0 ? until.length : free;
      until[lane] = wait.toMin;
      return barOf(wait, lane);
    });
  const step = TICKS.find((one) => endMin / one < MOST_TICKS) ?? 1440;
  const first = (step - (clockMin % step)) % step;
  const ticks: DayLine['ticks'] = [];
  for (let atMin = first; atMin <= endMin; atMin += step) ticks.push({ x: xOf(atMin), atMin });
  return {
    width: WIDTH,
    hands: hands.map((bar) => barOf(bar, 0)),
    waits: laid,
    lanes: until.length,
    ticks,
    endMin,
  };
}

import { type PluckFault, pluckEar } from './pluck.ts';

/** What is heard as sound goes on. */
export type Heard =
  | { is: 'pluck'; hz: number }
  | { is: 'no-pitch'; reason: PluckFault }
  /** nothing began for a long time */
  | { is: 'quiet' }
  /** the microphone gives nothing at all */
  | { is: 'dead' };

/** Listens to sound that comes in overlapping blocks. */
export interface PluckStream {
  /** Listen in another window from now on: the next spoke. */
  turnTo(lowHz: number, highHz: number): void;
  /** Ignores what begins before that moment: the phone itself speaks. */
  deafUntil(s: number): void;
  /**
   * @param samples the last third of a second or more
   * @param endS when the last of them was, s, on any clock that runs on
   */
  hear(samples: ArrayLike<number>, endS: number): Heard[];
}

/** A pluck this soon after another is the same one, s. */
const SAME_S = 0.25;
/** So long without a sound, s. */
const QUIET_S = 8;
const DEAD_S = 3;

/**
 * An ear for a walk round the wheel: every pluck once, however the blocks overlap.
 * @param sampleRate of the sound as it really is
 * @param lowHz and highHz the window of the first spoke; see `pluckEar`
 * @throws RangeError when a figure is out of range
 * @example pluckStream(48_000, 406, 739).hear(samples, 0.36) //=> [{ is: 'pluck', hz: 597.4 }]
 */
export function pluckStream(sampleRate: number, lowHz: number, highHz: number): PluckStream {
  let ear = pluckEar(sampleRate, lowHz, highHz);
  let deafS = Number.NEGATIVE_INFINITY;
  let soundS: number | undefined;
  let aliveS: number | undefined;
  return {
    turnTo(low, high) {
      ear = pluckEar(sampleRate, low, high);
    },
    deafUntil(s) {
      deafS = Math.max(deafS, s);
      soundS = Math.max(soundS ?? s, s);
    },
    hear(samples, endS) {
      soundS ??= endS;
      aliveS ??= endS;
      const beginS = endS - samples.length / sampleRate;
      const heard: Heard[] = [];
      for (const pluck of ear.plucks(samples)) {
        const atS = beginS + pluck.at / sampleRate;
        if (atS < deafS) continue;
        deafS = atS + SAME_S;
        soundS = endS;
        heard.push(pluck.ok ? { is: 'pluck', hz: pluck.hz } : { is: 'no-pitch', reason: pluck.reason });
      }
      if (silent(samples)) {
        if (endS - aliveS < DEAD_S) return heard;
        aliveS = endS;
        return [{ is: 'dead' }];
      }
      aliveS = endS;
      if (endS - soundS < QUIET_S) return heard;
      soundS = endS;
      return [{ is: 'quiet' }];
    },
  };
}

/** Nothing but noughts: not even the rustle that every microphone has. */
function silent(samples: ArrayLike<number>): boolean {
  for (let at = 0; at < samples.length; at += 1) if (samples[at] !== 0) return false;
  return true;
}

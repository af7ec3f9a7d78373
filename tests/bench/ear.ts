import Fft from 'fft.js';
import { toneFinder } from '../../src/mechanics/sound/tone.ts';
import { pitchWindow } from '../../src/mechanics/wheels/spokePitch.ts';
import { anyPluck, chance, partialsHz } from '../fixtures/wheels/pluckedSpoke.ts';

/** Runs in the page: the pitch of one look, against the bare transform of 4096 samples by a general library. */

const RATE = 48_000;
const LOOK = 4096;
/** So many at once, since a page's clock is coarse. */
const AT_ONCE = 200;

interface Rounds {
  pitchUs: number[];
  fftUs: number[];
}

/** Microseconds for one, each round both in turn, after rounds that warm up. */
export function pitchAgainstFft(lengthMm: number, expectedN: number, rounds: number): Rounds {
  const sound = anyPluck(RATE, partialsHz(lengthMm, 2, expectedN, 6), chance(lengthMm), {
    atS: 0,
    snrDb: 15,
  });
  const { lowHz, highHz } = pitchWindow({ pieces: [{ lengthMm, diameterMm: 2 }] }, expectedN);
  const finder = toneFinder(RATE, lowHz, highHz);
  const from = Math.round(0.015 * RATE);
  const look = Array.from(sound.subarray(from, from + LOOK));
  const fft = new Fft(LOOK);
  const out = fft.createComplexArray();
  const each = (work: () => unknown): number => {
    const start = performance.now();
    for (let at = 0; at < AT_ONCE; at += 1) work();
    return (1000 * (performance.now() - start)) / AT_ONCE;
  };
  const spent: Rounds = { pitchUs: [], fftUs: [] };
  for (let at = -4; at < rounds; at += 1) {
    const pitchUs = each(() => finder.find(sound, from));
    const fftUs = each(() => fft.realTransform(out, look));
    if (at < 0) continue;
    spent.pitchUs.push(pitchUs);
    spent.fftUs.push(fftUs);
  }
  return spent;
}

/** Frames in which the loudness is followed, s. */
const FRAME_S = 0.005;
/** Frames before that have to be quieter, and the one between that may already rise. */
const QUIET_FRAMES = 9;
/** A pluck is this many times as strong as what was there before: 10 dB. */
const RISE = 10;
/** In parts of full scale squared: 80 dB below, where a microphone that is switched off still rustles. */
export const FAINT = 1e-8;

/**
 * Where plucks begin: the loudness within a window of frequencies rises at once. Hum, noise and a spoke that still rings
 * stay as loud as they were, or fall.
 * @param samples −1 to 1
 * @param sampleRate of the sound
 * @param lowHz and highHz where the pluck sounds
 * @returns places of the first samples, in order
 * Source: own choice; band-pass of second order twice, textbook.
 * @example onsets(samples, 48_000, 400, 750) //=> [4800]
 */
export function onsets(
  samples: ArrayLike<number>,
  sampleRate: number,
  lowHz: number,
  highHz: number,
): number[] {
  const frame = Math.round(FRAME_S * sampleRate);
  const angle = (2 * Math.PI * Math.sqrt(lowHz * highHz)) / sampleRate;
  // As wide as the window.
  const damping = Math.sin(angle) * ((highHz - lowHz) / Math.sqrt(lowHz * highHz) / 2);
  const [gain, first, second] = [
    damping / (1 + damping),
    (2 * Math.cos(angle)) / (1 + damping),
    (damping - 1) / (1 + damping),
  ];
  // Each frame's samples go through the filter twice, so that hum beside the window counts for little.
  const [one, other] = [new Float64Array(frame), new Float64Array(frame)];
  const stages = [
    { from: one, to: other, past: [0, 0, 0, 0] as [number, number, number, number] },
    { from: other, to: one, past: [0, 0, 0, 0] as [number, number, number, number] },
  ];
  const loud: number[] = [];
  for (let start = 0; start + frame <= samples.length; start += frame) {
    for (let at = 0; at < frame; at += 1) one[at] = samples[start + at]!;
    for (const stage of stages) {
      let [in1, in2, out1, out2] = stage.past;
      for (let at = 0; at < frame; at += 1) {
        const sample = stage.from[at]!;
        const out = gain * (sample - in2) + first * out1 + second * out2;
        in2 = in1;
        in1 = sample;
        out2 = out1;
        out1 = out;
        stage.to[at] = out;
      }
      stage.past = [in1, in2, out1, out2];
    }
    loud.push(one.reduce((sum, sample) => sum + sample * sample, 0) / frame);
  }
  const found: number[] = [];
  // The filter itself has to settle first.
  for (let at = QUIET_FRAMES + 2; at < loud.length; at += 1) {
    const before = loud.slice(at - QUIET_FRAMES - 1, at - 1);
    const quiet = before.reduce((sum, power) => sum + power, 0) / QUIET_FRAMES;
    if (loud[at]! < RISE * Math.max(quiet, FAINT)) continue;
    found.push((at - 1) * frame);
    at += QUIET_FRAMES + 3;
  }
  return found;
}

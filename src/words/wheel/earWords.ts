import { numberText } from '../../mechanics/numberText.ts';
import type { PluckFault } from '../../mechanics/sound/pluck.ts';
import type { PluckSeries } from '../../mechanics/sound/pluckSeries.ts';
import type { SpokeEar } from '../../mechanics/wheels/spokeByEar.ts';
import { COMPARED_PERCENT } from '../../mechanics/wheels/spokePitch.ts';
import type { CalibrationByEar } from '../../mechanics/wheels/spokePitchCalibration.ts';

/** What is said while the phone listens to spokes. */

export const pluckFaultSentences: Record<PluckFault, string> = {
  unclear: 'No clear tone: a voice or a knock? Pluck again.',
  lower: 'Tone below the range. Choose a lower tension to listen for.',
  higher: 'Tone above the range. Choose a higher tension to listen for.',
  'two-tones': 'Two tones at once. Hold the other spokes still and pluck one.',
  partial: 'Only an overtone was heard. Pluck nearer the middle of the spoke.',
  steady: 'A steady tone, not a pluck: a hum or a whistle.',
  sliding: 'The pitch moved: a voice, or two spokes. Pluck one softly.',
};

export type NoSound = 'refused' | 'none' | 'busy' | 'unsupported' | 'lost' | 'dead';

/** No microphone, or none that hears: typing always works. */
export const noSoundSentences: Record<NoSound, string> = {
  refused: 'The microphone is not allowed. Allow it for this app in the phone’s settings, or type the pitch.',
  none: 'No microphone found. Type the pitch instead.',
  busy: 'Another app is using the microphone. Close that app, or type the pitch.',
  unsupported: 'This browser cannot listen. Type the pitch instead.',
  lost: 'The phone switched the microphone off. Press Listen again, or type the pitch.',
  dead: 'The microphone gives no sound. Check that it is not muted, or type the pitch.',
};

export const QUIET_SENTENCE = 'Nothing heard. Hold the phone within 30 cm of the spoke.';
export const FILTERED_SENTENCE = 'This phone filters its microphone. Soft plucks may not be heard.';

/** @example seriesSentence({ state: 'more', missing: 3 }) //=> 'Pluck three times.' */
export function seriesSentence(series: PluckSeries): string {
  if (series.state === 'heard') return `${numberText(series.hz)} Hz.`;
  if (series.state === 'more')
    return series.missing === 3
      ? 'Pluck three times.'
      : `Heard. Pluck ${series.missing === 2 ? 'twice' : 'once'} more.`;
  const apart = `The last three differ by ${numberText(series.scatterCents, 0)} cents.`;
  return series.often
    ? `${apart} Check that the spoke touches nothing and pluck at one place.`
    : `${apart} Pluck again.`;
}

/** What is plucked, and how the ends of the spoke are held, as the form of a wheel asks for them. */
export const soundsWords: Record<SpokeEar['sounds'], string> = {
  free: 'The whole spoke',
  pair: 'The spoke with its partner',
  outer: 'The part beyond the crossing',
};
export const endsWords: Record<SpokeEar['ends'], { label: string; hint: string }> = {
  'clamped-pinned': {
    label: 'Tight at the hub, free to tilt at the nipple',
    hint: 'Usual for elbow spokes.',
  },
  'pinned-pinned': { label: 'Free to tilt at both ends', hint: 'Long thin spokes, or a loose hub hole.' },
  'clamped-clamped': {
    label: 'Tight at both ends',
    hint: 'Straight pull, or a nipple that grips the spoke.',
  },
};

/** Why known tensions make no calibration yet. */
export const calibrationRefusals: Record<Extract<CalibrationByEar, { ok: false }>['reason'], string> = {
  'one-tension': 'Two known tensions are needed.',
  'tensions-too-close': 'Too close together: make the higher one at least a quarter more than the lower.',
  'pitch-against-tension': 'A higher tension must sound higher. Check the rows.',
};

export const soundsDetails: Record<SpokeEar['sounds'], string> = {
  free: 'Lift the spoke clear of its partner, or it touches none.',
  pair: 'The tension shown is the mean of the two.',
  outer: 'Pinch the crossing and pluck between it and the rim.',
};

/**
 * How far a tension by ear may be off, and what it is good for.
 * @param lo and hi N, from a reading
 * @example bandSentence({ lo: 839, mid: 1010, hi: 1166 }, false) //=> 'By itself within −17 to +15 %. Spokes of one side compare within 2 %.'
 */
export function bandSentence(
  { lo, mid, hi }: { lo: number; mid: number; hi: number },
  calibrated: boolean,
): string {
  const percent = (newtons: number) => numberText(Math.abs(100 * (newtons / mid - 1)), 0);
  const compared = `Spokes of one side compare within ${COMPARED_PERCENT} %.`;
  return calibrated
    ? `Calibrated: within ${percent(hi)} %. ${compared}`
    : `By itself within −${percent(lo)} to +${percent(hi)} %. ${compared}`;
}

/** A pitch without the sizes of rim and hub. */
export const UNMEASURED_SENTENCE = 'Enter the sizes of rim and hub first: a pitch needs the spoke’s length.';

export const pitchRefusals: Record<'too-low-for-spoke' | 'too-high-for-spoke', string> = {
  'too-low-for-spoke': 'Too low: this spoke sounds higher even without tension.',
  'too-high-for-spoke': 'Too high for this spoke. Was an overtone read?',
};

/**
 * What the phone says when a spoke was read, and which comes next.
 * @param value the tension, rounded, in the wheel's unit
 * @example spokenReading(3, '1010', 5) //=> 'Spoke 3: 1010. Next: 5.'
 */
export const spokenReading = (spoke: number, value: string, next: number | undefined): string =>
  next === undefined ? `Spoke ${spoke}: ${value}. All done.` : `Spoke ${spoke}: ${value}. Next: ${next}.`;

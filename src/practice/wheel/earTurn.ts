import { pluckSeries } from '../../mechanics/sound/pluckSeries.ts';
import type { Heard } from '../../mechanics/sound/pluckStream.ts';
import { pluckFaultSentences, QUIET_SENTENCE, seriesSentence } from '../../words/wheel/earWords.ts';

/** One spoke's turn on a walk by ear. */
export interface EarTurn {
  /** plucks heard so far */
  hz: readonly number[];
  /** what stands on the screen */
  sentence: string;
}

/** Before the first pluck. */
export const freshTurn: EarTurn = { hz: [], sentence: seriesSentence({ state: 'more', missing: 3 }) };

export interface AfterSound {
  turn: EarTurn;
  /** the pitch of the spoke, once its plucks agree */
  readHz?: number;
  /** what is said aloud: eyes are on the spoke */
  aloud?: string;
}

/**
 * What a sound makes of a spoke's turn. A sound that gives no pitch takes nothing away; plucks that scatter are asked for
 * again, aloud.
 * @example afterSound(freshTurn, { is: 'pluck', hz: 440 }).turn.hz //=> [440]
 */
export function afterSound(turn: EarTurn, heard: Exclude<Heard, { is: 'dead' }>): AfterSound {
  if (heard.is === 'quiet') return { turn: { ...turn, sentence: QUIET_SENTENCE } };
  if (heard.is === 'no-pitch') {
    const sentence = pluckFaultSentences[heard.reason];
    // A voice in the room is no reason to speak; what the person has to change is.
    const aloud = heard.reason === 'lower' || heard.reason === 'higher' || heard.reason === 'two-tones';
    return { turn: { ...turn, sentence }, ...(aloud && { aloud: sentence }) };
  }
  const hz = [...turn.hz, heard.hz];
  const series = pluckSeries(hz);
  const next = { hz, sentence: seriesSentence(series) };
  if (series.state === 'heard') return { turn: next, readHz: series.hz };
  return { turn: next, ...(series.state === 'again' && { aloud: series.often ? next.sentence : 'Again.' }) };
}

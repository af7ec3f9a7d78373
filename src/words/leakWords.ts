import type { LeakJudgement } from '../mechanics/leak/leakState.ts';
import type { LookReason } from '../mechanics/leak/nextLook.ts';
import { numberText } from '../mechanics/numberText.ts';

/** Bands of loss a day, share of the pressure. Own proposal. */
const LOSSES: readonly { above: number; words: string }[] = [
  { above: 0.5, words: 'look for the hole' },
  { above: 0.1, words: 'not finished sealing' },
  { above: 0.03, words: 'top up before rides' },
];

const percent = (share: number) => `${numberText(share * 100, share < 0.1 ? 1 : 0)} %`;

const early: Record<NonNullable<LeakJudgement['because']>, string> = {
  few: 'Too early to tell: three readings are needed',
  'not-proven': 'Too early to tell: no loss beyond the error of the gauge yet',
  scatter: 'The readings do not agree: use one gauge, note the temperature',
};

/**
 * The state of a seal in one line, no more than its readings prove.
 * @example leakStateWords({ state: 'too-early', because: 'few', rates: [] }) //=> 'Too early to tell: three readings are needed'
 */
export function leakStateWords({ state, because, perDay }: LeakJudgement): string {
  switch (state) {
    case 'too-early':
      return early[because ?? 'few'];
    case 'holding':
      return `Holding: loses at most ${percent(Math.max(0, perDay?.atMost ?? 0))} a day`;
    case 'sealing':
      return 'Sealing: it loses less each time';
    case 'worsening':
      return 'Getting worse: look for the leak now';
    case 'steady': {
      const mid = perDay?.mid ?? 0;
      const advice = LOSSES.find(({ above }) => mid > above)?.words;
      return `Steady leak: ${percent(mid)} a day${advice ? `, ${advice}` : ''}`;
    }
  }
}

/** Why a look is suggested for that time. */
export const lookReasonWords: Record<LookReason, string> = {
  routine: 'first day: 2 h, 6 h, then overnight',
  'drop-shows-then': 'by then a loss would show on the gauge',
  'half-way': 'half the time to the riding pressure',
  settling: 'by then the next drop would show',
  holds: 'it holds; once more after three days',
  grows: 'the leak is growing',
  'read-again': 'the readings do not agree',
  below: 'it may be below the riding pressure now',
};

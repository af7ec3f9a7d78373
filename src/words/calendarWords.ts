import type { Duty } from '../journal/answers.ts';
import type { DistanceUnit } from '../mechanics/units.ts';
import { dueWords } from './dueWords.ts';
import { leftText } from './leftText.ts';
import { overWord } from './waitWords.ts';

/**
 * What the phone's calendar says when something falls due: the bike and the thing in a line, then what to do.
 * @param unit the person's own for distance
 * @example calendarWords({ is: 'wait', kind: 'seal', title: 'Rear tyre', bikeName: 'Magpie', left: {}, … }, 'km').summary
 *   //=> 'Magpie: Seal: Rear tyre'
 */
export function calendarWords(
  duty: Pick<Duty, 'is' | 'kind' | 'title' | 'bikeName' | 'left' | 'dueAtMs'>,
  unit: DistanceUnit,
): { summary: string; description: string } {
  const { bikeName, left, dueAtMs, is, kind } = duty;
  const counted = left.rides !== undefined || left.km !== undefined;
  const words = [
    is === 'wait'
      ? overWord(kind)
        ? 'Curing time over.'
        : 'Time is up. Look at it and log what you find.'
      : '',
    counted ? `${leftText(left, unit)}, if that comes sooner.` : '',
    counted && dueAtMs === undefined ? 'The date is estimated from how often you ride.' : '',
    'From Pinchbolt. If the time changes there, add it to the calendar again. When done, delete this entry.',
  ];
  return {
    summary: [bikeName, dueWords(duty)].filter((word) => word !== '').join(': '),
    description: words.filter((word) => word !== '').join('\n'),
  };
}

/**
 * What became of the file for the calendar. Nothing more is promised than that: the calendar rings, not this app.
 * @param events how many were in it
 * @example calendarOutcome('saved', 1) //=> 'Saved. Open the file to add it; the calendar rings, not this app.'
 */
export function calendarOutcome(was: 'shared' | 'saved' | 'closed' | 'none', events: number): string {
  if (was === 'none') return 'Nothing is due later.';
  if (was === 'closed') return 'Not added.';
  const [these, them] = events === 1 ? ['', 'it'] : [` with ${events} entries`, 'them'];
  return was === 'saved'
    ? `Saved${these}. Open the file to add ${them}; the calendar rings, not this app.`
    : `Handed over${these}. The calendar rings, not this app.`;
}

import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf, traitOf } from '../faces/reading.ts';
import { standardOf } from '../faces/standardOf.ts';
import type { Judgement } from '../verdict.ts';
import { sizedRule } from './sized.ts';

const practice = { source: 'common practice, no source: limits are our own', known: 'proposal' } as const;

/** One step of the seatpost sizes; more metal than that is not a matter of a reamer. */
const REAM_MOST_MM = 0.25;

function railsInHead(head: Face, saddle: Face): Judgement {
  const [headRow, saddleRow] = [standardOf(head), standardOf(saddle)];
  if (!headRow || !saddleRow)
    return unknown('Not known yet: how the saddle is clamped.', [
      ...(headRow ? [] : [askFor(head, 'standard')]),
      ...(saddleRow ? [] : [askFor(saddle, 'standard')]),
    ]);
  if (headRow.id !== saddleRow.id)
    return {
      meets: 'no',
      because: `The saddle is clamped by ${saddleRow.label}, the post head is made for ${headRow.label}.`,
    };
  for (const key of ['railMm', 'railHeightMm']) {
    const room = readingOf(head, key);
    const rail = readingOf(saddle, key);
    // Nearly every two-rail head takes 7 round; only a head that says otherwise is held to it.
    if (room && rail && Math.abs(room.mid - rail.mid) > 0.5)
      return {
        meets: 'no',
        because: `The head takes rails of ${mmText(room.mid)}, these are ${mmText(rail.mid)}.`,
      };
  }
  return { meets: 'yes', because: `Saddle and post head are both made for ${headRow.label}.` };
}

/** Seatpost, its clamp, and the saddle. */
export const seatRules: readonly Rule[] = [
  sizedRule({
    topic: 'post-in-seat-tube',
    hole: ['seat-tube', 'boreMm', 'seat tube'],
    rod: ['post', 'diameterMm', 'post'],
    gap: [0, 0.1],
    risk: 'Measure minimum insertion from where the tube really holds the post.',
    ...practice,
    tight: (tube, _post, { hole, rod }) =>
      rod.mid - hole.mid <= REAM_MOST_MM && traitOf(tube, 'material') !== 'carbon'
        ? {
            oneWay: [
              {
                change: 'ream-bore',
                faceId: tube.faceId,
                key: 'boreMm',
                before: hole.mid,
                after: rod.mid,
                sideEffects: [`The tube loses ${mmText((rod.mid - hole.mid) / 2)} of wall.`],
                caution: 'A reamer in a sound steel tube only; a qualified frame builder does it in minutes.',
                ...practice,
              },
            ],
          }
        : {},
  }),
  sizedRule({
    topic: 'seat-clamp-on-tube',
    hole: ['seat-clamp', 'boreMm', 'seat clamp'],
    rod: ['seat-tube-outside', 'diameterMm', 'seat tube'],
    gap: [-0.1, 0.3],
    risk: 'A clamp too wide is pulled out of round before it holds.',
    ...practice,
  }),
  {
    topic: 'saddle-on-post',
    first: 'post-head',
    second: 'saddle-mount',
    risk: 'A rail in the wrong jaw breaks or slips.',
    source: 'two riders’ pages on saddle mounts; seller’s article on saddle rails',
    known: 'seen',
    judge: railsInHead,
  },
];

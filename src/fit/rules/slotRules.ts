import { slotFiling } from '../../standards/interfaces/axles.ts';
import { mmText, type Rule } from '../bridges/rule.ts';
import { traitOf } from '../faces/reading.ts';
import { sizedRule } from './sized.ts';

/** Beyond this the end has not enough metal left beside the axle. */
const FILE_MOST_MM = 4;
/** Air an axle needs to slide in its slot, mm, whatever the caliper was off. Own judgement. */
const AIR_MM = 0.1;

/** Axles in slots. */
export const slotRules: readonly Rule[] = [
  sizedRule({
    topic: 'axle-in-slot',
    hole: ['axle-slot', 'widthMm', 'slot'],
    rod: ['axle', 'diameterMm', 'axle'],
    gap: [0, 0.5],
    risk: 'A loose axle can shift. Losing the front wheel is a very bad crash.',
    source: slotFiling.source,
    known: slotFiling.known,
    special: (slot, axle) => {
      const shape = traitOf(slot, 'shape');
      const type = traitOf(axle, 'type');
      if (shape === 'closed' && type !== undefined && type !== 'through')
        return {
          meets: 'no',
          because: 'A closed dropout takes only a thru-axle.',
          final: true,
        };
      if (shape === 'open' && type === 'through')
        return { meets: 'no', because: 'A thru-axle has nothing to screw into in an open slot.' };
      return undefined;
    },
    tight: (slot, axle, { hole, rod }) => {
      const material = traitOf(slot, 'material');
      const fork = traitOf(slot, 'end') === 'front';
      // What is filed is read again with the same caliper, and the axle has to slide.
      const after = rod.hi + (hole.hi - hole.mid) + AIR_MM;
      const byMm = after - hole.mid;
      const type = traitOf(axle, 'type');
      if (fork || rod.mid - hole.mid > FILE_MOST_MM || type === 'through') return {};
      if (material !== undefined && material !== 'steel') return {};
      return {
        oneWay: [
          {
            change: 'file-slot',
            faceId: slot.faceId,
            key: 'widthMm',
            before: hole.mid,
            after,
            sideEffects: [
              `Each flank loses ${mmText(byMm / 2)}; ${mmText(after - rod.mid)} of play is left beside the axle.`,
            ],
            caution:
              byMm <= slotFiling.cosmeticMm
                ? 'A few strokes on the upper flank keep the axle height equal on both sides.'
                : 'This takes metal the wheel hangs on: thick steel dropouts only, judged by a frame builder first.',
            source: slotFiling.source,
            known: slotFiling.known,
          },
        ],
      };
    },
  }),
];

import type { InterfaceRow, SizeSpan } from '../faces/interfaceRow.ts';

export interface PedalRow extends InterfaceRow {
  hand: { right: 'right'; left: 'left' };
}

const threadNotes = 'touring site’s notes on pedal threads; workshop list of bicycle axle threads';
const thread = (id: string, label: string, diameterMm: SizeSpan, rest: Partial<PedalRow> = {}): PedalRow => ({
  id,
  label,
  faces: { 'pedal-spindle': { diameterMm }, 'pedal-hole': {} },
  hand: { right: 'right', left: 'left' },
  source: threadNotes,
  known: 'seen',
  ...rest,
});

/** Pedal threads. On every bike the right pedal is right-handed and the left one left-handed. */
export const pedals: readonly PedalRow[] = [
  thread('9/16x20', '9/16 in × 20, two- and three-piece cranks', [14.05, 14.3]),
  thread('1/2x20', '1/2 in × 20, one-piece cranks', [12.45, 12.72]),
  thread('m14x1.25', 'M14 × 1.25, old French', [13.75, 14.01], {
    remark: 'Starts in a 9/16 crank and ruins it.',
  }),
];

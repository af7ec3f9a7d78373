import { numberText } from '../../mechanics/numberText.ts';
import type { WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import { onSide } from './wheelWords.ts';

/** A figure that a spoke length needs. */
export type Unmeasured = 'erd' | `${WheelSideName}-${'pcd' | 'flange' | 'line'}`;

/** A figure that may well be another one, typed in the wrong place. */
export type WheelDoubt =
  /** the bead seat of the tyre, which is larger than where spokes end */
  | { doubt: 'erd-is-bead-seat'; beadSeatMm: number }
  /** half the hub's width, or more: the flange lies inside it */
  | { doubt: 'flange-is-half-width'; side: WheelSideName; halfMm: number }
  | { doubt: 'erd-uneven'; spreadMm: number }
  /** holes counted on the parts, and spokes of the wheel */
  | { doubt: 'holes-miscounted'; holes: number; of: 'hub' | 'rim' };

/** What is still to be measured, and how. */
export const unmeasuredWords: Record<Unmeasured, string> = {
  erd: 'Effective rim diameter: two rods of known length in opposite holes, plus the gap between them. Repeat at four places.',
  'left-pcd': 'Left hole circle: outer edge of one hole to the inner edge of the opposite one.',
  'drive-pcd': 'Drive side hole circle: outer edge of one hole to the inner edge of the opposite one.',
  'left-flange': 'Left flange to centre: half the hub width less the distance from locknut to flange.',
  'drive-flange': 'Drive side flange to centre: half the hub width less the distance from locknut to flange.',
  'left-line': 'Left: shortest distance from the axle’s centre to the line of the spoke.',
  'drive-line': 'Drive side: shortest distance from the axle’s centre to the line of the spoke.',
};

/** What a doubtful figure may be. */
export function doubtWords(one: WheelDoubt): string {
  switch (one.doubt) {
    case 'erd-is-bead-seat':
      return `The rim’s bead seat is ${numberText(one.beadSeatMm)} mm. Spokes end well inside it: measure the effective rim diameter.`;
    case 'erd-uneven':
      return `The rim diameters differ by ${numberText(one.spreadMm)} mm. Over 1 mm the rim is out of round, or a reading is wrong.`;
    case 'flange-is-half-width':
      return `Half the hub width is ${numberText(one.halfMm)} mm, and the ${onSide[one.side]} flange lies well inside it. Measure from the middle to the flange.`;
    case 'holes-miscounted':
      return `The ${one.of} has ${one.holes} spoke holes. Check the number of spokes.`;
  }
}

import type { AnyUnit } from '../mechanics/units.ts';
import type { Sourced } from './known.ts';

/** A figure of a rule for products on sale. Shown for comparison; no bike here is claimed to meet it. */
export interface PublishedFigure extends Sourced {
  readonly id: string;
  readonly what: string;
  readonly value: number;
  /** UCUM code; '1' for a plain ratio. */
  readonly unit: AnyUnit | 'm' | '1';
}

const row = (
  id: string,
  section: string,
  value: number,
  unit: PublishedFigure['unit'],
  what: string,
): PublishedFigure => ({
  id,
  what,
  value,
  unit,
  source: `16 CFR ${section}, public copy`,
  known: 'seen',
});

/** US federal bicycle rule. They are loads and distances for factory tests, never loads to try at home. */
export const publishedFigures: readonly PublishedFigure[] = [
  row('rear-retention', '1512.12(a)(1)', 1780, 'N', 'Pull on the rear axle for 30 s without movement'),
  row(
    'front-removal',
    '1512.12(a)(2)',
    17,
    'N.m',
    'Front axle locks hold this much in the loosening direction',
  ),
  row('stopping-distance', '1512.5(b)(1)', 4.57, 'm', 'Stopping distance with hand brakes, at most'),
  row('lever-grip', '1512.5(b)(3)', 89, 'mm', 'Lever grip opening, at most'),
  row(
    'pad-contact-force',
    '1512.5(b)(5)',
    44.5,
    'N',
    'Force at the lever to bring pads to the rim or disc, less than',
  ),
  row('tyre-clearance', '1512.11', 1.6, 'mm', 'Gap between tyre and frame or fork all round, at least'),
  row('rim-side-load', '1512.11', 2000, 'N', 'Side load at the rim that tyre and spokes must withstand'),
  row('frame-load', '1512.14', 890, 'N', 'Load fork and frame together withstand'),
  row('post-mark', '1512.15(b)', 2, '1', 'Post mark, post diameters from its lowest point, at least'),
  row(
    'seat-height',
    '1512.15(a)',
    125,
    'mm',
    'Height of any part of the seat above its surface at the post axis, at most',
  ),
  row('road-test-distance', '1512.17(a)', 6.4, 'km', 'Road test without anything working loose'),
  row('road-test-rider', '1512.17(a)', 68.1, 'kg', 'Rider of the road test, at least'),
  row('lean', '1512.17(c)', 25, 'deg', 'Lean with the crank low before a pedal touches the ground, at least'),
  row('toe-clearance', '1512.17(d)', 89, 'mm', 'Pedal centre to front tyre or mudguard, at least'),
  row('chain-strength', '1512.8', 8010, 'N', 'Pull the chain withstands'),
];

/** Why the figures above are only a yardstick. */
export const publishedFiguresCaution =
  'These figures are for bikes in commerce, tested in a factory; a home build of bought parts is compared with them, never certified by them. Do not try the loads.';

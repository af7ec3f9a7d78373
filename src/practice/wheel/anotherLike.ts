import type { WheelAbout } from '../../journal/aboutWheels.ts';
import type { WheelRow } from '../../journal/rows.ts';

/**
 * A second wheel with the sizes and the lacing of the first. Parts and what was bought are its own.
 * @param wheel the first
 * @param names of all wheels, so that the new one is told from them
 * @example anotherLike(rear, ['Rear']).name //=> 'Rear 2'
 */
export function anotherLike(wheel: WheelRow, names: readonly string[]): WheelAbout {
  const { name, position, drilling, pairGapDeg, pairsLean, head, leftSide, driveSide, firstSide } = wheel;
  const { erds, erdEnd, erdToEnd, hubHole, rimOffset, stagger, target, limit, gauge, ear } = wheel;
  const bare = ({ bought: _bought, ...side }: WheelAbout['leftSide']) => side;
  const root = name.replace(/ \d+$/, '');
  let count = 2;
  while (names.includes(`${root} ${count}`)) count++;
  const optional = { position, pairGapDeg, pairsLean, erds, erdEnd, erdToEnd, hubHole };
  const more = { rimOffset, stagger, target, limit, gauge, ear };
  return {
    ...{ name: `${root} ${count}`, parts: [], drilling, head, firstSide },
    ...{ leftSide: bare(leftSide), driveSide: bare(driveSide) },
    ...Object.fromEntries(
      Object.entries({ ...optional, ...more }).filter(([, value]) => value !== undefined),
    ),
  };
}

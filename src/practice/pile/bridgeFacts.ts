import type { Bridge } from '../../fit/bridges/bridge.ts';
import type { Link } from '../../fit/bridges/links.ts';
import type { Face } from '../../fit/faces/face.ts';
import { readingOf } from '../../fit/faces/reading.ts';
import { numberText } from '../../mechanics/numberText.ts';

/** What is round about a face. */
const ROUND = ['diameterMm', 'boreMm'] as const;

const roundMm = (face: Face): number | undefined =>
  ROUND.map((key) => readingOf(face, key)?.mid).find((size) => size !== undefined);

/**
 * The wall of a shim or sleeve: half of what its outside is wider than its inside.
 * @returns mm, or undefined for a piece that is no tube or has not been measured
 * @example wallMm(barShimLink) //=> 2.9
 */
export function wallMm({ adapter, near, far }: Link): number | undefined {
  if (adapter.sort === 'adapter') return undefined;
  const [one, other] = [roundMm(near), roundMm(far)];
  return one === undefined || other === undefined ? undefined : Math.abs(one - other) / 2;
}

/** Plain sentences about a bridge: its pieces in order, what each is, what else moves. */
export function bridgeFacts(bridge: Bridge): string[] {
  const { links, spacers, oneWay, reversible } = bridge;
  const pieces = links.map((link, at) => {
    const wall = wallMm(link);
    const place = links.length > 1 ? `${at + 1} of ${links.length}: ` : '';
    const from = link.adapter.partId === null ? 'to buy or make' : 'already there';
    return `${place}${link.adapter.label}${wall === undefined ? '' : `, wall ${numberText(wall, 2)} mm`}, ${from}.`;
  });
  const rings = spacers
    ? [`${spacers.driveCount + spacers.otherCount} rings, ${numberText(spacers.thicknessMm, 2)} mm each.`]
    : [];
  return [
    ...pieces,
    ...rings,
    ...(oneWay?.sideEffects ?? []),
    ...new Set(links.map(({ adapter }) => adapter.caution)),
    ...(oneWay ? [oneWay.caution] : reversible ? [] : ['It does not come out again without damage.']),
  ];
}

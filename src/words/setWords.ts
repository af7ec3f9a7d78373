import type { CompleteSet, PlaceToBuy } from '../fit/sets/completeSets.ts';
import { bikeSlots, brakeSlots, slotLabel } from '../fit/sets/setSlots.ts';
import { numberText } from '../mechanics/numberText.ts';
import { sentenceCase } from './sentenceCase.ts';

const counted = (count: number, one: string, many: string): string =>
  count === 0 ? '' : `${count} ${count === 1 ? one : many}`;

/**
 * What speaks against a set, in one line.
 * @example costWords({ missing: [], cost: { oneWayCount: 1, bridgeCount: 4, openCount: 0, … }, … }) //=> '1 change for good, 4 bridges'
 */
export function costWords({ missing, cost, massG }: CompleteSet): string {
  const { oneWayCount, bridgeCount, openCount } = cost;
  const against = [
    counted(missing.length, 'part missing', 'parts missing'),
    counted(oneWayCount, 'permanent change', 'permanent changes'),
    counted(bridgeCount, 'bridge', 'bridges'),
    counted(openCount, 'open question', 'open questions'),
    massG === null ? '' : `${numberText(massG / 1000, 2)} kg`,
  ].filter(Boolean);
  return against.join(', ') || 'fits as it is';
}

/** The name of a place. @example slotWords('rim-rear') //=> 'Rim, rear' */
export function slotWords(slot: string): string {
  const row = bikeSlots.find((one) => one.slot === slot);
  return sentenceCase(row ? slotLabel(row) : slot);
}

/**
 * What has to be bought for a place: of a pair only what is not at hand.
 * @example buyWords({ slot: 'rotor-caliper-front', kinds: ['caliper'], wanted: [] }) //=> 'Brake caliper, front'
 */
export function buyWords({ slot, kinds }: PlaceToBuy): string {
  const row = bikeSlots.find((one) => one.slot === slot);
  return sentenceCase(row ? slotLabel({ ...row, kinds }) : slot);
}

/**
 * Ends of a bike whose brake was not judged: there is no disc mount, and brakes of other kinds have no faces
 * here.
 * @example unjudgedBrakes(set) //=> ['rear']
 */
export function unjudgedBrakes({ filled, missing }: Pick<CompleteSet, 'filled' | 'missing'>): string[] {
  return brakeSlots
    .filter(({ slot }) => !missing.includes(slot) && !filled.some((one) => one.slot === slot))
    .flatMap(({ position }) => position ?? []);
}

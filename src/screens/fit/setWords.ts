import type { CompleteSet } from '../../fit/completeSets.ts';
import { rollingSlots, slotLabel } from '../../fit/setSlots.ts';
import { sentenceCase } from '../part/sentenceCase.ts';
import { numberText } from '../quantityText.ts';

const counted = (count: number, one: string, many: string): string =>
  count === 0 ? '' : `${count} ${count === 1 ? one : many}`;

/**
 * What speaks against a set, in one line.
 * @example costWords({ missing: [], cost: { oneWayCount: 1, bridgeCount: 4, openCount: 0, … }, … }) //=> '1 change for good, 4 bridges'
 */
export function costWords({ missing, cost, massG }: CompleteSet): string {
  const { oneWayCount, bridgeCount, openCount } = cost;
  const told = [
    counted(missing.length, 'place empty', 'places empty'),
    counted(oneWayCount, 'change for good', 'changes for good'),
    counted(bridgeCount, 'bridge', 'bridges'),
    counted(openCount, 'open question', 'open questions'),
    massG === null ? '' : `${numberText(massG / 1000, 2)} kg`,
  ].filter(Boolean);
  return told.join(', ') || 'fits as it is';
}

/** The name of a place. @example slotWords('rim-rear') //=> 'Rim, rear' */
export function slotWords(slot: string): string {
  const row = rollingSlots.find((one) => one.slot === slot);
  return sentenceCase(row ? slotLabel(row) : slot);
}

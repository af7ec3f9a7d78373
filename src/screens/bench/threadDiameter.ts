import type { Fastener } from '../../journal/entries.ts';
import { threads } from '../../standards/threads.ts';

/** "M5", "M 5 x 0,8", "m6×1": the diameter stands behind the letter. */
const metric = /^\s*M\s*(\d+(?:[.,]\d+)?)/i;

function diameterMm(thread: string): number | undefined {
  const row = threads.find(({ id, label }) => id === thread || label === thread);
  if (row) return row.diameterMm;
  const digits = metric.exec(thread)?.[1];
  const mm = digits === undefined ? 0 : Number(digits.replace(',', '.'));
  return mm > 0 ? mm : undefined;
}

/**
 * The thread diameter to judge a torque by. Where bolts of several sizes share a joint nobody knows which one
 * the figure was for, so none is given.
 * @param fasteners those of the joint
 * @returns nominal diameter, mm, or undefined where it is unknown or not one
 * @example threadDiameterMm([{ thread: 'M5', count: 4, hand: 'right' }]) //=> 5
 */
export function threadDiameterMm(fasteners: readonly Pick<Fastener, 'thread'>[]): number | undefined {
  const sizes = new Set(fasteners.map(({ thread }) => diameterMm(thread)));
  const [only] = sizes;
  return sizes.size === 1 ? only : undefined;
}

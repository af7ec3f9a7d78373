import { threadNamed } from './threads.ts';

/** "M7", "m 7 x 1": a metric thread that stands in no table still tells its diameter. */
const metric = /^\s*M\s*(\d+(?:[.,]\d+)?)/i;

function diameterMm(thread: string): number | undefined {
  const row = threadNamed(thread);
  if (row) return row.diameterMm;
  const digits = metric.exec(thread)?.[1];
  const mm = digits === undefined ? 0 : Number(digits.replace(',', '.'));
  return mm > 0 ? mm : undefined;
}

/**
 * The thread diameter to judge a torque by. Where bolts of several sizes share a joint it is not known which
 * one the figure was for, so none is given.
 * @param fasteners those of the joint
 * @returns nominal diameter, mm, or undefined where it is unknown or not one
 * @example threadDiameterMm([{ thread: 'M5' }]) //=> 5
 */
export function threadDiameterMm(fasteners: readonly { thread: string }[]): number | undefined {
  const sizes = new Set(fasteners.map(({ thread }) => diameterMm(thread)));
  const [only] = sizes;
  return sizes.size === 1 ? only : undefined;
}

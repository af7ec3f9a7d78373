import { writeFerry } from './demoFerry.ts';
import { writeMagpie } from './demoMagpie.ts';
import { type DemoLine, demoPen } from './demoPen.ts';

/**
 * The whole demo as data: two invented bikes, seven months of lines in the order they are given. Every id is
 * chosen here, so the list needs no answers on the way.
 * @param nowMs the instant the demo ends at, ms UTC; its days are counted back in the phone's zone
 * @example demoLines(Date.UTC(2026, 10, 25, 15))[2].command.type //=> 'start-bike'
 */
export function demoLines(nowMs: number): DemoLine[] {
  const lines: DemoLine[] = [];
  const pen = demoPen(nowMs, lines);
  writeFerry(pen);
  writeMagpie(pen);
  return lines;
}

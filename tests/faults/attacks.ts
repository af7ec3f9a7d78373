import { demo } from './attacks/demo.ts';
import { kills } from './attacks/kills.ts';
import { sorting } from './attacks/sorting.ts';
import type { Attack } from './ground.ts';

export { selfTest } from './attacks/selfTest.ts';

/** In the order in which they run. */
export const attacks: readonly Attack[] = [kills, sorting, demo];

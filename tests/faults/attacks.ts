import { clocks } from './attacks/clocks.ts';
import { demo } from './attacks/demo.ts';
import { disk } from './attacks/disk.ts';
import { kills } from './attacks/kills.ts';
import { sorting } from './attacks/sorting.ts';
import { tabs } from './attacks/tabs.ts';
import { tails } from './attacks/tails.ts';
import type { Attack } from './ground.ts';

export { selfTest } from './attacks/selfTest.ts';

/** In the order in which they run. */
export const attacks: readonly Attack[] = [tabs, clocks, disk, sorting, demo, kills, tails];

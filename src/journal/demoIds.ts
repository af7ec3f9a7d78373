import type { Id } from './entries.ts';

/** Ids of what the demo brings begin with this, so that it can be told from what is the person's own. */
export const DEMO = 'demo-';

export const isDemo = (id: Id): boolean => id.startsWith(DEMO);

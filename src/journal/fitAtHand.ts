import type { openInPile } from '../fit/openInPile.ts';

export type OpenInPile = typeof openInPile;

/**
 * The fit check for the code that says what is open on a bike. It is large and seldom wanted, so it is loaded only then,
 * and handed to a decision like the clock: a decision waits for nothing.
 */
export const fitAtHand = async (): Promise<OpenInPile> => (await import('../fit/openInPile.ts')).openInPile;

import { visible } from './checks/field.ts';

/** Longest name of a phone, in signs. */
export const PHONE_NAME_SIGNS = 40;

/**
 * The name of a phone as entries carry it.
 * @param typed what was typed, if anything was
 * @returns undefined where there is nothing to read in it
 * @example phoneName('  Bench phone ') //=> 'Bench phone'
 */
export function phoneName(typed: string | undefined): string | undefined {
  if (typed === undefined || !visible(typed)) return undefined;
  return [...typed.trim()].slice(0, PHONE_NAME_SIGNS).join('').trim();
}

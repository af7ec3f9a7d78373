import type { AnyUnit, Typed } from '../../mechanics/units.ts';
import type { Refusal } from '../commands.ts';

/** Why a value may not enter the journal; nothing when it may. */
export type Wrong = { refused: Refusal; about?: string } | undefined;
export type Check = (value: unknown) => Wrong;

const wrong = (refused: Refusal, about?: string): Wrong =>
  about === undefined ? { refused } : { refused, about };

/** Letters, digits, signs: something a person can see. Spaces, joiners and direction marks alone are nothing. */
const VISIBLE = /[\p{L}\p{N}\p{P}\p{S}]/u;

/** Longer than a screen of typing; beyond it something was pasted by mistake. Own judgement. */
const MOST_WORDS = 4000;
const MOST_NAME = 200;
const MOST_ID = 200;

/** Whether a person would see anything of it. @example visible('\u200b ') //=> false */
export const visible = (text: string): boolean => VISIBLE.test(text);

/** Text, which may be empty. */
export const text: Check = (value) => {
  if (typeof value !== 'string') return wrong('malformed');
  return value.length > MOST_WORDS ? wrong('too-long', `${value.length}`) : undefined;
};

/** Text that says something. */
export const sentence: Check = (value) =>
  text(value) ?? (visible(value as string) ? undefined : wrong('words-missing'));

/** A name: short, and something to be seen. */
export const name: Check = (value) => {
  if (typeof value !== 'string') return wrong('malformed');
  if (value.length > MOST_NAME) return wrong('too-long', `${value.length}`);
  return visible(value) ? undefined : wrong('name-missing');
};

/** A short text that may be empty, such as a label. */
export const short: Check = (value) =>
  typeof value !== 'string'
    ? wrong('malformed')
    : value.length > MOST_NAME
      ? wrong('too-long', `${value.length}`)
      : undefined;

export const reason: Check = (value) =>
  text(value) ?? (visible(value as string) ? undefined : wrong('reason-missing'));

export const id: Check = (value) =>
  typeof value === 'string' && value !== '' && value.length <= MOST_ID ? undefined : wrong('malformed');

export const flag: Check = (value) => (typeof value === 'boolean' ? undefined : wrong('malformed'));

/**
 * A number within a range.
 * @param least where the range begins; a value below it is `not-positive` when the range begins at 0 or above
 * @example amount(0, 10)(11) //=> { refused: 'absurd-value', about: '11' }
 */
export function amount(least: number, most: number, { above = false } = {}): Check {
  return (value) => {
    if (typeof value !== 'number' || !Number.isFinite(value)) return wrong('not-a-number');
    if (value < least || (above && value === least))
      return least >= 0 && value <= 0 ? wrong('not-positive') : wrong('absurd-value', String(value));
    return value > most ? wrong('absurd-value', String(value)) : undefined;
  };
}

/** A whole number within a range. */
export function whole(least: number, most: number, refused: Refusal = 'absurd-value'): Check {
  return (value) =>
    typeof value === 'number' && Number.isInteger(value) && value >= least && value <= most
      ? undefined
      : wrong(refused, String(value));
}

/** An instant, ms UTC: within what a calendar of ours may hold. */
export const instant: Check = amount(-62_135_596_800_000, 253_402_300_799_000);

/** One of the words of a union; the record makes the compiler ask for each of them. */
export function oneOf<T extends string>(words: Record<T, unknown>): Check {
  return (value) =>
    typeof value === 'string' && Object.hasOwn(words, value) ? undefined : wrong('malformed', String(value));
}

/**
 * A quantity as typed, in one of the units, within a range that is given per unit.
 * @param ranges least and most for each unit
 */
export function quantity<U extends AnyUnit>(
  ranges: Record<U, readonly [least: number, most: number]>,
  { above = false } = {},
): Check {
  return (value) => {
    const { value: figure, unit, typed } = (value ?? {}) as Partial<Typed<U>>;
    if (unit === undefined || !Object.hasOwn(ranges, unit) || typeof typed !== 'string')
      return wrong('malformed');
    if (typed.length > MOST_NAME) return wrong('too-long', `${typed.length}`);
    const [least, most] = ranges[unit];
    const found = amount(least, most, { above })(figure);
    return found?.refused === 'absurd-value' ? wrong('absurd-value', typed) : found;
  };
}

export function list(check: Check, most: number): Check {
  return (value) => {
    if (!Array.isArray(value)) return wrong('malformed');
    if (value.length > most) return wrong('too-long', `${value.length}`);
    for (const one of value) {
      const found = check(one);
      if (found) return found;
    }
    return undefined;
  };
}

/** What may be left out. */
export const maybe =
  (check: Check): Check =>
  (value) =>
    value === undefined ? undefined : check(value);

/** Fields of an object and nothing else. */
export function object<T extends object>(fields: { [K in keyof Required<T>]: Check }): Check {
  return (value) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return wrong('malformed');
    for (const key of Object.keys(value)) {
      const given = (value as Record<string, unknown>)[key];
      if (given !== undefined && !Object.hasOwn(fields, key)) return wrong('malformed', key);
    }
    for (const [key, check] of Object.entries<Check>(fields)) {
      const found = check((value as Record<string, unknown>)[key]);
      if (found) return found.about === undefined ? { ...found, about: key } : found;
    }
    return undefined;
  };
}

/** Keys and values of a record. */
export function record(key: Check, value: Check, most: number): Check {
  return (given) => {
    if (typeof given !== 'object' || given === null || Array.isArray(given)) return wrong('malformed');
    const pairs = Object.entries(given);
    if (pairs.length > most) return wrong('too-long', `${pairs.length}`);
    for (const [one, other] of pairs) {
      const found = key(one) ?? value(other);
      if (found) return found;
    }
    return undefined;
  };
}

/** The one of several shapes whose word stands in a field. */
export function variants(by: string, shapes: Record<string, Check>): Check {
  return (value) => {
    const word = (value as Record<string, unknown> | null | undefined)?.[by];
    const shape =
      typeof word === 'string' && Object.hasOwn(shapes, word) ? (shapes[word] as Check) : undefined;
    return shape ? shape(value) : wrong('malformed', String(word));
  };
}

/** The value of either check. */
export const either =
  (one: Check, other: Check): Check =>
  (value) =>
    one(value) && other(value);

/** Exactly this value. */
export const exactly =
  (only: unknown): Check =>
  (value) =>
    value === only ? undefined : wrong('malformed');

import type { Described, Unknowable } from '../journal/entries.ts';

const empty = (value: unknown) =>
  value === undefined || value === '' || (Array.isArray(value) && value.length === 0);

/**
 * What a form changes about a thing: the fields that read differently, and those it leaves empty though
 * something is known there.
 * @param known the thing as it is
 * @param said the form as it was read; a field it lacks is empty
 * @param unknowable the fields this form asks for that need not be known
 * @returns nothing at all where the form says what is known anyway
 * @example describedAnew({ name: 'Fork', massG: 8200 }, { name: 'Fork' }, ['massG']) //=> { cleared: ['massG'] }
 */
export function describedAnew<T extends object>(
  known: T,
  said: Partial<T>,
  unknowable: readonly Unknowable<T>[],
): Described<T> {
  const cleared = unknowable.filter((field) => empty(said[field]) && !empty(known[field]));
  const changed = Object.entries(said).filter(([name, value]) => {
    const old = known[name as keyof T];
    if (empty(value)) return !empty(old) && !(cleared as string[]).includes(name);
    return JSON.stringify(old) !== JSON.stringify(value);
  });
  return { ...Object.fromEntries(changed), ...(cleared.length > 0 ? { cleared } : {}) } as Described<T>;
}

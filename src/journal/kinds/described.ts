/** The fields of `from` that belong to `keys` and are present. */
export function pick<T extends object, K extends keyof T>(from: T, keys: K[]): Partial<Pick<T, K>> {
  const picked: Partial<Pick<T, K>> = {};
  for (const key of keys) if (from[key] !== undefined) picked[key] = from[key];
  return picked;
}

/**
 * A row after its thing was described anew: what was cleared is not known any more, what was said stands.
 * @param row the row so far
 * @param entry what was said, and which fields were cleared
 * @param about the fields a description may speak of; nothing else of the row is touched
 * @example described({ name: 'Fork', massG: 8200 }, { cleared: ['massG'] }, ['name', 'massG']) //=> { name: 'Fork' }
 */
export function described<T extends object, R extends T>(
  row: R,
  entry: Partial<T> & { cleared?: (keyof T)[] },
  about: (keyof T)[],
): R {
  const next = { ...row };
  for (const field of entry.cleared ?? []) if (about.includes(field)) delete next[field];
  return Object.assign(next, pick(entry as T, about));
}

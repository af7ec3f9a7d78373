/** An edit under way: the form as it stood when the edit began, and what the person changed in it since. */
export interface Edit<T> {
  began: T;
  /** By field: what stood there when it was last typed over, and what was typed. */
  typed: { [K in keyof T]?: { from: T[K]; to: T[K] } };
}

/** A field that was changed elsewhere after the edit began. */
export interface ChangedMeanwhile<T, K extends keyof T = keyof T> {
  field: K;
  /** What stands there now. */
  now: T[K];
  /** Whether the person changed the same field, so that saving replaces what stands there now. */
  replaced: boolean;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

type Bag = Record<string, unknown>;
const isBag = (value: unknown): value is Bag =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A list whose members carry an id of their own, as a bag by that id; other lists have no such reading. */
function byId(value: unknown): Bag | undefined {
  if (!Array.isArray(value) || !value.every((one) => isBag(one) && typeof one['faceId'] === 'string'))
    return undefined;
  return Object.fromEntries(value.map((one: Bag) => [one['faceId'], one]));
}

/**
 * What comes of one value that was changed in two places. What only one of them changed stays changed; where both
 * did, the person's own stands. Within objects, and lists of sizes, each part is looked at by itself.
 * @param from what both began with
 * @param now what stands there now
 * @param to what the person typed
 * @example merged({ a: 1, b: 1 }, { a: 1, b: 2 }, { a: 3, b: 1 }) //=> { a: 3, b: 2 }
 */
export function merged<V>(from: V, now: V, to: V): V {
  if (same(from, to)) return now;
  if (same(from, now)) return to;
  const lists = [byId(from), byId(now), byId(to)];
  if (lists.every((list) => list !== undefined)) return Object.values(mergedBags(lists as Bag[])) as V;
  if (isBag(from) && isBag(now) && isBag(to)) return mergedBags([from, now, to]) as V;
  return to;
}

function mergedBags([from = {}, now = {}, to = {}]: Bag[]): Bag {
  const names = [...new Set([...Object.keys(to), ...Object.keys(now)])];
  const both = names.map((name) => [name, merged(from[name], now[name], to[name])] as const);
  return Object.fromEntries(both.filter(([, value]) => value !== undefined));
}

/**
 * The form as it is to be shown: what is known now, with what the person changed laid over it.
 * @param now the thing as it is, as a form
 * @param edit undefined where nothing was typed yet
 * @example formOf({ name: 'Fork', note: 'new' }, undefined) //=> { name: 'Fork', note: 'new' }
 */
export function formOf<T extends object>(now: T, edit: Edit<T> | undefined): T {
  if (!edit) return now;
  const form = { ...now };
  for (const field of Object.keys(edit.typed) as (keyof T)[]) {
    const over = edit.typed[field];
    if (over) form[field] = merged(over.from, now[field], over.to);
  }
  return form;
}

/**
 * The edit after more was typed. A field that reads as it stands is no longer part of it.
 * @returns undefined where nothing of the form differs from what is known
 * @example withTyped({ name: 'Fork' }, undefined, { name: 'Fork' }) //=> undefined
 */
export function withTyped<T extends object>(
  now: T,
  edit: Edit<T> | undefined,
  changed: Partial<T>,
): Edit<T> | undefined {
  const typed: Edit<T>['typed'] = { ...edit?.typed };
  for (const field of Object.keys(changed) as (keyof T)[]) {
    const to = changed[field] as T[typeof field];
    if (same(now[field], to)) delete typed[field];
    else typed[field] = { from: now[field], to };
  }
  return Object.keys(typed).length === 0 ? undefined : { began: edit?.began ?? now, typed };
}

/**
 * What was changed elsewhere since the edit began, so that the form can say so.
 * @example changedMeanwhile({ name: 'Fork' }, undefined) //=> []
 */
export function changedMeanwhile<T extends object>(now: T, edit: Edit<T> | undefined): ChangedMeanwhile<T>[] {
  if (!edit) return [];
  const form = formOf(now, edit);
  return (Object.keys(now) as (keyof T)[])
    .filter((field) => !same(edit.began[field], now[field]))
    .map((field) => ({ field, now: now[field], replaced: !same(form[field], now[field]) }));
}

/**
 * A stored draft as an edit.
 * @returns undefined for anything that is none
 * @example editOf({ began: { name: 'Fork' }, typed: {} })?.began //=> { name: 'Fork' }
 */
export function editOf<T extends object>(stored: unknown): Edit<T> | undefined {
  if (!isBag(stored) || !isBag(stored['began']) || !isBag(stored['typed'])) return undefined;
  const whole = Object.values(stored['typed']).every((over) => isBag(over) && 'to' in over);
  return whole ? (stored as unknown as Edit<T>) : undefined;
}

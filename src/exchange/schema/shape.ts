/** The part of JSON Schema 2020-12 that the entries need. */
export interface Json {
  readonly $ref?: string;
  readonly type?: 'string' | 'number' | 'integer' | 'boolean' | 'array' | 'object' | 'null';
  readonly const?: string | number | boolean;
  readonly enum?: readonly string[];
  readonly pattern?: string;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
  readonly items?: Json;
  readonly maxItems?: number;
  readonly properties?: Readonly<Record<string, Json>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Json | false;
  readonly propertyNames?: Json;
  readonly maxProperties?: number;
  readonly anyOf?: readonly Json[];
}

/**
 * A schema that the compiler holds against a type: a shape of one type is not taken for another, in neither
 * direction, so that a field or a kind of entry that is added to the types and not here does not compile.
 */
export interface Shape<T> {
  readonly json: Json;
  /** Only the compiler sees it. */
  readonly is?: (value: T) => T;
}

/** A field that may be absent. */
export interface Optional<T> {
  readonly optional: Shape<T>;
}

/** A shape for every field of a type; optional where the type says so. */
export type Fields<T> = {
  readonly [K in keyof T]-?: Record<never, never> extends Pick<T, K>
    ? Optional<Exclude<T[K], undefined>>
    : Shape<T[K]>;
};

export const optional = <T>(shape: Shape<T>): Optional<T> => ({ optional: shape });

/** Words that were typed: as long as a person can type, far below what a phone cannot hold. */
export const text: Shape<string> = { json: { type: 'string', maxLength: 1_000_000 } };
/** Ids of things: UUIDs, or the named ones of the demo. */
export const id: Shape<string> = { json: { type: 'string', pattern: '^[A-Za-z0-9_.-]{1,100}$' } };
export const flag: Shape<boolean> = { json: { type: 'boolean' } };

/** A number from `least` to `most`, both included. */
export const figure = (least: number, most: number): Shape<number> => ({
  json: { type: 'number', minimum: least, maximum: most },
});

/** A number above nothing, up to `most`. */
export const above0 = (most: number): Shape<number> => ({
  json: { type: 'number', exclusiveMinimum: 0, maximum: most },
});

/** A whole number from `least` to `most`. */
export const whole = (least: number, most: number): Shape<number> => ({
  json: { type: 'integer', minimum: least, maximum: most },
});

/** One word of a list; the compiler sees to it that none is missing. */
export const oneOf = <T extends string>(words: Record<T, 1>): Shape<T> => ({
  json: { enum: Object.keys(words) },
});

export const exactly = <T extends string | number | boolean>(value: T): Shape<T> => ({
  json: { const: value },
});

export const listOf = <T>(items: Shape<T>): Shape<T[]> => ({
  json: { type: 'array', items: items.json, maxItems: 1000 },
});

export const orNull = <T>(shape: Shape<T>): Shape<T | null> => ({
  json: { anyOf: [{ type: 'null' }, shape.json] },
});

/** A field of whatever type; what it is of has been checked by then. */
type AnyField = { readonly json: Json } | { readonly optional: { readonly json: Json } };

function recordJson(fields: Record<string, AnyField>): Json {
  const properties: Record<string, Json> = {};
  const required: string[] = [];
  for (const [name, field] of Object.entries(fields)) {
    properties[name] = 'optional' in field ? field.optional.json : field.json;
    if (!('optional' in field)) required.push(name);
  }
  return { type: 'object', properties, required, additionalProperties: false };
}

/** An object of known fields and no others. */
export const record = <T extends object>(fields: Fields<T>): Shape<T> => ({
  json: recordJson(fields as Record<string, AnyField>),
});

/** An object whose keys are words of their own. Names that would reach into the language are none. */
export const keyed = <T>(values: Shape<T>): Shape<Record<string, T>> => ({
  json: {
    type: 'object',
    propertyNames: { pattern: '^(?!(__proto__|constructor|prototype)$)[^\\u0000-\\u001f]{1,200}$' },
    additionalProperties: values.json,
    maxProperties: 1000,
  },
});

/** Every field of a type, none of them asked for: for what is described anew. */
export function partly<T>(fields: Fields<T>): Fields<Partial<T>> {
  const all = Object.entries(fields as Record<string, AnyField>);
  return Object.fromEntries(
    all.map(([name, field]) => [name, 'optional' in field ? field : { optional: field }]),
  ) as unknown as Fields<Partial<T>>;
}

/** Objects told apart by the word in one field; a shape for each word the type knows. */
export function variants<T extends object, D extends keyof T & string>(
  by: D,
  each: { [V in T[D] & string]: Fields<Omit<Extract<T, Record<D, V>>, D>> },
): Shape<T> {
  const rows = Object.entries(each) as [string, Record<string, AnyField>][];
  return {
    json: { anyOf: rows.map(([word, fields]) => recordJson({ [by]: exactly(word), ...fields })) },
  };
}

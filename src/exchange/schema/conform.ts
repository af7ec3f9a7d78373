import type { Json } from './shape.ts';

/** Where a value differs from its schema, as a path of fields; undefined where it conforms. */
export type Check = (value: unknown) => string | undefined;

export interface Compiling {
  /** Definitions that `$ref` names. */
  defs: Readonly<Record<string, Json>>;
  /** Kinds of values only: limits of numbers and lengths are passed over. */
  loose?: boolean;
}

/** Found wrong at the value itself; the fields around it put their names before it. */
const HERE = '';

const within = (name: string, fault: string): string => (fault === HERE ? name : `${name}.${fault}`);

/**
 * A schema as a function. It knows the words of JSON Schema that `shape.ts` writes, and throws on others, so
 * that none is passed over. No code is made from text: the page's content policy forbids that, and with it the
 * libraries that do.
 * @throws RangeError for a word that it does not know
 * @example compile({ type: 'integer', minimum: 1 }, { defs: {} })(0) //=> ''
 */
export function compile(json: Json, how: Compiling): Check {
  const made = new Map<string, Check>();
  const build = (part: Json): Check => compileOne(part, how, build, made);
  return build(json);
}

const KNOWN = new Set([
  ...['$ref', 'type', 'const', 'enum', 'pattern', 'minLength', 'maxLength', 'minimum', 'exclusiveMinimum'],
  ...['maximum', 'items', 'maxItems', 'properties', 'required', 'additionalProperties', 'propertyNames'],
  ...['maxProperties', 'anyOf'],
]);

function compileOne(
  json: Json,
  how: Compiling,
  build: (part: Json) => Check,
  made: Map<string, Check>,
): Check {
  for (const word of Object.keys(json))
    if (!KNOWN.has(word)) throw new RangeError(`a word of JSON Schema that is not known here: ${word}`);
  if (json.$ref !== undefined) return compileReference(json.$ref, how, build, made);
  if (json.anyOf) return compileChoice(json.anyOf, build);
  if (json.const !== undefined) return (value) => (value === json.const ? undefined : HERE);
  if (json.enum) {
    const words = new Set<unknown>(json.enum);
    return (value) => (words.has(value) ? undefined : HERE);
  }
  switch (json.type) {
    case 'string':
      return compileText(json, how);
    case 'number':
    case 'integer':
      return compileNumber(json, how);
    case 'boolean':
      return (value) => (typeof value === 'boolean' ? undefined : HERE);
    case 'null':
      return (value) => (value === null ? undefined : HERE);
    case 'array':
      return compileList(json, build);
    case 'object':
      return compileObject(json, build);
    default:
      return json.pattern === undefined ? () => undefined : compileText(json, how);
  }
}

function compileReference(
  ref: string,
  { defs }: Compiling,
  build: (part: Json) => Check,
  made: Map<string, Check>,
): Check {
  const name = ref.slice('#/$defs/'.length);
  const target = defs[name];
  if (!target) throw new RangeError(`no such definition: ${ref}`);
  // Built when it is first met, because definitions may name each other.
  return (value) => {
    let check = made.get(name);
    if (!check) {
      check = build(target);
      made.set(name, check);
    }
    return check(value);
  };
}

function compileText({ pattern, minLength = 0, maxLength }: Json, { loose }: Compiling): Check {
  const shape = pattern === undefined ? undefined : new RegExp(pattern, 'u');
  const most = loose || maxLength === undefined ? Number.POSITIVE_INFINITY : maxLength;
  return (value) => {
    if (typeof value !== 'string') return HERE;
    // The standard counts signs, a string counts halves of some: only a long one need be counted.
    if (value.length > most && [...value].length > most) return HERE;
    if (value.length < minLength) return HERE;
    return shape && !shape.test(value) ? HERE : undefined;
  };
}

function compileNumber(json: Json, { loose }: Compiling): Check {
  const whole = json.type === 'integer';
  const {
    minimum = Number.NEGATIVE_INFINITY,
    exclusiveMinimum = Number.NEGATIVE_INFINITY,
    maximum = Number.POSITIVE_INFINITY,
  } = json;
  return (value) => {
    if (typeof value !== 'number' || !Number.isFinite(value)) return HERE;
    if (whole && !Number.isInteger(value)) return HERE;
    if (loose) return undefined;
    return value >= minimum && value > exclusiveMinimum && value <= maximum ? undefined : HERE;
  };
}

function compileList({ items = {}, maxItems = Number.POSITIVE_INFINITY }: Json, build: Build): Check {
  const check = build(items);
  return (value) => {
    if (!Array.isArray(value) || value.length > maxItems) return HERE;
    for (let at = 0; at < value.length; at += 1) {
      const fault = check(value[at]);
      if (fault !== undefined) return within(String(at), fault);
    }
    return undefined;
  };
}

type Build = (part: Json) => Check;

const isPlainObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function compileObject(json: Json, build: Build): Check {
  const fields = new Map(Object.entries(json.properties ?? {}).map(([name, part]) => [name, build(part)]));
  const required = json.required ?? [];
  const others = json.additionalProperties ? build(json.additionalProperties) : undefined;
  const closed = json.additionalProperties === false;
  const named = json.propertyNames ? build(json.propertyNames) : undefined;
  const most = json.maxProperties ?? Number.POSITIVE_INFINITY;
  return (value) => {
    if (!isPlainObject(value)) return HERE;
    const names = Object.keys(value);
    if (names.length > most) return HERE;
    for (const name of names) {
      if (named && named(name) !== undefined) return HERE;
      const check = fields.get(name);
      if (!check && closed) return name;
      const fault = (check ?? others)?.(value[name]);
      if (fault !== undefined) return within(name, fault);
    }
    for (const name of required) if (!Object.hasOwn(value, name)) return name;
    return undefined;
  };
}

/** The field by whose one word the branches of a choice are told apart, where there is such a field. */
function toldApartBy(branches: readonly Json[]): string | undefined {
  const [first] = branches;
  return Object.keys(first?.properties ?? {}).find((name) =>
    branches.every(({ properties, required }) => {
      const one = properties?.[name]?.const;
      return one !== undefined && required?.includes(name);
    }),
  );
}

function compileChoice(branches: readonly Json[], build: Build): Check {
  const by = toldApartBy(branches);
  if (by === undefined) {
    const checks = branches.map(build);
    return (value) => {
      let last: string | undefined = HERE;
      for (const check of checks) {
        last = check(value);
        if (last === undefined) return undefined;
      }
      return last;
    };
  }
  const each = new Map<unknown, Check>(
    branches.map((branch) => [branch.properties?.[by]?.const, build(branch)]),
  );
  return (value) => {
    if (!isPlainObject(value) || !Object.hasOwn(value, by)) return by;
    const check = each.get(value[by]);
    return check ? check(value) : by;
  };
}

import { ENTRY_VERSION, type EntryBody, type EntryHead } from '../../journal/entries.ts';
import { entryHead, entryShapes, shared } from './entryShapes.ts';
import { type Fields, type Json, variants } from './shape.ts';

type Whole = EntryHead & EntryBody;

const headed = Object.fromEntries(
  Object.entries(entryShapes).map(([type, fields]) => [type, { ...entryHead, ...fields }]),
);

/** An entry of today's version: one shape for each kind of entry. */
export const entryJson: Json = variants<Whole, 'type'>(
  'type',
  headed as unknown as { [T in Whole['type']]: Fields<Omit<Extract<Whole, { type: T }>, 'type'>> },
).json;

/**
 * How much a piece of a schema knows. What must be there counts downwards: a field that may be left out from now on is
 * more that is known.
 * @example wordsIn({ type: 'object', properties: {}, required: ['a'] }) //=> 0
 */
export const wordsIn = (part: unknown): number =>
  typeof part === 'object' && part !== null
    ? Object.entries(part).reduce(
        (sum, [key, one]) => sum + (key === 'required' && Array.isArray(one) ? -one.length : wordsIn(one)),
        0,
      )
    : 1;

let counted: number | undefined;

/**
 * How much the schema of the entries knows, as a number that grows with each kind, field and choice that is added: of two
 * versions of the app the one with more is the newer. Goes into the head of a copy, so that an entry this version does
 * not know can be told from one that no version knows.
 * @example schemaWords() > 1000 //=> true
 */
export function schemaWords(): number {
  counted ??= wordsIn(entryJson) + wordsIn(shared);
  return counted;
}

/**
 * The JSON Schema of a line of the journal, as it goes into every archive, so that a line can be understood
 * and checked without the app.
 * @example entrySchema().$schema //=> the address of JSON Schema 2020-12
 */
export function entrySchema(): Record<string, unknown> {
  return {
    // The name of the standard; nothing ever asks this address for anything.
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: `Pinchbolt journal, one entry, version ${ENTRY_VERSION}`,
    description:
      'Times are milliseconds since 1970-01-01 UTC. Units are UCUM codes. A quantity keeps what was typed. An entry is never changed; a later entry-corrected names it and says what it reads from then on.',
    ...entryJson,
    $defs: shared,
  };
}

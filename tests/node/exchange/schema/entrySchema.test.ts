import { readdirSync, readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../../../src/exchange/schema/conform.ts';
import { entryJson, entrySchema } from '../../../../src/exchange/schema/entrySchema.ts';
import { entryShapes, shared } from '../../../../src/exchange/schema/entryShapes.ts';
import type { Entry } from '../../../../src/journal/entries.ts';
import { upcast } from '../../../../src/journal/upcasts.ts';
import { allEntries } from '../entriesOfEveryKind.ts';

// The outside here is the standard: a kept implementation of JSON Schema 2020-12, strict, as anybody may use it.
const outside = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false }).compile(
  entrySchema(),
);
const check = compile(entryJson, { defs: shared });

const past = new URL('../../../fixtures/logbooks/', import.meta.url);
const pastEntries = readdirSync(past).flatMap((name) => {
  const { stores } = JSON.parse(readFileSync(new URL(name, past), 'utf8')) as {
    stores: { journal: { entry: Entry }[] };
  };
  return stores.journal.map(({ entry }) => upcast(entry));
});

describe('the schema of an entry', () => {
  test.each(allEntries.map((entry) => [entry.type, entry] as const))('%s', (type, entry) => {
    expect(Object.keys(entryShapes)).toContain(type);
    expect(outside(entry), JSON.stringify(outside.errors?.at(0))).toBe(true);
    expect(check(entry)).toBeUndefined();
  });

  test('holds for every entry of every past logbook', () => {
    expect(pastEntries.length).toBeGreaterThan(100);
    expect(pastEntries.filter((entry) => check(entry) !== undefined)).toEqual([]);
    expect(pastEntries.filter((entry) => !outside(entry))).toEqual([]);
  });

  test.each([
    ['a kind that does not exist', { type: 'bike-stolen' }, 'type'],
    ['a field that does not exist', { key: 'settings/app' }, 'key'],
    ['a name that reaches into the language', JSON.parse('{"__proto__":{"is":"bike"}}'), '__proto__'],
    ['a number for words', { name: 5 }, 'name'],
    ['a time that no history can sort', { happenedAtMs: 1e14 }, 'happenedAtMs'],
    ['a phone without a name', { phone: '' }, 'phone'],
    ['a phone with a name that no phone was given', { phone: 'x'.repeat(41) }, 'phone'],
    ['an id with a path in it', { bikeId: '../../b1' }, 'bikeId'],
  ])('refuses %s', (_name, change, where) => {
    const entry = { ...allEntries.find(({ type }) => type === 'bike-started') };
    const changed = Object.defineProperties({ ...entry }, Object.getOwnPropertyDescriptors(change));
    expect(check(changed)).toBe(where);
    expect(outside(changed)).toBe(false);
  });

  test('takes an entry with the name of its phone, and one without', () => {
    const entry = allEntries.find(({ type }) => type === 'bike-started');
    for (const phone of ['B', 'Bench phone', '🔧'.repeat(40)]) {
      expect(check({ ...entry, phone })).toBeUndefined();
      expect(outside({ ...entry, phone })).toBe(true);
    }
    expect(check(entry)).toBeUndefined();
  });

  test('our reading of it agrees with the outside one on entries that were tampered with', () => {
    const values = fc.oneof(
      fc.jsonValue({ maxDepth: 3 }),
      fc.constantFrom(null, -1, 0, 1.5, 1e300, '', 'shelf', [], {}, { value: 1, unit: 'N.m', typed: '1' }),
    );
    fc.assert(
      fc.property(fc.constantFrom(...allEntries), fc.nat(), fc.nat(), values, (entry, at, way, value) => {
        const changed = structuredClone(entry) as unknown as Record<string, unknown>;
        const fields = fieldsOf(changed);
        const [holder, name] = fields[at % fields.length]!;
        if (way % 3 === 0) delete holder[name];
        else if (way % 3 === 1) holder[name] = value;
        else holder[`${name}x`] = value;
        expect(check(changed) === undefined).toBe(outside(changed));
      }),
      { numRuns: 3000 },
    );
  });
});

/** Every field of a value, inner ones too, with the object that holds it. */
function fieldsOf(value: Record<string, unknown>): [Record<string, unknown>, string][] {
  return Object.entries(value).flatMap(([name, inside]) => [
    [value, name] as [Record<string, unknown>, string],
    ...(typeof inside === 'object' && inside !== null ? fieldsOf(inside as Record<string, unknown>) : []),
  ]);
}

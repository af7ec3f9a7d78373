import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comparableText, merge, sameContent } from '../../../../src/exchange/copy/merge.ts';
import type { Entry } from '../../../../src/journal/entries.ts';
import { inOrder } from '../../../../src/journal/order.ts';
import { allEntries, idOf } from '../entriesOfEveryKind.ts';

const [a, b, c] = allEntries as [Entry, Entry, Entry];

/** One entry for each number: phones that exchanged copies hold the very same one. Several share an instant. */
const entry = (number: number): Entry => ({
  ...(allEntries[number % allEntries.length] as Entry),
  id: idOf(number),
  happenedAtMs: 1_777_000_000_000 + (number % 5) * 1000,
});

const journal = fc
  .uniqueArray(fc.nat(60), { maxLength: 40 })
  .map((numbers) => numbers.map((number) => entry(number)));

const entriesOf = (merged: ReturnType<typeof merge>): Entry[] => {
  if ('refused' in merged) throw new Error(merged.refused);
  return merged.entries;
};

describe('merging two journals', () => {
  test('every entry once, in the order that decides', () => {
    expect(merge([a, b], [b, c])).toEqual({ entries: [a, b, c] });
  });

  test('which comes first makes no difference', () => {
    fc.assert(
      fc.property(journal, journal, (one, other) => {
        expect(merge(one, other)).toEqual(merge(other, one));
      }),
    );
  });

  test('three phones: it makes no difference which two meet first', () => {
    fc.assert(
      fc.property(journal, journal, journal, (one, two, three) => {
        const left = merge(entriesOf(merge(one, two)), three);
        expect(left).toEqual(merge(one, entriesOf(merge(two, three))));
      }),
    );
  });

  test('again changes nothing, and nothing is lost', () => {
    fc.assert(
      fc.property(journal, journal, (one, other) => {
        const merged = entriesOf(merge(one, other));
        expect(merge(merged, other)).toEqual({ entries: merged });
        expect(merge(merged, merged)).toEqual({ entries: merged });
        const ids = new Set([...one, ...other].map(({ id }) => id));
        expect(merged.map(({ id }) => id).sort()).toEqual([...ids].sort());
      }),
    );
  });

  test('the order is the instant it happened, then the id, never when it came here', () => {
    fc.assert(
      fc.property(journal, (entries) => {
        const merged = entriesOf(merge(entries, []));
        for (let at = 1; at < merged.length; at += 1) {
          const [before, after] = [merged[at - 1] as Entry, merged[at] as Entry];
          const earlier = before.happenedAtMs < after.happenedAtMs;
          expect(earlier || (before.happenedAtMs === after.happenedAtMs && before.id < after.id)).toBe(true);
          expect(inOrder(before, after)).toBeLessThan(0);
          expect(inOrder(after, before)).toBeGreaterThan(0);
        }
      }),
    );
  });

  test('one id with two contents is refused by name, whichever side it comes from', () => {
    fc.assert(
      fc.property(journal, fc.nat(), (entries, pick) => {
        fc.pre(entries.length > 0);
        const original = entries[pick % entries.length] as Entry;
        const forged = { ...original, zone: 'Europe/Berlin' };
        const refused = { refused: 'same-id-other-content', about: original.id };
        expect(merge(entries, [forged])).toEqual(refused);
        expect(merge([forged], entries)).toEqual(refused);
      }),
    );
  });

  test('fields in another order are the same content', () => {
    const turned = Object.fromEntries(Object.entries(a).reverse()) as unknown as Entry;
    expect(sameContent(a, turned)).toBe(true);
    expect(comparableText(turned)).toBe(comparableText(a));
    expect(merge([a], [turned])).toEqual({ entries: [a] });
  });
});

import * as fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { fromLocalField, toLocalField } from '../../../src/drafts/localDateTime.ts';

const homeZone = process.env['TZ'];
afterAll(() => {
  if (homeZone === undefined) delete process.env['TZ'];
  else process.env['TZ'] = homeZone;
});

describe('examples of the docstrings', () => {
  test('the epoch', () => {
    process.env['TZ'] = 'UTC';
    expect(toLocalField(0, 'date')).toBe('1970-01-01');
  });
  test('an empty field', () => expect(fromLocalField('')).toBeUndefined());
});

// HTML Living Standard, "Dates and times": valid strings look like this; a day that no calendar has is none.
test.each(['2026-02-31', '2026-2-3', '25.11.2026', '2026-11', 'T10:00'])('%j is no date', (text) =>
  expect(fromLocalField(text)).toBeUndefined(),
);

const instants = fc.integer({ min: Date.UTC(1980, 0, 1), max: Date.UTC(2060, 0, 1) });

describe.each(['UTC', 'Pacific/Apia', 'America/Santiago', 'Asia/Kolkata', 'Europe/Berlin'])(
  'in %s',
  (zone) => {
    // The witness is Intl: the Swedish locale writes dates as ISO 8601 does.
    test('an instant is written as Intl writes it', () => {
      process.env['TZ'] = zone;
      const witness = new Intl.DateTimeFormat('sv-SE', {
        dateStyle: 'short',
        timeStyle: 'short',
        timeZone: zone,
      });
      fc.assert(
        fc.property(instants, (atMs) => {
          expect(toLocalField(atMs, 'datetime-local').replace('T', ' ')).toBe(witness.format(atMs));
        }),
      );
    });

    test('what a field shows is read back as itself, for a day alone as some moment of that day', () => {
      process.env['TZ'] = zone;
      fc.assert(
        fc.property(
          instants,
          fc.constantFrom<'date' | 'datetime-local'>('date', 'datetime-local'),
          (atMs, kind) => {
            const text = toLocalField(atMs, kind);
            expect(toLocalField(fromLocalField(text)!, kind)).toBe(text);
          },
        ),
      );
    });
  },
);

test.each(['0020-03-01', '0002-12-31', '1999-02-28', '2024-02-29'])(
  'the year of %s stays what it is',
  (text) => {
    const atMs = fromLocalField(text);
    expect(atMs === undefined ? '' : toLocalField(atMs, 'date')).toBe(text);
  },
);

import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isoMinute } from '../../../src/exchange/tables/bikeTables.ts';
import { csvText, guarded } from '../../../src/exchange/tables/csv.ts';

describe('a table as CSV', () => {
  // RFC 4180, section 2, rules 1 to 7.
  test.each([
    [
      'rule 1: each row ends in CR LF',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
    ],
    [
      'rule 6: line breaks, commas and quotes are enclosed',
      [['aaa', 'b\r\nbb', 'c,c']],
      'aaa,"b\r\nbb","c,c"\r\n',
    ],
    ['rule 7: a quote is doubled', [['aaa', 'b"bb', 'ccc']], 'aaa,"b""bb",ccc\r\n'],
  ])('%s', (_name, rows, text) => {
    expect(csvText(rows)).toBe(text);
  });

  test('a kept parser reads back what was written, whatever it was', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('=1+1', '"', '\r\n', ' x ', ',,', '-5'),
    );
    const table = fc
      .integer({ min: 1, max: 5 })
      .chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1 }));
    fc.assert(
      fc.property(table, (rows) => {
        const read = parse(csvText(rows), { record_delimiter: '\r\n', relax_column_count: false });
        expect(read).toEqual(rows.map((row) => row.map(guarded)));
      }),
    );
  });

  test.each([
    ['=1+1', "'=1+1"],
    ['=HYPERLINK("x","y")', `'=HYPERLINK("x","y")`],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['+cmd|x', "'+cmd|x"],
    ['-2+3', "'-2+3"],
    ['  =1', "'  =1"],
    ['\t=1', "'\t=1"],
    ['\r5', "'\r5"],
    ['＝1+1', "'＝1+1"],
    ['-5', '-5'],
    ['+5.2', '+5.2'],
    ['5 N·m', '5 N·m'],
    ['', ''],
  ])('%j is written as %j', (cell, written) => {
    expect(guarded(cell)).toBe(written);
  });

  test('no cell begins as a formula', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('=', '+', '-', '@', '\t', ' ', '1', 'a', '\0') }),
        (cell) => {
          expect(guarded(cell)).not.toMatch(/^[\s\0]*[=@]|^[\s\0]*[+-](?!\d+(\.\d+)?$)/);
        },
      ),
    );
  });

  test('a row that does not fit its columns is a mistake of the program', () => {
    expect(() => csvText([['a', 'b'], ['c']])).toThrow(RangeError);
  });

  test.each([
    [0, 'UTC', '1970-01-01 00:00'],
    [Date.UTC(2026, 4, 3, 23, 5), 'Pacific/Apia', '2026-05-04 12:05'],
  ])('%d in %s is %s', (ms, zone, text) => {
    expect(isoMinute(ms, zone)).toBe(text);
  });
});

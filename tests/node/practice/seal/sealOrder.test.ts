import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SealMark } from '../../../../src/journal/entries.ts';
import { nextOfSeal } from '../../../../src/practice/seal/sealOrder.ts';

const bar = (value: number) => ({ value, unit: 'bar' as const, typed: String(value) });
const even: SealMark = { mark: 'seated', dry: true, beadLine: 'even' };
const sealant: SealMark = {
  mark: 'sealant',
  sealantKind: 'latex',
  amount: { value: 60, unit: 'mL', typed: '60' },
};
const shaken: SealMark = { mark: 'spun-and-shaken' };
const left: SealMark = { mark: 'laid-left' };
const right: SealMark = { mark: 'laid-right' };
const soaped: SealMark = { mark: 'soaped', bubbles: 'none' };
const read: SealMark = { mark: 'reading', reading: { pressure: bar(2.4) } };
const burped: SealMark = { mark: 'burped' };
const verdict = (said: Extract<SealMark, { mark: 'verdict' }>['verdict']): SealMark => ({
  mark: 'verdict',
  verdict: said,
});
const round = [even, sealant, shaken, left, right, soaped];

describe('what comes next at a tyre (common practice, no source: dry first, shaken, both sides, soap, readings)', () => {
  test.each<[SealMark[], 'none' | 'running' | 'over', string]>([
    [[], 'none', 'seated'],
    [[even], 'none', 'sealant'],
    [[even, sealant], 'none', 'spun-and-shaken'],
    [[even, sealant, shaken], 'none', 'laid-left'],
    [[even, sealant, shaken, left], 'running', 'laid-right'],
    [[even, sealant, shaken, left, right], 'none', 'soaped'],
    [round, 'none', 'reading'],
    [round, 'running', 'wait'],
    [[...round, read], 'running', 'wait'],
    [[...round, read], 'over', 'reading'],
    [[...round, read], 'none', 'verdict'],
    [[...round, read, verdict('still-sealing')], 'none', 'reading'],
    [[...round, read, verdict('leaks')], 'none', 'soaped'],
    [[...round, read, verdict('will-not-seat')], 'none', 'seated'],
    [[...round, read, verdict('holds')], 'none', 'settled'],
  ])('%j with a look %s asks for %s', (marks, look, next) => {
    expect(nextOfSeal(marks, look, true)).toBe(next);
  });

  test('an uneven bead line is no seat: it is seated again before any sealant', () => {
    expect(nextOfSeal([{ mark: 'seated', dry: true, beadLine: 'uneven' }], 'none', true)).toBe('seated');
  });

  test.each([
    ['fresh sealant', sealant, 'spun-and-shaken'],
    ['a burp', burped, 'soaped'],
    ['a new dry seating', even, 'sealant'],
  ])('%s undoes the judgement that it holds', (_, mark, next) => {
    expect(nextOfSeal([...round, read, verdict('holds'), mark], 'none', true)).toBe(next);
  });

  test('a routine reading or pump-up leaves the judgement standing', () => {
    const held = [...round, read, verdict('holds')];
    expect(nextOfSeal([...held, read], 'none', true)).toBe('settled');
    const pumped: SealMark = { mark: 'pumped', reading: { pressure: bar(2.5) } };
    expect(nextOfSeal([...held, pumped], 'none', true)).toBe('settled');
  });

  test('a tyre with a tube is seated, read and judged', () => {
    expect(nextOfSeal([], 'none', false)).toBe('seated');
    expect(nextOfSeal([even], 'none', false)).toBe('reading');
    expect(nextOfSeal([even, read], 'none', false)).toBe('verdict');
  });

  test('whatever was marked before, a look that is over asks for a reading, and only a verdict settles it', () => {
    const anyMark = fc.constantFrom(...round, read, burped, verdict('leaks'), verdict('holds'));
    fc.assert(
      fc.property(fc.array(anyMark, { maxLength: 20 }), (marks) => {
        expect(nextOfSeal(marks, 'over', true)).toBe('reading');
        const settled = nextOfSeal(marks, 'none', true) === 'settled';
        if (settled) expect(marks).toContainEqual(verdict('holds'));
      }),
    );
  });
});

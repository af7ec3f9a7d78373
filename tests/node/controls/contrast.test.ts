import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const look = readFileSync(new URL('../../../src/controls/look.css', import.meta.url), 'utf8');

/** The colours of the sheet as it begins: each by day and by night in one line. */
const [usual] = look.split('@media (prefers-contrast: more)');
const paints = (at: 1 | 2) =>
  Object.fromEntries(
    [...usual!.matchAll(/--([a-z]+): light-dark\((#[0-9a-f]{3,8}), (#[0-9a-f]{3,8})\);/g)].map(
      ([, name, day, night]) => [name!, (at === 1 ? day : night)!],
    ),
  );
const day = paints(1);
const night = paints(2);

/** Relative luminance and contrast ratio as defined in WCAG 2.2, "relative luminance" and "contrast ratio". */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high! + 0.05) / (low! + 0.05);
}

test('the formula gives 21 for black on white, as WCAG 2.2 says', () =>
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10));

test('every colour of the page is there by day and by night', () => {
  expect(Object.keys(day)).toEqual(
    expect.arrayContaining(['paper', 'box', 'ink', 'faint', 'red', 'blue', 'wax']),
  );
  expect(Object.keys(night)).toEqual(Object.keys(day));
});

describe.each([
  ['day', day],
  ['night', night],
])('by %s', (_, paint) => {
  // WCAG 2.2 success criterion 1.4.6 (AAA) asks for 7:1; numbers are written in any of these inks.
  test.each(['ink', 'faint', 'red', 'blue', 'stamp', 'form'])('%s stands 7:1 off the paper', (ink) =>
    expect(contrast(paint[ink]!, paint['paper']!)).toBeGreaterThanOrEqual(7),
  );
  test.each(['ink', 'faint'])('%s stands 7:1 off a tinted box', (ink) =>
    expect(contrast(paint[ink]!, paint['box']!)).toBeGreaterThanOrEqual(7),
  );
  // 1.4.3 (AA) for the short words written on a tinted box.
  test.each(['red', 'blue', 'form'])('%s stands 4.5:1 off a tinted box', (ink) =>
    expect(contrast(paint[ink]!, paint['box']!)).toBeGreaterThanOrEqual(4.5),
  );
  // 1.4.11: strokes and edges that mean something, 3:1.
  test.each(['wax', 'blue'])('a stroke of %s stands 3:1 off the paper', (ink) =>
    expect(contrast(paint[ink]!, paint['paper']!)).toBeGreaterThanOrEqual(3),
  );
});

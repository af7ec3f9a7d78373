import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const src = fileURLToPath(new URL('../../src', import.meta.url));
/** The one sheet that names sizes and colours; the other stands in the page before any sheet is there. */
const TOKENS = join('controls', 'look.css');
const AT_REST = 'late.css';

interface Line {
  sheet: string;
  property: string;
  value: string;
}

/** Every declaration of a sheet, in order; custom properties are names of values and not read. */
function declarationsOf(sheet: string, text: string): Line[] {
  const bare = text.replaceAll(/\/\*[\s\S]*?\*\//g, '').replaceAll(/url\("[^"]*"\)/g, 'url()');
  return [...bare.matchAll(/(?<=[{;]\s*)([a-z][\w-]*):\s*([^;{}]+);/g)].map(
    ([, property = '', value = '']) => ({
      sheet,
      property,
      value: value.trim().replaceAll(/\s+/g, ' '),
    }),
  );
}

const sheets = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((path) =>
  path.endsWith('.css'),
);
const lines = sheets
  .filter((path) => path !== TOKENS && path !== AT_REST)
  .flatMap((path) => declarationsOf(path, readFileSync(join(src, path), 'utf8')));
const tokens = readFileSync(join(src, TOKENS), 'utf8');

const SPACE = /^(margin|padding|gap|row-gap|column-gap)/;
const LINE = /^(border|outline)(?!.*(radius|offset|collapse|spacing))/;
const COLOUR = /#[0-9a-f]{3,8}\b|\b(rgb|rgba|hsl|hsla|oklch|oklab|lab|lch|color)\(/i;
const NAMED = /\b(black|white|red|green|blue|gray|grey|orange|yellow|brown|purple|silver|gold|navy|teal)\b/i;

/** Lengths of a value that stand there as a number; what a printer is told in mm and pt is paper's own. */
const lengthsIn = (value: string) =>
  [...value.matchAll(/(?<![\w-])-?\d*\.?\d+(px|rem|em|vw|vh|dvh|cqi)\b/g)].map(([length]) => length);

const strays = (wrong: (line: Line) => boolean) =>
  lines.filter(wrong).map(({ sheet, property, value }) => `${sheet}: ${property}: ${value}`);

describe('sizes and colours are the tokens of look.css', () => {
  test('the sheets are read: there are more than five hundred declarations', () => {
    expect(lines.length).toBeGreaterThan(500);
    expect(declarationsOf('a', '.a { color: #fff; margin: 3px; }')).toEqual([
      { sheet: 'a', property: 'color', value: '#fff' },
      { sheet: 'a', property: 'margin', value: '3px' },
    ]);
  });

  test('a size of text is a token', () => {
    const sized = ({ property, value }: Line) =>
      (property === 'font-size' && !/^(var\(--(type|drawn)-(\d+|mark|beside)\)|inherit)$/.test(value)) ||
      property === 'font';
    // A figure fills its line: its least and its most are tokens.
    const figure = ({ value }: Line) =>
      /^clamp\(var\(--figure-least\), .*cqi.*, var\(--(figure-most|type-\d+)\)\)$/.test(value) ||
      /^max\(var\(--type-\d+\), 0\.36em\)$/.test(value);
    expect(strays((line) => sized(line) && !figure(line))).toEqual([]);
  });

  test('text has one of three weights', () => {
    expect(
      strays(({ property, value }) => property === 'font-weight' && !/^(500|700|800)$/.test(value)),
    ).toEqual([]);
  });

  test('space between things is a token', () => {
    const spaced = ({ property, value }: Line) => SPACE.test(property) && lengthsIn(value).length > 0;
    expect(strays(spaced)).toEqual([]);
  });

  test('a line has one of three widths', () => {
    expect(strays(({ property, value }) => LINE.test(property) && lengthsIn(value).length > 0)).toEqual([]);
  });

  test('a colour is a token', () => {
    expect(
      strays(({ value }) => {
        const free = value.replaceAll(/var\(--[\w-]+\)/g, '');
        return COLOUR.test(free) || NAMED.test(free);
      }),
    ).toEqual([]);
  });

  test('every token that a sheet asks for is named', () => {
    const named = new Set([...tokens.matchAll(/(--[a-z][\w-]*)\s*:/g)].map(([, name]) => name));
    const asked = lines.flatMap(({ sheet, value }) =>
      [...value.matchAll(/var\((--(?:type|drawn|space|line|figure)[\w-]*)/g)].map(([, name = '']) => ({
        sheet,
        name,
      })),
    );
    expect(asked.filter(({ name }) => !named.has(name))).toEqual([]);
  });

  test('the sizes are those of the scale: text grows with the text of the phone', () => {
    const sizes = [...tokens.matchAll(/--type-(\d+): min\(([\d.]+)rem/g)].map(([, px, rem]) => [
      Number(px),
      Number(rem),
    ]);
    expect(sizes.map(([px]) => px)).toEqual([16, 18, 22, 28, 40, 64]);
    for (const [px = 0, rem = 0] of sizes) expect(rem * 16).toBe(px);
    const spaces = [...tokens.matchAll(/--space-(\d+): (\d+)px/g)].map(([, name, px]) => [
      Number(name),
      Number(px),
    ]);
    expect(spaces).toEqual([4, 8, 12, 16, 24, 40].map((px) => [px, px]));
  });
});

/** WCAG 2.2, definition of contrast ratio. */
function contrast(one: string, other: string): number {
  const luminance = (hex: string) => {
    const [r = 0, g = 0, b = 0] = [1, 3, 5].map((from) => {
      const share = Number.parseInt(hex.slice(from, from + 2), 16) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

describe.each([
  ['by day', 1],
  ['by night', 2],
] as const)('the palette, %s', (_light, place) => {
  const colourOf = (name: string) =>
    new RegExp(`--${name}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)`).exec(tokens)?.[place] ?? '';

  test.each([
    ['ink', 'paper'],
    ['ink', 'box'],
    ['faint', 'paper'],
    ['faint', 'box'],
    ['red', 'paper'],
    ['red', 'box'],
    ['blue', 'paper'],
    ['blue', 'box'],
    ['form', 'paper'],
    ['paper', 'main'],
  ])('%s on %s stands at 7:1 or more (WCAG 2.2 SC 1.4.6)', (text, ground) => {
    expect(contrast(colourOf(text), colourOf(ground))).toBeGreaterThanOrEqual(7);
  });
});

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { encodeWithin, fitWithin } from '../../../src/sensing/photo.ts';

describe('examples of the docstrings', () => {
  test('12 megapixels', () => expect(fitWithin(4000, 3000, 1600)).toEqual({ widthPx: 1600, heightPx: 1200 }));
  test('light at once', async () =>
    expect(await encodeWithin(async () => ({ size: 10 }), 1600, 300)).toEqual({ size: 10 }));
});

test('no picture grows, none keeps a longer edge, proportions hold to a pixel', () => {
  const edge = fc.integer({ min: 1, max: 20_000 });
  fc.assert(
    fc.property(edge, edge, (width, height) => {
      const { widthPx, heightPx } = fitWithin(width, height, 1600);
      expect(Math.max(widthPx, heightPx)).toBeLessThanOrEqual(
        Math.max(1, Math.min(1600, Math.max(width, height))),
      );
      expect(Math.min(widthPx, heightPx)).toBeGreaterThanOrEqual(1);
      const factor = Math.min(1, 1600 / Math.max(width, height));
      expect(Math.abs(widthPx - width * factor)).toBeLessThanOrEqual(1);
      expect(Math.abs(heightPx - height * factor)).toBeLessThanOrEqual(1);
    }),
  );
});

test.each([
  [0, 10],
  [10, Number.NaN],
  [10, Number.POSITIVE_INFINITY],
])('%s by %s px is refused', (width, height) =>
  expect(() => fitWithin(width, height, 1600)).toThrow(RangeError),
);

describe('encoding until light enough', () => {
  // A made-up encoder whose files grow with area and quality, as files of every lossy format do.
  const encoder = (bytesPerPixel: number) => {
    const tried: [number, number][] = [];
    const encode = async (longestPx: number, quality: number) => {
      tried.push([longestPx, quality]);
      return { size: longestPx * longestPx * 0.75 * quality * bytesPerPixel, longestPx, quality };
    };
    return { encode, tried };
  };

  test('lowers the quality before the size', async () => {
    const { encode, tried } = encoder(0.25);
    const made = await encodeWithin(encode, 1600, 300_000);
    expect(made?.longestPx).toBe(1600);
    expect(made?.size).toBeLessThanOrEqual(300_000);
    const qualities = tried.map(([, quality]) => quality);
    expect(qualities).toEqual(qualities.toSorted((one, other) => other - one));
  });

  test('then makes it smaller', async () => {
    const made = await encodeWithin(encoder(2).encode, 1600, 300_000);
    expect(made?.longestPx).toBeLessThan(1600);
    expect(made?.size).toBeLessThanOrEqual(300_000);
  });

  test('gives up rather than go on for ever', async () =>
    expect(await encodeWithin(encoder(1e6).encode, 1600, 300_000)).toBeUndefined());

  test('stops when the browser encodes nothing', async () => {
    let asked = 0;
    const nothing = async () => {
      asked++;
      return undefined;
    };
    expect(await encodeWithin(nothing, 1600, 300_000)).toBeUndefined();
    expect(asked).toBe(1);
  });
});

import { expect, test } from 'vitest';
import { away, bendTo, circleAt, lineThrough, tangent } from '../../../../src/drawing/bike/shape.ts';

test('examples of the docstrings', () => {
  expect(lineThrough({ x: 0, y: 0 }, { x: 5, y: 9 })).toBe('M0 0L5 9');
  expect(bendTo({ x: 0, y: 0 }, { x: 5, y: 0 }, { x: 5, y: 9 })).toBe('M0 0Q5 0 5 9');
  expect(circleAt({ x: 9, y: 9 }, 5)).toBe('M4 9a5 5 0 1 0 10 0a5 5 0 1 0 -10 0');
});

test('90 degrees is up, where y grows downwards', () => {
  expect(away({ x: 0, y: 0 }, 10, 90).y).toBeCloseTo(-10, 9);
});

test('a chain touches ring and sprocket: it stands square on both radii (geometry of the outer tangent)', () => {
  const [ring, cog] = [
    { x: 0, y: 0, r: 80 },
    { x: -400, y: 10, r: 34 },
  ] as const;
  for (const side of [1, -1] as const) {
    const [a, b] = tangent(ring, ring.r, cog, cog.r, side);
    expect(Math.hypot(a.x - ring.x, a.y - ring.y)).toBeCloseTo(ring.r, 6);
    expect(Math.hypot(b.x - cog.x, b.y - cog.y)).toBeCloseTo(cog.r, 6);
    expect((a.x - ring.x) * (b.x - a.x) + (a.y - ring.y) * (b.y - a.y)).toBeCloseTo(0, 6);
    expect((b.x - cog.x) * (b.x - a.x) + (b.y - cog.y) * (b.y - a.y)).toBeCloseTo(0, 6);
  }
});

import { describe, expect, test } from 'vitest';
import { caliperShapeFor, caliperShapes } from '../../../../src/controls/figures/caliperShapes.ts';
import { faceKindIds, faceKinds } from '../../../../src/standards/faces/faceKinds.ts';

const sizes = faceKindIds.flatMap((kind) =>
  faceKinds[kind].dimensions.map(({ key, how }) => ({ kind, key, how })),
);

describe('where the caliper goes (common practice, no source: inside jaws in holes, outside jaws on tubes)', () => {
  const worded = sizes.filter(({ how }) => /^(Inside|Outside) jaws/.test(how));

  test('most sizes are told in words that begin with the jaws', () => {
    expect(worded.length).toBeGreaterThan(30);
  });

  test.each(worded)('$kind $key is drawn with the jaws its words name', ({ kind, key, how }) => {
    const shape = caliperShapeFor(kind, key);
    expect(shape && caliperShapes[shape].end).toBe(how.startsWith('Inside') ? 'inside' : 'outside');
  });

  test.each(sizes.filter(({ key }) => /Count$|Bar$/.test(key)))(
    '$kind $key is no size for a caliper',
    (size) => {
      expect(caliperShapeFor(size.kind, size.key)).toBeUndefined();
    },
  );
});

test.each(Object.entries(caliperShapes))(
  '%s: what is measured lies within the drawing',
  (_, { from, to }) => {
    expect(from).toBeGreaterThan(20);
    expect(to).toBeGreaterThan(from);
    expect(to).toBeLessThan(200);
  },
);

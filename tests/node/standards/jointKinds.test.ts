import { describe, expect, test } from 'vitest';
import { type JointKind, jointKindRow, jointKinds, wantsTorque } from '../../../src/standards/jointKinds.ts';

describe('example of the docstring', () => {
  test('a rotor has six bolts', () => expect(jointKindRow('rotor').defaultFastenerCount).toBe(6));

  test('and they want a wrench', () =>
    expect(wantsTorque({ kind: 'rotor', fasteners: [{ thread: 'M5', count: 6 }], targets: [] })).toBe(true));
});

describe('kinds of joint', () => {
  test('each kind stands once, in the order of a build', () => {
    expect(new Set(jointKinds.map((row) => row.kind)).size).toBe(jointKinds.length);
    const order = jointKinds.map((row) => row.buildOrder);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(new Set(order).size).toBe(order.length);
  });

  test('every row names the ground for its weight', () => {
    for (const row of jointKinds) {
      expect(row.source).toMatch(/\S{4}/);
      expect(row.label).not.toBe('');
      expect(row.defaultFastenerCount).toBeGreaterThanOrEqual(0);
    }
  });

  test.each(['brakes', 'steering', 'saddle'])('every joint of the %s matters', (area) => {
    const inArea = jointKinds.filter((row) => row.area === area);
    expect(inArea.length).toBeGreaterThan(1);
    expect(inArea.filter((row) => !row.matters)).toEqual([]);
  });

  const mustMatter: [JointKind, string][] = [
    ['front-axle', '16 CFR 1512.12'],
    ['rear-axle', '16 CFR 1512.12'],
    ['thru-axle', '16 CFR 1512.12'],
    ['mudguard', 'ISO 4210-2:2014, screws that need a locking device'],
    ['saddle-rails', 'ISO 4210-2:2014, screws that need a locking device'],
    ['caliper', 'ISO 4210-2:2014, screws that need a locking device'],
    ['rotor', 'ISO 4210-2:2014, screws that need a locking device'],
    ['crank', 'common practice, no source'],
    ['crank-pinch', 'common practice, no source'],
    ['pedal', 'common practice, no source'],
    ['bead', 'common practice, no source'],
  ];
  test.each(mustMatter)('%s matters (%s)', (kind) => expect(jointKindRow(kind).matters).toBe(true));

  // Common practice, no source: what is pressed or seated comes before what is hung on it.
  const before: [JointKind, JointKind][] = [
    ['crown-race', 'fork'],
    ['headset', 'fork'],
    ['fork', 'stem-steerer'],
    ['spokes', 'bead'],
    ['bead', 'front-axle'],
    ['rotor', 'front-axle'],
    ['bottom-bracket', 'crank'],
    ['crank', 'pedal'],
    ['stem-steerer', 'bar-clamp'],
    ['bar-clamp', 'lever-clamp'],
    ['brake-mount', 'caliper'],
    ['caliper', 'cable-anchor'],
    ['seatpost', 'saddle-rails'],
  ];
  test.each(before)('%s is built before %s (common practice, no source)', (first, second) =>
    expect(jointKindRow(first).buildOrder).toBeLessThan(jointKindRow(second).buildOrder),
  );

  // Common practice, no source: a spoke is tightened to a tension, a bead is seated; a figure that is given counts.
  test.each([
    ['spokes', 32, undefined, false],
    ['bead', 0, undefined, false],
    ['stem-steerer', 0, undefined, false],
    ['cable-anchor', 1, undefined, false],
    ['cable-anchor', 1, { value: 6 }, true],
  ] as const)('%s with %s fasteners and the torque %j wants a wrench: %s', (kind, count, torque, wanted) =>
    expect(
      wantsTorque({ kind, fasteners: count ? [{ count }] : [], targets: torque ? [{ torque }] : [] }),
    ).toBe(wanted),
  );

  test('a kind that does not exist is a programmer error', () =>
    expect(() => jointKindRow('kickstand' as JointKind)).toThrow(RangeError));
});

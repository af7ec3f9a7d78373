import { describe, expect, test } from 'vitest';
import { gateOf, neverUntouched, releaseGate } from '../../../../src/standards/checks/releaseGate.ts';
import { jointKindRow, jointKinds } from '../../../../src/standards/jointKinds.ts';

describe('what an undone step stops', () => {
  test('every row says why, and names its source', () => {
    for (const { why, source } of releaseGate) {
      expect(why).toMatch(/\.$/);
      expect(source.trim()).not.toBe('');
    }
  });

  // Brakes, steering and wheels: 16 CFR 1512.5, 1512.6 and 1512.12, ISO 4210-2; the steps are common practice, no source.
  test.each([
    [{ jointKind: 'caliper' }, 'adjust', 'stops', 'stops'],
    [{ jointKind: 'cable-anchor' }, 'torque', 'stops', 'stops'],
    [{ jointKind: 'spokes' }, 'adjust', 'stops', 'stops'],
    [{ jointKind: 'spokes' }, 'measure', 'stops', 'stops'],
    [{ jointKind: 'headset' }, 'press', 'stops', 'stops'],
    [{ jointKind: 'headset' }, 'adjust', 'stops', 'stops'],
    [{ jointKind: 'bead' }, 'seat', 'stops', 'stops'],
    [{ jointKind: 'rotor' }, 'lock', 'stops', 'named'],
    [{ jointKind: 'front-axle' }, 'torque', 'stops', 'stops'],
    [{ partKind: 'caliper' }, 'adjust', 'stops', 'stops'],
    [{ partKind: 'rim' }, 'adjust', 'stops', 'stops'],
  ] as const)('%o, %s: open %s, skipped %s', (about, step, open, skipped) =>
    expect(gateOf(about, step)).toMatchObject({ open, skipped }),
  );

  test.each([
    [{ jointKind: 'rack' }, 'torque'],
    [{ jointKind: 'stem-steerer' }, 'measure'],
    [{ jointKind: 'bead' }, 'measure'],
    [{}, 'adjust'],
    [{ partKind: 'saddle' }, 'check'],
  ] as const)('%o, %s is only named', (about, step) => expect(gateOf(about, step)).toBeUndefined());

  test('every joint that matters for brakes, steering, wheels and seat has a row for being put together', () => {
    for (const { kind, matters, area } of jointKinds)
      if (matters && area !== 'other') expect(gateOf({ jointKind: kind }, 'fit'), kind).toBeDefined();
    for (const kind of neverUntouched) expect(jointKindRow(kind).matters).toBe(true);
  });
});

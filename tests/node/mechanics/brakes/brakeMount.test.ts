import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adapterFits, classifyMount, rotorStep } from '../../../../src/mechanics/brakes/brakeMount.ts';
import { mounts } from '../../../../src/standards/interfaces/mounts.ts';

describe('examples of the docstrings', () => {
  test('50.8 mm is IS', () =>
    expect(classifyMount(mounts, 50.8)).toMatchObject({ ok: true, mount: { id: 'is' } }));
  test('203 on a 160 mount', () =>
    expect(rotorStep(160, 203)).toEqual({ ok: true, stepMm: 43, radialMm: 21.5 }));
  test('203 with a +40 adapter', () =>
    expect(adapterFits(160, 203, 40)).toEqual({
      ok: false,
      reason: 'pads-off-the-track',
      radialErrorMm: 1.5,
    }));
});

test.each([
  [51, 'is', 'IS and post mount article'],
  [74, 'post', 'IS and post mount article'],
  [74.2, 'post', 'nominal size, from memory'],
  [34, 'flat-rear', 'from memory'],
  [70, 'flat-front', 'from memory'],
])('%s mm is %s (%s)', (spacingMm, id) =>
  expect(classifyMount(mounts, spacingMm)).toMatchObject({ ok: true, mount: { id } }),
);

// Early mounts, seen: 22 and 68 mm (IS and post mount article), 69 mm (riders' forum).
test.each([22, 68, 69, 60, 40])('%s mm is not guessed at', (spacingMm) =>
  expect(classifyMount(mounts, spacingMm)).toEqual({ ok: false, reason: 'unknown-measure-again' }),
);

test('no two mounts share a spacing', () => {
  const spans = mounts.map((row) => row.spacingMm).sort((a, b) => a[0] - b[0]);
  spans.slice(1).forEach((span, at) => {
    expect(span[0]).toBeGreaterThan(spans[at]![1]);
  });
});

describe('rotor on mount', () => {
  test('a 180 mount cannot take a 160 rotor (post mount article)', () => {
    expect(rotorStep(180, 160)).toEqual({ ok: false, reason: 'smaller-than-the-mount' });
    expect(adapterFits(180, 160, 0)).toEqual({ ok: false, reason: 'smaller-than-the-mount' });
  });
  test('160 mount, 180 rotor, +20', () =>
    expect(adapterFits(160, 180, 20)).toEqual({ ok: true, radialErrorMm: 0 }));
  test('bare mount, its own rotor', () => expect(adapterFits(160, 160, 0)).toMatchObject({ ok: true }));
  test('half a millimetre is within what the slots take up, one is not (own judgement)', () => {
    expect(adapterFits(160, 181, 20)).toEqual({ ok: true, radialErrorMm: 0.5 });
    expect(adapterFits(160, 182, 20)).toMatchObject({ ok: false, radialErrorMm: 1 });
  });
  test('a forgotten adapter leaves the pads far in', () =>
    expect(adapterFits(160, 180, 0)).toMatchObject({ ok: false, radialErrorMm: 10 }));
  test('an adapter too many', () =>
    expect(adapterFits(160, 160, 20)).toMatchObject({ ok: false, radialErrorMm: -10 }));

  test('the adapter of exactly the step fits whatever the sizes', () => {
    const size = fc.integer({ min: 120, max: 240 });
    fc.assert(
      fc.property(size, size, (nativeMm, rotorMm) => {
        const step = rotorStep(nativeMm, rotorMm);
        if (step.ok)
          expect(adapterFits(nativeMm, rotorMm, step.stepMm)).toEqual({ ok: true, radialErrorMm: 0 });
        else expect(rotorMm).toBeLessThan(nativeMm);
      }),
    );
  });
});

test.each([
  () => classifyMount(mounts, 0),
  () => classifyMount(mounts, Number.NaN),
  () => rotorStep(0, 160),
  () => adapterFits(160, 180, -20),
])('programmer error %#', (call) => expect(call).toThrow(RangeError));

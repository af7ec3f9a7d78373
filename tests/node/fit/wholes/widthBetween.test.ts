import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import type { Finding } from '../../../../src/fit/finding.ts';
import type { PilePart } from '../../../../src/fit/pile.ts';
import { caliper, face, named, part } from '../../../fixtures/pileParts.ts';

function only(parts: readonly PilePart[], topic: string): Finding {
  const { findings, fitting, toMeasure } = checkPile(parts);
  const [found, ...more] = [...findings, ...fitting, ...toMeasure].filter((one) => one.topic === topic);
  if (!found || more.length > 0) throw new Error(`not one finding about ${topic}`);
  return found;
}

describe('flanges of a bottom bracket adapter', () => {
  const frame = (widthMm: number) =>
    part('frame', 'frame', [named('shell', 'american', { nominal: { widthMm } })]);
  const cups = part('cups', 'bottom-bracket', [
    named('bb-cup', 'iso'),
    named('bb-bore', 'round-24', { nominal: { systemWidthMm: 91.5 } }),
  ]);
  const plates = (flangeMm?: number) =>
    part('plates', 'adapter', [
      named(
        'bb-cup',
        'american',
        flangeMm === undefined ? {} : { measured: { flangeMm: caliper(flangeMm) } },
      ),
      named('shell', 'iso'),
    ]);

  test('the adapter is not there yet: the width is not known, and it is said what to measure later', () => {
    const width = only([frame(68), cups], 'crank-width');
    expect(width).toMatchObject({ outcome: 'not-known', bridges: [], asks: [] });
    expect(width.notes[0]).toContain('measure them when it is there');
  });

  test('the adapter is there and not measured: its flange is asked for', () => {
    const width = only([frame(68), cups, plates()], 'crank-width');
    expect(width.outcome).toBe('not-known');
    expect(width.asks).toMatchObject([{ faceId: 'bb-cup', kind: 'bb-cup', key: 'flangeMm' }]);
    expect(width.faces).toContainEqual({ partId: 'plates', faceId: 'bb-cup' });
  });

  // Effective width = shell + both flanges; spacers fill the rest of the 75.5 mm under the cups (arithmetic of the
  // spacer rule for two-piece cranks: 68 + 3 × 2.5 = 73 + 2.5).
  test.each([
    [0, 'fits-with', 'cup-spacer:2+1x2.5'],
    [1.25, 'fits-with', 'cup-spacer:1+1x2.5'],
    [2.5, 'fits-with', 'cup-spacer:1+0x2.5'],
    [3.75, 'fits', undefined],
    [6, 'does-not-fit', undefined],
  ] as const)('flanges of %f mm on a 68 shell: %s', (flangeMm, outcome, bridgeId) => {
    const width = only([frame(68), cups, plates(flangeMm)], 'crank-width');
    expect(width.outcome).toBe(outcome);
    expect(width.bridges[0]?.bridgeId).toBe(bridgeId);
    expect(width.because).toContain(`wide, the crank needs 75.5 mm`);
  });

  test('without an adapter between nothing changes, and the id stays the same with one', () => {
    const iso = part('frame', 'frame', [named('shell', 'iso', { nominal: { widthMm: 68 } })]);
    const bare = only([iso, cups], 'crank-width');
    expect(bare.because.startsWith('The shell is 68 mm wide')).toBe(true);
    expect(only([frame(68), cups, plates(0)], 'crank-width').findingId).toBe(
      'crank-width:cups.bb-bore~frame.shell',
    );
  });
});

describe('end caps of a through hub in open slots', () => {
  const frame = part('frame', 'frame', [
    face('axle-slot', { widthMm: 10 }, { traits: { shape: 'open', material: 'steel' } }),
    face('end-spacing', { spacingMm: 135 }, { traits: { material: 'steel' } }),
  ]);
  const hub = part('hub', 'rear-hub', [
    face('axle', { diameterMm: 12 }, { traits: { type: 'through' } }),
    face('hub-spacing', { spacingMm: 142 }),
  ]);
  const caps = (overCapsMm?: number) =>
    part('caps', 'adapter', [
      face(
        'axle',
        { diameterMm: 10, ...(overCapsMm === undefined ? {} : { overCapsMm }) },
        { traits: { type: 'hollow' } },
      ),
      face('axle-slot', { widthMm: 12 }, { traits: { shape: 'closed' } }),
    ]);

  test('caps that are still to be got leave the width open', () => {
    const width = only([frame, hub], 'hub-between-ends');
    expect(width.outcome).toBe('not-known');
    expect(width.notes[0]).toContain('measure over them');
  });

  test('caps that were not measured ask for the width over them', () => {
    expect(only([frame, hub, caps()], 'hub-between-ends').asks).toMatchObject([
      { kind: 'axle', key: 'overCapsMm' },
    ]);
  });

  // Two axle pages: a 12 × 142 hub stands at 135 with its inner faces, so its caps bring it to 135.
  test.each([
    [135, 'fits'],
    [130, 'fits-with'],
    [142, 'one-way-only'],
  ] as const)('%f mm over the caps between ends of 135: %s', (overCapsMm, outcome) => {
    const width = only([frame, hub, caps(overCapsMm)], 'hub-between-ends');
    expect(width.outcome).toBe(outcome);
    expect(width.because).toContain(`Over its end caps the hub measures ${overCapsMm} mm.`);
  });

  test('a bush in the slot changes no width', () => {
    const slots = part('frame', 'frame', [
      face('axle-slot', { widthMm: 14 }, { traits: { shape: 'open', material: 'steel' } }),
      face('end-spacing', { spacingMm: 110 }, { traits: { material: 'steel' } }),
    ]);
    const narrow = part('hub', 'rear-hub', [
      face('axle', { diameterMm: 10 }, { traits: { type: 'solid' } }),
      face('hub-spacing', { spacingMm: 110 }),
    ]);
    expect(only([slots, narrow], 'axle-in-slot').outcome).toBe('fits-with');
    expect(only([slots, narrow], 'hub-between-ends').outcome).toBe('fits');
  });
});

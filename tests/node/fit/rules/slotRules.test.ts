import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { meet } from '../../../../src/fit/bridges/meet.ts';
import type { Face } from '../../../../src/fit/faces/face.ts';

const face = (kind: Face['kind'], key: string, value: number, uncertaintyMm: number, traits = {}): Face => ({
  ...{ faceId: kind, kind, standard: null, nominal: {}, traits },
  measured: { [key]: { value, unit: 'mm', typed: String(value), uncertaintyMm } },
});

test('[F4] an axle slides in the slot that was filed as advised, and is not loose, over random slots and axles', () => {
  let offered = 0;
  fc.assert(
    fc.property(
      fc.double({ min: 8, max: 10, noNaN: true }),
      fc.double({ min: 0.3, max: 2, noNaN: true }),
      fc.double({ min: 0.01, max: 0.05, noNaN: true }),
      (slotMm, tooThinMm, offMm) => {
        const axle = face('axle', 'diameterMm', slotMm + tooThinMm, offMm, { type: 'nutted' });
        const slot = (mm: number) =>
          face('axle-slot', 'widthMm', mm, offMm, { shape: 'open', material: 'steel' });
        const advised = meet(slot(slotMm), axle)?.oneWay[0];
        if (!advised) return;
        offered++;
        expect(meet(slot(advised.after), axle)?.meets).toBe('yes');
        expect(advised.sideEffects.join()).toContain('of play is left');
      },
    ),
  );
  expect(offered).toBeGreaterThan(50);
});

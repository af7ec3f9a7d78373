import { describe, expect, test } from 'vitest';
import {
  developmentWorking,
  gainWorking,
  gearInchesWorking,
  speedWorking,
} from '../../../../src/mechanics/drive/gearingWorkings.ts';
import type { Working } from '../../../../src/mechanics/working.ts';

const values = (working: Working) =>
  Object.fromEntries(working.inputs.map(({ name, value }) => [name, value as number]));

describe('following each formula by hand, from the inputs alone, gives the result', () => {
  test('development', () => {
    const working = developmentWorking(36, 15, 660);
    const { ring, sprocket, D } = values(working);
    expect(working.result).toBeCloseTo(((ring! / sprocket!) * Math.PI * D!) / 1000, 12);
  });
  test('gear inches', () => {
    const working = gearInchesWorking(36, 15, 660);
    const { ring, sprocket, D } = values(working);
    expect(working.result).toBeCloseTo(((ring! / sprocket!) * D!) / 25.4, 12);
  });
  test('gain ratio', () => {
    const working = gainWorking(36, 15, 660, 170);
    const { ring, sprocket, D, crank } = values(working);
    expect(working.result).toBeCloseTo(((ring! / sprocket!) * (D! / 2)) / crank!, 12);
  });
  test('speed', () => {
    const working = speedWorking(2, 50);
    const { development, cadence } = values(working);
    expect(working.result).toBeCloseTo((development! * cadence! * 60) / 1000, 12);
  });
});

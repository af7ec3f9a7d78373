import { describe, expect, test } from 'vitest';
import {
  axleFromPitchesWorking,
  axleSettingWorking,
  chainPitchesWorking,
} from '../../../../src/mechanics/drive/chainWorkings.ts';
import type { Working } from '../../../../src/mechanics/working.ts';

const town = { ringTeeth: 36, sprocketTeeth: 15 };
const input = (working: Working, name: string): number => {
  const value = working.inputs.find((one) => one.name === name)?.value;
  if (typeof value !== 'number') throw new Error(`${name} is not among the inputs`);
  return value;
};

describe('following each formula by hand, from the inputs alone, gives the result', () => {
  test('chain length', () => {
    const working = chainPitchesWorking(town, 380);
    const wrapped =
      input(working, 'teeth wrapped on the ring') + input(working, 'teeth wrapped on the sprocket');
    expect(working.result).toBeCloseTo((2 * input(working, 'S')) / input(working, 'p') + wrapped, 9);
  });
  test('taut axle position: its path is as long as the chain', () => {
    const working = axleFromPitchesWorking(town, 86);
    const wrapped =
      input(working, 'teeth wrapped on the ring') + input(working, 'teeth wrapped on the sprocket');
    expect((2 * input(working, 'S')) / input(working, 'p') + wrapped).toBeCloseTo(input(working, 'L'), 9);
  });

  test('setting: short of taut', () => {
    const working = axleSettingWorking(town, 86);
    expect((working.result as { hi: number }).hi).toBeLessThan(input(working, 'taut C'));
    expect(working.known).toBe('proposal');
  });
});

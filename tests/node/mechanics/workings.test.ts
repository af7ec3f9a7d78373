import { describe, expect, test } from 'vitest';
import { around, exactly } from '../../../src/mechanics/band.ts';
import { shimChain } from '../../../src/mechanics/clampShim.ts';
import { slipTorqueBandNm } from '../../../src/mechanics/clampSlip.ts';
import { engagementForFullStrengthMm } from '../../../src/mechanics/engagement.ts';
import { assemblyTorqueNm } from '../../../src/mechanics/preloadAssembly.ts';
import { preloadBandN } from '../../../src/mechanics/preloadFromTorque.ts';
import { preloadUse } from '../../../src/mechanics/preloadUse.ts';
import { looseningTorqueNm } from '../../../src/mechanics/torqueLongForm.ts';
import {
  assemblyTorqueWorking,
  engagementWorking,
  looseningWorking,
  preloadWorking,
  shimWorking,
  slipWorking,
  useWorking,
  wrenchWorking,
} from '../../../src/mechanics/workings.ts';
import { wrenchSettingNm } from '../../../src/mechanics/wrenchExtension.ts';

const thread = { diameterMm: 5, pitchMm: 0.8, form: 'iso' } as const;
const joint = { thread, threadFriction: 0.14, bearingFriction: 0.14, bearingDiameterMm: 7 };
const preloadN = around(5000, 0.3);
const nutFactor = around(0.2, 0.3);
const lever = { kind: 'one-slit-stiff', bolts: 2, tubeArmMm: 20, boltArmMm: 40 } as const;
const faces = [
  { name: 'bar in shim', diameterMm: 22.2, friction: 0.2, tensionN: 15000 },
  { name: 'shim in clamp', diameterMm: 25.4, friction: 0.2 },
];
const wrench = { wrenchMm: 100, extensionMm: 15, angleDeg: 45 };
const strengths = { screwMPa: 800, femaleMPa: 250 };

describe.each([
  ['preload', preloadWorking(5, 5, nutFactor, 0.04), preloadBandN(5, 5, nutFactor, 0.04), 'N'],
  ['use', useWorking(preloadN, 8230), preloadUse(preloadN, 8230).share, ''],
  ['assembly torque', assemblyTorqueWorking(joint, 640), assemblyTorqueNm(joint, 640), 'N·m'],
  ['loosening', looseningWorking(5000, joint), looseningTorqueNm(5000, joint), 'N·m'],
  [
    'slip',
    slipWorking(lever, preloadN, exactly(0.2), 28.6),
    slipTorqueBandNm(lever, preloadN, exactly(0.2), 28.6),
    'N·m',
  ],
  ['shims', shimWorking(faces, 20000), shimChain(faces, 20000).slipNm, 'N·m'],
  ['wrench', wrenchWorking(10, wrench), wrenchSettingNm(10, wrench), 'N·m'],
  ['engagement', engagementWorking(thread, strengths), engagementForFullStrengthMm(thread, strengths), 'mm'],
] as const)('%s', (_, working, result, unit) => {
  test('shows the number the formula itself gives', () => {
    expect(working.result).toEqual(result);
    expect(working.unit).toBe(unit);
  });
  test('names a source and every input, each with a value', () => {
    expect(working.source.length).toBeGreaterThan(10);
    const names = working.inputs.map((input) => input.name);
    expect(new Set(names).size).toBe(names.length);
    for (const { value } of working.inputs)
      for (const figure of typeof value === 'number' ? [value] : Object.values(value))
        expect(Number.isFinite(figure)).toBe(true);
  });
  test('every input by a letter stands in the formula, or belongs to a face or material named there', () => {
    // d and P give d2, d0 and A0; an index i stands for each face.
    const derived = working.formula
      .replaceAll(/d2|d0|A0|As/g, '$& d P')
      .replaceAll(/([µΣFd]+)i/g, '$1')
      .replace('J', 'J R');
    for (const { name } of working.inputs) expect(derived).toContain(name.split(/[, ]/)[0]);
  });
});

test('the preload can be done again by hand from its working', () => {
  const { inputs, result } = preloadWorking(5, 5, nutFactor, 0.04);
  const by = Object.fromEntries(inputs.map(({ name, value }) => [name, value])) as Record<string, number>;
  expect((result as { hi: number }).hi).toBeCloseTo((5000 * (1 + by['w']!)) / (nutFactor.lo * by['d']!), 6);
});

test('the working of a shimmed clamp names the face that decides', () => {
  expect(shimWorking(faces, 20000).formula).toContain('bar in shim');
});

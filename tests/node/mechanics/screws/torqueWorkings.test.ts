import { expect, test } from 'vitest';
import { engagementForFullStrengthMm } from '../../../../src/mechanics/screws/engagement.ts';
import { assemblyTorqueNm } from '../../../../src/mechanics/screws/preloadAssembly.ts';
import { preloadBandN } from '../../../../src/mechanics/screws/preloadFromTorque.ts';
import { preloadUse } from '../../../../src/mechanics/screws/preloadUse.ts';
import { looseningTorqueNm } from '../../../../src/mechanics/screws/torqueLongForm.ts';
import {
  assemblyTorqueWorking,
  engagementWorking,
  looseningWorking,
  preloadWorking,
  useWorking,
  wrenchWorking,
} from '../../../../src/mechanics/screws/torqueWorkings.ts';
import { wrenchSettingNm } from '../../../../src/mechanics/screws/wrenchExtension.ts';
import { around } from '../../../fixtures/rows.ts';
import { provesWorkings } from '../workingChecks.ts';

const thread = { diameterMm: 5, pitchMm: 0.8, form: 'iso' } as const;
const joint = { thread, threadFriction: 0.14, bearingFriction: 0.14, bearingDiameterMm: 7 };
const preloadN = around(5000, 0.3);
const nutFactor = around(0.2, 0.3);
const wrench = { wrenchMm: 100, extensionMm: 15, angleDeg: 45 };
const strengths = { screwMPa: 800, femaleMPa: 250 };

provesWorkings(
  [
    ['preload', preloadWorking(5, 5, nutFactor, 0.04), preloadBandN(5, 5, nutFactor, 0.04), 'N'],
    ['use', useWorking(preloadN, 8230), preloadUse(preloadN, 8230).share, ''],
    ['assembly torque', assemblyTorqueWorking(joint, 640), assemblyTorqueNm(joint, 640), 'N·m'],
    ['loosening', looseningWorking(5000, joint), looseningTorqueNm(5000, joint), 'N·m'],
    ['wrench', wrenchWorking(10, wrench), wrenchSettingNm(10, wrench), 'N·m'],
    ['engagement', engagementWorking(thread), engagementForFullStrengthMm(thread), 'mm'],
    [
      'soft thread',
      engagementWorking(thread, strengths),
      engagementForFullStrengthMm(thread, strengths),
      'mm',
    ],
  ],
  { d2: 'd P', J: 'R' },
);

test('the preload can be done again by hand from its working', () => {
  const { inputs, result } = preloadWorking(5, 5, nutFactor, 0.04);
  const by = Object.fromEntries(inputs.map(({ name, value }) => [name, value])) as Record<string, number>;
  expect((result as { hi: number }).hi).toBeCloseTo((5000 * (1 + by['w']!)) / (nutFactor.lo * by['d']!), 6);
});

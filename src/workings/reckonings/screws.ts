import type { Band } from '../../mechanics/band.ts';
import { engagementVerdict, strippingLoadN } from '../../mechanics/screws/engagement.ts';
import { torqueForPreloadNm } from '../../mechanics/screws/preloadFromTorque.ts';
import {
  type FemaleMaterial,
  type Lubricant,
  preloadAllowed,
  type ScrewMaterial,
} from '../../mechanics/screws/preloadRefusal.ts';
import { preloadUse, proofLoadN, ultimateLoadN } from '../../mechanics/screws/preloadUse.ts';
import { stressAreaMm2 } from '../../mechanics/screws/threadGeometry.ts';
import {
  engagementWorking,
  preloadWorking,
  useWorking,
  wrenchWorking,
} from '../../mechanics/screws/torqueWorkings.ts';
import { torqueAtScrewNm } from '../../mechanics/screws/wrenchExtension.ts';
import { given as input } from '../../mechanics/working.ts';
import { nutFactorFor } from '../../standards/screws/nutFactors.ts';
import { propertyClasses, propertyClassRow } from '../../standards/screws/propertyClasses.ts';
import { engagementRule } from '../../standards/screws/threadEngagement.ts';
import { threadRow, threads } from '../../standards/screws/threads.ts';
import { weakest } from '../joint/line.ts';
import { preloadRefusals } from '../joint/preload.ts';
import { torqueFromFriction } from './friction.ts';
import {
  bareAsked,
  type Calculated,
  type ChoiceAsked,
  forceAsked,
  type Given,
  lengthAsked,
  type Reckoning,
  torqueAsked,
  worked,
} from './reckoning.ts';

// Cups and lock rings are tubes: what holds for a solid screw says nothing of them.
const solid = threads.filter(({ diameterMm }) => diameterMm <= 16);
const threadAsked: ChoiceAsked = {
  key: 'thread',
  label: 'Thread',
  options: solid.map(({ id, label }) => ({ value: id, label })),
  first: 'M5',
};
const classAsked: ChoiceAsked = {
  key: 'class',
  label: 'Grade on the head',
  hint: 'No grade: take the first, the weakest a steel screw without one may be; A2-50 for stainless.',
  options: propertyClasses.map((row) => ({ value: row.propertyClass, label: row.propertyClass })),
  first: '8.8',
};
const lubricantAsked: ChoiceAsked = {
  key: 'lubricant',
  label: 'On the thread',
  options: [
    { value: 'unknown', label: 'Not known' },
    { value: 'none', label: 'Nothing, dry' },
    { value: 'oil', label: 'Oil' },
    { value: 'grease', label: 'Grease' },
    { value: 'anti-seize', label: 'Anti-seize' },
    { value: 'threadlocker-wet', label: 'Threadlocker, wet' },
    { value: 'wax', label: 'Wax' },
    { value: 'moly', label: 'Molybdenum paste' },
  ],
  first: 'unknown',
};
const screwAsked: ChoiceAsked = {
  key: 'screw',
  label: 'Bolt material',
  options: [
    { value: 'steel', label: 'Steel' },
    { value: 'stainless', label: 'Stainless steel' },
    { value: 'aluminium', label: 'Aluminium' },
    { value: 'titanium', label: 'Titanium' },
  ],
  first: 'steel',
};
const femaleAsked: ChoiceAsked = {
  key: 'female',
  label: 'Threaded into',
  options: [
    { value: 'aluminium', label: 'Aluminium' },
    { value: 'steel', label: 'Steel' },
    { value: 'stainless', label: 'Stainless steel' },
    { value: 'cast-iron', label: 'Cast iron' },
    { value: 'brass', label: 'Brass' },
    { value: 'magnesium', label: 'Magnesium' },
    { value: 'titanium', label: 'Titanium' },
    { value: 'plastic', label: 'Plastic' },
  ],
  first: 'aluminium',
};

/** The nut factor of what was chosen, or why none holds. */
function nutOf(
  given: Given,
): { ok: true; nut: ReturnType<typeof nutFactorFor> } | { ok: false; reason: string } {
  const screw = given.choice('screw') as ScrewMaterial;
  const lubricant = given.choice('lubricant') as Lubricant;
  const allowed = preloadAllowed({ screw, female: given.choice('female') as FemaleMaterial, lubricant });
  if (!allowed.ok) return { ok: false, reason: preloadRefusals[allowed.reason] };
  return { ok: true, nut: nutFactorFor(screw === 'stainless' ? 'stainless' : 'unknown', lubricant) };
}

const toolErrorAsked = bareAsked('error', 'Error of the tool, ± %', [0, 50], {
  first: '4',
  hint: '4 to 6 for a checked torque tool, about 35 by hand.',
});
const frictionPair = [screwAsked, femaleAsked, lubricantAsked];

const preload: Reckoning = {
  id: 'preload',
  label: 'Preload from torque',
  about: 'Clamp force from a torque: a range, as friction and tool vary.',
  group: 'Screws',
  asks: [torqueAsked('torque', 'Torque', [0.1, 300]), threadAsked, ...frictionPair, toolErrorAsked],
  compute(given) {
    const nut = nutOf(given);
    if (!nut.ok) return nut;
    const { diameterMm } = threadRow(given.choice('thread'));
    const working = preloadWorking(
      given.number('torque'),
      diameterMm,
      nut.nut.nutFactor,
      given.number('error') / 100,
    );
    const known = weakest(working.known, nut.nut.known);
    return {
      ok: true,
      results: [
        {
          label: 'Preload',
          working: { ...working, source: `${working.source}. K: ${nut.nut.source}`, known },
        },
      ],
    };
  },
};

const torqueFromPreload: Reckoning = {
  id: 'torque-from-preload',
  label: 'Torque from preload',
  about: 'Which torque raises a preload. It never replaces the figure printed on a part.',
  group: 'Screws',
  asks: [forceAsked('preload', 'Preload wanted', [50, 200_000]), threadAsked, ...frictionPair],
  compute(given) {
    const nut = nutOf(given);
    if (!nut.ok) return nut;
    const { diameterMm } = threadRow(given.choice('thread'));
    const preloadN = given.number('preload');
    const at = (nutFactor: number) => torqueForPreloadNm(preloadN, diameterMm, nutFactor);
    const { nutFactor } = nut.nut;
    const result = { lo: at(nutFactor.lo), mid: at(nutFactor.mid), hi: at(nutFactor.hi) };
    const inputs = [input('F', preloadN, 'N'), input('d', diameterMm, 'mm'), input('K', nutFactor)];
    const source = `short form of fastener handbooks. K: ${nut.nut.source}`;
    return {
      ok: true,
      results: [
        {
          label: 'Torque',
          working: worked(result, 'N·m', 'T = K·d·F', inputs, source, weakest('seen', nut.nut.known)),
        },
      ],
      remarks: ['The lower end already raises this preload where the thread is slippery.'],
    };
  },
};

const proof: Reckoning = {
  id: 'proof-load',
  label: 'Proof load of a screw',
  about:
    'What a steel or stainless screw carries without lasting stretch, and the share a preload takes of it.',
  group: 'Screws',
  asks: [
    threadAsked,
    classAsked,
    forceAsked('preload', 'Preload, if known', [10, 200_000], { optional: true }),
  ],
  compute(given): Calculated {
    const thread = threadRow(given.choice('thread'));
    const row = propertyClassRow(given.choice('class'));
    if (row.largestMm !== undefined && thread.diameterMm > row.largestMm)
      return { ok: false, reason: `This class is only tabled up to M${row.largestMm}.` };
    const areaMm2 = stressAreaMm2(thread);
    const proofMPa = row.proofMPa ?? row.yieldMPa;
    const proofN = proofLoadN(areaMm2, proofMPa);
    const inputs = [input('As', areaMm2, 'mm²'), input('Sp', proofMPa, 'MPa')];
    const load = worked(proofN, 'N', 'Fp = As·Sp', inputs, row.source, weakest(row.known, thread.known));
    const breaks = {
      label: 'Breaks from',
      working: worked(
        ultimateLoadN(areaMm2, row.tensileMPa),
        'N',
        'Fu = As·Rm',
        [input('As', areaMm2, 'mm²'), input('Rm', row.tensileMPa, 'MPa')],
        row.source,
        weakest(row.known, thread.known),
      ),
    };
    const preloadN = given.maybe('preload');
    if (preloadN === undefined)
      return { ok: true, results: [{ label: 'Proof load', working: load }, breaks] };
    const band: Band = { lo: preloadN, mid: preloadN, hi: preloadN };
    const words = {
      low: 'Under a third of proof load: relies on friction alone.',
      ordinary: 'Up to three quarters: ordinary for a screw that is used again.',
      high: 'Above three quarters: high.',
      'near-proof': 'Above nine tenths: near its proof load.',
      'partly-beyond': 'Partly beyond its proof load.',
      'beyond-proof': 'Beyond its proof load: it is stretched permanently.',
    };
    return {
      ok: true,
      results: [
        { label: 'Proof load', working: load },
        { label: 'Share of it', working: useWorking(band, proofN) },
        breaks,
      ],
      remarks: [words[preloadUse(band, proofN).verdict]],
    };
  },
};

const wrench: Reckoning = {
  id: 'wrench-extension',
  label: 'Wrench with an extension',
  about: 'What to set when something reaches from the square to the screw, sideways or straight on.',
  group: 'Screws',
  asks: [
    torqueAsked('torque', 'Torque wanted at the screw', [0.1, 400]),
    lengthAsked('lever', 'Square drive to grip mark', [30, 1500], {
      hint: 'Middle of the square to the mark on the grip.',
    }),
    lengthAsked('extension', 'Square to the screw', [0, 600], { hint: 'Middle to middle.' }),
    bareAsked('angle', 'Angle of it, degrees', [0, 180], {
      first: '0',
      hint: '0 straight out, 90 across, 180 folded back.',
    }),
    torqueAsked('set', 'Or what was set', [0.1, 400], { optional: true }),
  ],
  compute(given) {
    const wrenchMm = given.number('lever');
    const extensionMm = given.number('extension');
    const angleDeg = given.number('angle');
    if (wrenchMm + extensionMm * Math.cos((angleDeg * Math.PI) / 180) < wrenchMm * 0.05)
      return { ok: false, reason: 'This extension reaches back to the hand: nothing would turn.' };
    const working = wrenchWorking(given.number('torque'), { wrenchMm, extensionMm, angleDeg });
    const settingNm = given.maybe('set');
    if (settingNm === undefined) return { ok: true, results: [{ label: 'Set on the wrench', working }] };
    const inputs = [
      input('S', settingNm, 'N·m'),
      input('L', wrenchMm, 'mm'),
      input('E', extensionMm, 'mm'),
      input('angle', angleDeg, '°'),
    ];
    const atScrew = worked(
      torqueAtScrewNm(settingNm, { wrenchMm, extensionMm, angleDeg }),
      'N·m',
      'T = S·(L + E·cos θ)/L',
      inputs,
      working.source,
      working.known,
    );
    return {
      ok: true,
      results: [
        { label: 'Set on the wrench', working },
        { label: 'The screw got', working: atScrew },
      ],
    };
  },
};

const reachWords = {
  enough: 'It reaches deep enough.',
  short: 'It is short: down to two thirds of the rule. A longer screw is the better way.',
  'too-short': 'Too short: the thread strips first. A longer screw.',
} as const;

const engagement: Reckoning = {
  id: 'thread-engagement',
  label: 'Thread engagement',
  about: 'How deep a screw has to reach so that it breaks before its thread strips.',
  group: 'Screws',
  asks: [
    threadAsked,
    classAsked,
    femaleAsked,
    lengthAsked('engaged', 'Reaches now', [0.5, 100], { optional: true }),
  ],
  compute(given): Calculated {
    const rule = engagementRule(given.choice('female') as FemaleMaterial);
    if (!rule) return { ok: false, reason: 'Nothing holds for a thread in plastic: it creeps.' };
    const thread = threadRow(given.choice('thread'));
    const row = propertyClassRow(given.choice('class'));
    const strengths = { screwMPa: row.tensileMPa, femaleMPa: rule.tensileMPa };
    const full = engagementWorking(thread, strengths);
    const ruleMm = rule.diameters * thread.diameterMm;
    const known = weakest(full.known, row.known, rule.known);
    const shop = worked(
      ruleMm,
      'mm',
      'multiple of the diameter',
      [input('d', thread.diameterMm, 'mm'), input('multiple', rule.diameters)],
      rule.source,
      rule.known,
    );
    const engagedMm = given.maybe('engaged');
    const strips =
      engagedMm === undefined
        ? []
        : [
            {
              label: 'Tension that strips it as it is',
              working: worked(
                strippingLoadN(thread, engagedMm, rule.tensileMPa),
                'N',
                'F = π·d·0.875·Le·0.577·R',
                [
                  input('d', thread.diameterMm, 'mm'),
                  input('Le', engagedMm, 'mm'),
                  input('R', rule.tensileMPa, 'MPa'),
                ],
                `shear on the cylinder of the female thread. R: ${rule.source}`,
                weakest('computed', rule.known),
              ),
            },
          ];
    return {
      ok: true,
      results: [
        { label: 'Rule of thumb', working: shop },
        { label: 'Screw breaks first from', working: { ...full, known } },
        {
          label: 'Share of the usual torque this thread can take',
          working: worked(rule.torqueShare, '', 'by what it is threaded into', [], rule.source, rule.known),
        },
        ...strips,
      ],
      remarks: [
        'Full thread only: add the chamfers at both ends.',
        ...(engagedMm === undefined
          ? []
          : [reachWords[engagementVerdict(engagedMm, thread.diameterMm, rule.diameters)]]),
      ],
    };
  },
};

export const screwReckonings: readonly Reckoning[] = [
  preload,
  torqueFromPreload,
  torqueFromFriction,
  proof,
  wrench,
  engagement,
];

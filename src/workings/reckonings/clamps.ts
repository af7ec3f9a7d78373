import { type Band, exactly } from '../../mechanics/band.ts';
import { worstRiderMomentNm } from '../../mechanics/clamps/clampMoment.ts';
import { type ClampInterface, shimChain } from '../../mechanics/clamps/clampShim.ts';
import {
  axialSlipN,
  type ClampConstruction,
  clampPressureMPa,
  clampTensionN,
} from '../../mechanics/clamps/clampSlip.ts';
import {
  bondedShimWorking,
  marginWorking,
  riderMomentWorking,
  slipWorking,
} from '../../mechanics/clamps/clampWorkings.ts';
import { given as input } from '../../mechanics/working.ts';
import { type ClampSurface, clampFriction } from '../../standards/screws/friction.ts';
import { weakest } from '../joint/line.ts';
import {
  bareAsked,
  type Calculated,
  type ChoiceAsked,
  forceAsked,
  type Given,
  lengthAsked,
  type Reckoned,
  type Reckoning,
  torqueAsked,
  worked,
} from './reckoning.ts';

const constructionAsked: ChoiceAsked = {
  key: 'construction',
  label: 'The clamp closes by',
  options: [
    { value: 'two-piece', label: 'Two halves, screws on both sides' },
    { value: 'one-slit-flexible', label: 'One slit, thin body' },
    { value: 'one-slit-stiff', label: 'One slit, thick body' },
  ],
  first: 'two-piece',
};
const faceAsked: ChoiceAsked = {
  key: 'face',
  label: 'In the clamp',
  options: [
    { value: 'metal-dry', label: 'Metal, dry' },
    { value: 'metal-greased', label: 'Metal, greased' },
    { value: 'carbon-dry', label: 'Carbon, dry' },
    { value: 'carbon-paste', label: 'Carbon with assembly paste' },
  ],
  first: 'metal-dry',
};
const boltsAsked = bareAsked('bolts', 'Screws', [1, 8], { whole: true, first: '4' });
const boltForceAsked = forceAsked('force', 'Preload of one screw', [50, 60_000], {
  hint: 'From the working above, or 5 kN for 5 N·m on dry M5.',
});
const scatterAsked = bareAsked('scatter', 'Its scatter, ± %', [0, 60], { first: '30' });
const armsAsked = [
  lengthAsked('tubeArm', 'Closed side to tube', [1, 120], { optional: true, hint: 'Thick body only.' }),
  lengthAsked('boltArm', 'Closed side to screw', [1, 150], { optional: true, hint: 'Thick body only.' }),
];

function constructionOf(given: Given): ClampConstruction | undefined {
  const kind = given.choice('construction') as ClampConstruction['kind'];
  const bolts = given.number('bolts');
  if (kind !== 'one-slit-stiff') return { kind, bolts };
  const [tubeArmMm, boltArmMm] = [given.maybe('tubeArm'), given.maybe('boltArm')];
  return tubeArmMm && boltArmMm ? { kind, bolts, tubeArmMm, boltArmMm } : undefined;
}

const noArms = {
  ok: false,
  reason: 'A thick body is a lever: measure both arms from its closed side.',
} as const;

function forceOf(given: Given): Band {
  const mid = given.number('force');
  const share = given.number('scatter') / 100;
  return { lo: mid * (1 - share), mid, hi: mid * (1 + share) };
}

/** What else the tension of a clamp does: it holds along the tube, and it presses on it. */
function along(
  made: ClampConstruction,
  given: Given,
  face: (typeof clampFriction)[ClampSurface],
): Reckoned[] {
  const tensionN = clampTensionN(made, given.number('force'));
  const [tubeMm, lengthMm] = [given.number('tube'), given.maybe('clampLength')];
  const tension = input('ΣF', tensionN, 'N');
  const slides = worked(
    axialSlipN(tensionN, face.friction.lo),
    'N',
    'F = 2·c·µ·ΣF, c = 1 to π/2',
    [tension, input('µ', face.friction.lo)],
    `statics, as the slip torque. µ: ${face.source}`,
    weakest('memory', face.known),
  );
  if (lengthMm === undefined) return [{ label: 'Slides along at', working: slides }];
  const inputs = [tension, input('d', tubeMm, 'mm'), input('L', lengthMm, 'mm')];
  const source = 'statics; printed sample runs of a shaft–hub program agree';
  const working = worked(
    clampPressureMPa(tensionN, tubeMm, lengthMm),
    'MPa',
    'p = ΣF / (d·L)',
    inputs,
    source,
    'seen',
  );
  return [
    { label: 'Slides along at', working: slides },
    { label: 'Mean pressure on the tube', working },
  ];
}

const slip: Reckoning = {
  id: 'clamp-slip',
  label: 'Clamp slip',
  about: 'Torque at which the tube slips, and the safety margin.',
  group: 'Clamps',
  asks: [
    constructionAsked,
    boltsAsked,
    boltForceAsked,
    scatterAsked,
    faceAsked,
    lengthAsked('tube', 'Diameter of the tube', [15, 80]),
    ...armsAsked,
    lengthAsked('clampLength', 'Length of the clamp along the tube', [5, 150], { optional: true }),
    torqueAsked('demand', 'Moment asked of it', [0.5, 400], { optional: true }),
  ],
  compute(given): Calculated {
    const made = constructionOf(given);
    if (!made) return noArms;
    const face = clampFriction[given.choice('face') as ClampSurface];
    const working = slipWorking(made, forceOf(given), face.friction, given.number('tube'));
    const known = weakest(working.known, face.known);
    const sourced = { ...working, source: `${working.source}. µ: ${face.source}`, known };
    const demandNm = given.maybe('demand');
    const margin =
      demandNm === undefined
        ? []
        : [
            {
              label: 'Margin',
              working: { ...marginWorking(working.result as Band, demandNm, 'the moment as typed'), known },
            },
          ];
    return {
      ok: true,
      results: [{ label: 'Turns at', working: sourced }, ...along(made, given, face), ...margin],
      remarks: ['Trust the low end.'],
    };
  },
};

const chain: Reckoning = {
  id: 'shim-chain',
  label: 'Clamp with a shim',
  about: 'Tube in shim, shim in clamp: the joint slips at the weaker face, and a shim never makes it better.',
  group: 'Clamps',
  asks: [
    constructionAsked,
    boltsAsked,
    boltForceAsked,
    scatterAsked,
    ...armsAsked,
    lengthAsked('tube', 'Diameter of the tube', [15, 80]),
    lengthAsked('bore', 'Bore of the clamp', [15, 90]),
    { ...faceAsked, key: 'inner', label: 'Tube in shim' },
    { ...faceAsked, key: 'outer', label: 'Shim in clamp' },
    {
      key: 'shim',
      label: 'The shim is',
      options: [
        { value: 'slit', label: 'Slit from end to end' },
        { value: 'closed', label: 'A closed ring' },
        { value: 'bonded', label: 'Bonded to the tube' },
      ],
      first: 'slit',
    },
    lengthAsked('length', 'Clamped length', [5, 120], { optional: true, hint: 'For the bond only.' }),
    bareAsked('shear', 'Strength of the bond, MPa', [0.5, 40], {
      optional: true,
      hint: 'About a third of what the data sheet says, and only where it is bonded.',
    }),
  ],
  compute(given): Calculated {
    const made = constructionOf(given);
    if (!made) return noArms;
    const [tubeMm, boreMm] = [given.number('tube'), given.number('bore')];
    if (boreMm <= tubeMm)
      return { ok: false, reason: 'The bore has to be wider than the tube for a shim to go in.' };
    const shim = given.choice('shim');
    if (shim === 'closed')
      return {
        ok: false,
        reason:
          'A closed ring may keep the force of the clamp to itself, so no figure holds: slit it from end to end.',
      };
    const faceFor = (key: string) => clampFriction[given.choice(key) as ClampSurface];
    const inner: ClampInterface = {
      name: 'tube in shim',
      diameterMm: tubeMm,
      friction: faceFor('inner').friction.mid,
    };
    const outer: ClampInterface = {
      name: 'shim in clamp',
      diameterMm: boreMm,
      friction: faceFor('outer').friction.mid,
    };
    // Any tension will do to find the weaker face: it multiplies both alike.
    const { weakest: weaker } = shimChain(shim === 'bonded' ? [outer] : [inner, outer], 1000);
    const face = weaker === outer ? faceFor('outer') : faceFor('inner');
    const working = slipWorking(made, forceOf(given), face.friction, weaker.diameterMm);
    const [lengthMm, shearMPa] = [given.maybe('length'), given.maybe('shear')];
    const bond =
      shim === 'bonded' && lengthMm !== undefined && shearMPa !== undefined
        ? [{ label: 'The bond alone holds', working: bondedShimWorking(shearMPa, tubeMm, lengthMm) }]
        : [];
    const sourced = {
      ...working,
      source: `${working.source}. µ: ${face.source}`,
      known: weakest(working.known, face.known),
    };
    return {
      ok: true,
      results: [{ label: `Slips first: ${weaker.name}`, working: sourced }, ...bond],
      remarks: ['Trust the low end. More torque than marked breaks the clamp before it helps the grip.'],
    };
  },
};

const rider: Reckoning = {
  id: 'rider-moment',
  label: 'Rider load on the bars',
  about: 'How hard your hands twist the bar.',
  group: 'Clamps',
  asks: [
    lengthAsked('rise', 'Hands above the clamp', [-400, 600], { first: '0' }),
    lengthAsked('reach', 'Hands in front of the clamp', [-400, 400], {
      first: '0',
      hint: 'Swept back is minus.',
    }),
    forceAsked('down', 'Both hands downwards', [-2000, 2000], {
      first: '0',
      hint: 'Pulling up is minus.',
    }),
    forceAsked('forward', 'Both hands forwards', [-2000, 2000], {
      first: '0',
      hint: 'Pulling back is minus.',
    }),
  ],
  compute(given) {
    const place = { riseMm: given.number('rise'), reachMm: given.number('reach') };
    const force = { downN: given.number('down'), forwardN: given.number('forward') };
    const allN = Math.hypot(force.downN, force.forwardN);
    return {
      ok: true,
      results: [
        { label: 'This pull', working: riderMomentWorking(place, force) },
        {
          label: 'The same force the worst way',
          working: worked(
            exactly(worstRiderMomentNm(place, allN)),
            'N·m',
            'M = F·√(rise² + reach²)',
            [input('F', allN, 'N'), input('rise', place.riseMm, 'mm'), input('reach', place.reachMm, 'mm')],
            'statics',
            'exact',
          ),
        },
      ],
    };
  },
};

export const clampReckonings: readonly Reckoning[] = [slip, chain, rider];

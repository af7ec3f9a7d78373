import { pressFit } from '../../mechanics/clamps/pressFit.ts';
import { BOND_SHARE, bondedForceN, bondedTorqueNm } from '../../mechanics/clamps/pressFitBonded.ts';
import { interferenceVerdict, measuredInterferenceMm } from '../../mechanics/clamps/pressFitMeasured.ts';
import { slideTogetherK } from '../../mechanics/clamps/pressFitThermal.ts';
import { cureTime } from '../../mechanics/cures/cure.ts';
import { breakawayOnThreadNm } from '../../mechanics/cures/cureCurve.ts';
import { given as input } from '../../mechanics/working.ts';
import { type ElasticMaterial, elasticMaterials } from '../../standards/interfaces/elasticMaterials.ts';
import { cureGrid } from '../../standards/screws/cureGrid.ts';
import { type LockerGrade, lockerRow, lockers } from '../../standards/screws/lockers.ts';
import { cureAdvices, cureRefusals } from '../joint/cureLine.ts';
import { weakest } from '../joint/line.ts';
import { fitByLetters } from './limits.ts';
import {
  type Calculated,
  type ChoiceAsked,
  lengthAsked,
  type Reckoned,
  type Reckoning,
  temperatureAsked,
  worked,
} from './reckoning.ts';

const surfaces = Object.entries(cureGrid.surfaces).map(([value, { label }]) => ({ value, label }));
const yesNo = [
  { value: 'no', label: 'No' },
  { value: 'yes', label: 'Yes' },
];

/** What breaks a cured thread loose; nothing where no figure of the grade or no thread is known. */
function breakaway(grade: LockerGrade, threadMm: number | undefined): Reckoned[] {
  const row = lockerRow(grade);
  if (threadMm === undefined || row.m10BreakawayNm === undefined) return [];
  const inputs = [input('T on M10', row.m10BreakawayNm, 'N·m'), input('d', threadMm, 'mm')];
  const working = worked(
    breakawayOnThreadNm(row.m10BreakawayNm, 10, threadMm),
    'N·m',
    'T = T on M10 · (d / 10)^2.585',
    inputs,
    `supplier’s note with three threads; T on M10: data-sheet class, ±30 %`,
    'memory',
  );
  return [{ label: 'Breaks loose at about', working }];
}

const cure: Reckoning = {
  id: 'cure-time',
  label: 'Cure time',
  about: 'How long a threadlocker or retaining compound has to be left alone.',
  group: 'Bonds and fits',
  asks: [
    {
      key: 'grade',
      label: 'Grade',
      options: lockers.map(({ grade, label }) => ({ value: grade, label })),
      first: 'medium',
    },
    { key: 'one', label: 'One surface', options: surfaces, first: 'steel' },
    { key: 'other', label: 'The other surface', options: surfaces, first: 'steel' },
    lengthAsked('gap', 'Gap it fills, on the diameter', [0, 2], {
      first: '0.05',
      hint: '0.05 mm in an ordinary thread.',
    }),
    temperatureAsked('temperature', 'Temperature of the joint', [-20, 60], { first: '20' }),
    { key: 'primer', label: 'Primer', options: yesNo, first: 'no' },
    { key: 'disc', label: 'Beside a disc brake', options: yesNo, first: 'no' },
    lengthAsked('thread', 'Diameter of the thread', [3, 20], {
      optional: true,
      hint: 'For the torque that breaks it loose.',
    }),
  ],
  compute(given): Calculated {
    const cure = cureTime(cureGrid, {
      grade: lockerRow(given.choice('grade') as LockerGrade),
      surfaces: [given.choice('one'), given.choice('other')],
      gapMm: given.number('gap'),
      temperatureC: given.number('temperature'),
      primer: given.choice('primer') === 'yes',
      nearDiscBrake: given.choice('disc') === 'yes',
    });
    if (!cure.ok) return { ok: false, reason: cureRefusals[cure.reason] };
    const full = cure.fullHours
      ? [
          {
            label: 'Full strength',
            working: {
              ...cure.working,
              result: cure.fullHours,
              formula: cure.working.formula.replace('75', '100'),
            },
          },
        ]
      : [];
    return {
      ok: true,
      results: [
        { label: 'Holds a ride after', working: cure.working },
        ...full,
        ...breakaway(given.choice('grade') as LockerGrade, given.maybe('thread')),
      ],
      remarks: [
        `Wait ${cure.waitHours} h: the longer end, and never less than a day.`,
        ...(cure.fullHours ? [] : ['Never full on this surface without primer.']),
        ...cure.advice.map((each) => cureAdvices[each]),
      ],
    };
  },
};

const materials = Object.entries(elasticMaterials).map(([value, { label }]) => ({ value, label }));
const frictionAsked: ChoiceAsked = {
  key: 'friction',
  label: 'When it goes in',
  options: [
    { value: 'greased', label: 'Greased' },
    { value: 'dry', label: 'Dry' },
  ],
  first: 'greased',
};
// Weak web source, as written beside the press-fit formula.
const frictions = {
  greased: { lo: 0.05, mid: 0.065, hi: 0.08 },
  dry: { lo: 0.12, mid: 0.135, hi: 0.15 },
} as const;

/** Play while one part slides over the other, mm; own choice. */
const SLIDING_PLAY_MM = 0.03;

const press: Reckoning = {
  id: 'press-fit',
  label: 'Press fit',
  about: 'Pressure, force to press in, and what a press fit holds, from two measured diameters.',
  group: 'Bonds and fits',
  asks: [
    lengthAsked('bore', 'Bore measured', [5, 120]),
    lengthAsked('part', 'Outside of the part that goes in', [5, 120]),
    lengthAsked('uncertainty', 'Each reading may be off by', [0, 0.5], {
      first: '0.03',
      hint: 'A good caliper: 0.03 mm.',
    }),
    lengthAsked('outer', 'Outside of the outer part', [6, 200]),
    lengthAsked('inner', 'Bore through the inner part', [0, 110], {
      first: '0',
      hint: '0 when it is solid.',
    }),
    lengthAsked('length', 'Length in contact', [1, 150]),
    { key: 'outerOf', label: 'The outer part is of', options: materials, first: 'steel' },
    { key: 'innerOf', label: 'The inner part is of', options: materials, first: 'aluminium' },
    frictionAsked,
  ],
  compute(given): Calculated {
    const [boreMm, partMm] = [given.number('bore'), given.number('part')];
    const interferenceMm = measuredInterferenceMm(boreMm, partMm, given.number('uncertainty'));
    const joint = {
      interfaceMm: boreMm,
      innerBoreMm: given.number('inner'),
      outerMm: given.number('outer'),
      lengthMm: given.number('length'),
      inner: elasticMaterials[given.choice('innerOf') as ElasticMaterial],
      outer: elasticMaterials[given.choice('outerOf') as ElasticMaterial],
    };
    if (joint.innerBoreMm >= boreMm || boreMm >= joint.outerMm)
      return { ok: false, reason: 'The parts have to lie inside one another: inner bore, fit, outside.' };
    if (partMm - boreMm > boreMm * 0.01)
      return {
        ok: false,
        reason: 'More than a hundredth of the diameter cannot be pressed in: measure again.',
      };
    const friction = frictions[given.choice('friction') as keyof typeof frictions];
    const fit = pressFit(joint, interferenceMm, friction);
    const known = weakest('exact', joint.inner.known, joint.outer.known);
    const pressure = {
      ...fit.working,
      source: `${fit.working.source}. Stiffness: ${joint.inner.source}`,
      known,
    };
    const words = {
      'holds-by-press': 'It holds by the press even at the low end.',
      'cannot-tell': 'The readings are too rough to tell whether it holds by the press.',
      'slips-in': 'It slips in: nothing holds it without a bond.',
    };
    const { interfaceMm, lengthMm } = joint;
    const inputs = [
      input('p', fit.pressureMpa, 'MPa'),
      input('d', interfaceMm, 'mm'),
      input('L', lengthMm, 'mm'),
      input('µ', friction),
    ];
    const source = 'friction on the whole contact; its coefficient from a weak web source';
    return {
      ok: true,
      results: [
        { label: 'Pressure', working: pressure },
        {
          label: 'Force to press in',
          working: worked(fit.forceN, 'N', 'F = µ·π·d·L·p', inputs, source, 'memory'),
        },
        {
          label: 'Torque it holds',
          working: worked(fit.torqueNm, 'N·m', 'T = F·d/2', inputs, source, 'memory'),
        },
        {
          label: 'Hoop stress at the bore of the outer part',
          working: worked(
            fit.outerHoopMpa,
            'MPa',
            'σ = p·(Do² + d²)/(Do² − d²)',
            [
              input('p', fit.pressureMpa, 'MPa'),
              input('d', interfaceMm, 'mm'),
              input('Do', joint.outerMm, 'mm'),
            ],
            'Lamé, thick rings',
            known,
          ),
        },
        {
          label: 'Warm the outer part by, to slide it on',
          working: worked(
            slideTogetherK(
              Math.max(0, interferenceMm.hi),
              SLIDING_PLAY_MM,
              joint.outer.expansionPerK,
              boreMm,
            ),
            'K',
            'ΔT = (δ + play) / (α·d)',
            [
              input('δ', Math.max(0, interferenceMm.hi), 'mm'),
              input('play', SLIDING_PLAY_MM, 'mm'),
              input('α', joint.outer.expansionPerK, '1/K'),
              input('d', boreMm, 'mm'),
            ],
            `linear expansion. α: ${joint.outer.source}; play: our suggestion`,
            weakest('proposal', joint.outer.known),
          ),
        },
      ],
      remarks: [
        words[interferenceVerdict(interferenceMm)],
        'Heat takes paint, glue and the temper of aluminium along: what holds a rider is pressed cold.',
      ],
    };
  },
};

const retaining = lockers.flatMap((row) => ('shearMpa' in row ? [row] : []));

const bonded: Reckoning = {
  id: 'bonded-fit',
  label: 'Bonded fit',
  about: 'What a slip fit with retaining compound holds, after what gap, surface and heat take off.',
  group: 'Bonds and fits',
  asks: [
    {
      key: 'grade',
      label: 'Compound',
      options: retaining.map(({ grade, label }) => ({ value: grade, label })),
      first: 'retaining',
    },
    lengthAsked('diameter', 'Diameter', [3, 120]),
    lengthAsked('length', 'Length bonded', [1, 150]),
  ],
  compute(given): Calculated {
    const row = retaining.find(({ grade }) => grade === given.choice('grade'));
    if (!row) return { ok: false, reason: 'No strength is known for this compound.' };
    const [diameterMm, lengthMm] = [given.number('diameter'), given.number('length')];
    const inputs = [
      input('τ', row.shearMpa, 'MPa'),
      input('share left', BOND_SHARE),
      input('d', diameterMm, 'mm'),
      input('L', lengthMm, 'mm'),
    ];
    const source = `definition of shear; τ: ${row.source}`;
    const forceN = bondedForceN(row.shearMpa, diameterMm, lengthMm);
    const torqueNm = bondedTorqueNm(row.shearMpa, diameterMm, lengthMm);
    return {
      ok: true,
      results: [
        { label: 'Holds along', working: worked(forceN, 'N', 'F = τ·share·π·d·L', inputs, source, 'memory') },
        {
          label: 'Holds against turning',
          working: worked(torqueNm, 'N·m', 'T = F·d/2', inputs, source, 'memory'),
        },
      ],
    };
  },
};

export const fitReckonings: readonly Reckoning[] = [cure, press, bonded, fitByLetters];

import {
  type CeilingGround,
  type CeilingRefusal,
  lowestPressureBar,
  pressureCeiling,
} from '../../mechanics/tyres/pressureCeiling.ts';
import { sealantDose, sealantFilmMm, tyreVolumeL } from '../../mechanics/tyres/tyreVolume.ts';
import { given as input } from '../../mechanics/working.ts';
import { pressureElsewhere } from './pressureElsewhere.ts';
import {
  beadSeatAsked,
  type Calculated,
  type ChoiceAsked,
  lengthAsked,
  pressureAsked,
  type Reckoning,
  worked,
} from './reckoning.ts';
import { rimTape } from './rimTape.ts';
import { valve } from './valve.ts';

const widthAsked = lengthAsked('width', 'Width of the tyre', [18, 130], {
  hint: 'The number before the dash.',
});
const yesNo = (key: string, label: string, first: 'yes' | 'no', hint?: string): ChoiceAsked => ({
  ...{ key, label, first },
  ...(hint ? { hint } : {}),
  options: [
    { value: 'no', label: 'No' },
    { value: 'yes', label: 'Yes' },
  ],
});
const markedAsked = yesNo('marked', 'Marked tubeless', 'no', 'Only a printed mark counts.');

const refusals: Record<CeilingRefusal, string> = {
  'no-limit-printed': 'No limit is printed on the tyre: read it before any pressure goes in.',
  'straight-side-needs-a-tubeless-tyre':
    'A hookless rim needs a tyre marked tubeless: another bead can walk off it.',
  'tyre-wider-than-the-rim-table': 'The rim’s table ends before this width.',
};
const grounds: Record<CeilingGround, string> = {
  tyre: 'The tyre decides.',
  rim: 'The rim decides.',
  'straight-side': 'The rim without hooks decides.',
  'not-marked-tubeless': 'The tyre is not made to run without a tube: that decides.',
};

const ceiling: Reckoning = {
  id: 'pressure-ceiling',
  label: 'Tyre pressure ceiling',
  about: 'The highest pressure tyre and rim may see: the lowest of everything printed.',
  group: 'Tyres',
  asks: [
    widthAsked,
    pressureAsked('tyre', 'Printed on the tyre', [0.5, 12], { optional: true }),
    pressureAsked('rim', 'Printed on the rim', [0.5, 12], { optional: true }),
    yesNo('straight', 'Rim without hooks', 'no', 'A fingernail catches under a hook.'),
    markedAsked,
    yesNo('tubeless', 'Run without a tube', 'no'),
    yesNo('offroad', 'Off the road', 'no'),
  ],
  compute(given): Calculated {
    const [tyreMaxBar, rimMax] = [given.maybe('tyre'), given.maybe('rim')];
    const tyreWidthMm = given.number('width');
    const ceiling = pressureCeiling({
      tyreWidthMm,
      ...(tyreMaxBar === undefined ? {} : { tyreMaxBar }),
      ...(rimMax === undefined ? {} : { rimMax }),
      straightSide: given.choice('straight') === 'yes',
      markedTubeless: given.choice('marked') === 'yes',
      withoutTube: given.choice('tubeless') === 'yes',
    });
    if (!ceiling.ok) return { ok: false, reason: refusals[ceiling.reason] };
    const leastBar = lowestPressureBar(tyreWidthMm, given.choice('offroad') === 'yes');
    return {
      ok: true,
      results: [
        { label: 'At most', working: ceiling.working },
        {
          label: 'Meant for at least',
          working: worked(
            leastBar,
            'bar',
            'by width and ground',
            [input('width', tyreWidthMm, 'mm')],
            'encyclopedia text on ISO 5775',
            'seen',
          ),
        },
      ],
      remarks: [
        grounds[ceiling.decidedBy],
        ...(leastBar > ceiling.ceilingBar
          ? ['The least it is meant for lies above what it may see: not these two.']
          : []),
        ...(rimMax === undefined
          ? ['Nothing is printed on the rim: its maker’s figure would count too.']
          : []),
      ],
    };
  },
};

const volume: Reckoning = {
  id: 'tyre-volume',
  label: 'Tyre volume and sealant',
  about: 'How much air a tyre holds, and how much sealant a size needs that no bottle lists.',
  group: 'Tyres',
  asks: [
    widthAsked,
    beadSeatAsked,
    markedAsked,
    lengthAsked('band', 'Sealant spreads over', [3, 130], {
      optional: true,
      hint: 'Width of the wet band inside the tread.',
    }),
  ],
  compute(given) {
    const [widthMm, beadSeatMm] = [given.number('width'), Number(given.choice('seat'))];
    const dose = sealantDose(widthMm, beadSeatMm, given.choice('marked') === 'no');
    const bandMm = given.maybe('band');
    const firstMl = dose.firstMl.mid;
    const inputs = [input('W', widthMm, 'mm'), input('D', beadSeatMm, 'mm')];
    return {
      ok: true,
      results: [
        {
          label: 'Air',
          working: worked(
            tyreVolumeL(widthMm, beadSeatMm),
            'L',
            'V = (π²/4)·(D + W)·W²',
            inputs,
            'volume of a torus; the rim well makes about a tenth of difference',
            'exact',
          ),
        },
        { label: 'Sealant, first fill', working: dose.working },
        {
          label: 'Sealant, top-up',
          working: { ...dose.working, result: dose.topUpMl, formula: `half of: ${dose.working.formula}` },
        },
        ...(bandMm === undefined
          ? []
          : [
              {
                label: 'Depth of sealant on the tread',
                working: worked(
                  sealantFilmMm(firstMl, widthMm, beadSeatMm, bandMm),
                  'mm',
                  '1000·V / (π·(D + 2·W)·band)',
                  [...inputs, input('V', firstMl, 'mL'), input('band', bandMm, 'mm')],
                  'volume over area; the first fill, before any of it dries',
                  'proposal',
                ),
              },
            ]),
      ],
      remarks: ['The bottle goes first where it lists the size.'],
    };
  },
};

export const tyreReckonings: readonly Reckoning[] = [ceiling, volume, pressureElsewhere, valve, rimTape];

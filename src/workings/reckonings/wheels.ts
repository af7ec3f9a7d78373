import { crossingAngleDeg } from '../../mechanics/wheels/lacing.ts';
import { spokeLengthSensitivity } from '../../mechanics/wheels/spokeLength.ts';
import { bracingWorking, spokeLengthWorking } from '../../mechanics/wheels/spokeLengthWorkings.ts';
import { given as input } from '../../mechanics/working.ts';
import { bareAsked, type Calculated, lengthAsked, type Reckoning, worked } from './reckoning.ts';

const spoke: Reckoning = {
  id: 'spoke-length',
  label: 'Spoke length',
  about: 'Length of an ordinary spoke on one side of a wheel, before stretch and squeeze.',
  group: 'Wheels',
  asks: [
    lengthAsked('erd', 'Effective rim diameter', [120, 780], {
      hint: 'To where the spoke ends should sit.',
    }),
    lengthAsked('pcd', 'Circle of the holes in the flange', [12, 390]),
    lengthAsked('flange', 'Flange to the middle of the wheel', [0, 150], { hint: 'Along the axle.' }),
    bareAsked('holes', 'Spokes on this side', [4, 36], { whole: true, first: '16' }),
    bareAsked('crosses', 'Crossings', [0, 9], { whole: true, first: '3' }),
    lengthAsked('hole', 'Hole in the flange', [1.5, 5], { first: '2.6' }),
  ],
  compute(given): Calculated {
    const [erdMm, pcdMm] = [given.number('erd'), given.number('pcd')];
    const [holes, crosses] = [given.number('holes'), given.number('crosses')];
    if (pcdMm > erdMm - 20) return { ok: false, reason: 'The flange cannot be as large as the rim.' };
    if (crosses * 360 > holes * 180)
      return {
        ok: false,
        reason: 'That many crossings do not go on this flange: the spoke would pass the axle.',
      };
    const side = { erdMm, pcdMm, flangeMm: given.number('flange'), hubHoleMm: given.number('hole') };
    const crossingDeg = crossingAngleDeg(crosses, holes);
    const { perErd } = spokeLengthSensitivity(side, crossingDeg);
    return {
      ok: true,
      results: [
        { label: 'Length', working: spokeLengthWorking(side, crossingDeg) },
        { label: 'Bracing angle', working: bracingWorking(side, crossingDeg) },
        {
          label: 'One millimetre of rim diameter changes it by',
          working: worked(
            perErd,
            'mm',
            '∂L/∂ERD = (R − r·cos α) / 2L',
            [input('R', erdMm / 2, 'mm'), input('r', pcdMm / 2, 'mm'), input('α', crossingDeg, '°')],
            'derivative of the length',
            'exact',
          ),
        },
      ],
      remarks: ['Stretch and rim take up a few tenths: between two lengths, the shorter.'],
    };
  },
};

export const wheelReckonings: readonly Reckoning[] = [spoke];

import { channelWidthMm, tapeLengthM, tapeWidthMm } from '../../mechanics/tyres/rimTape.ts';
import { given as input } from '../../mechanics/working.ts';
import { bareAsked, beadSeatAsked, lengthAsked, type Reckoning, worked } from './reckoning.ts';

/** Tape for a rim without a tube: how wide, and how much of it. */
export const rimTape: Reckoning = {
  id: 'rim-tape',
  label: 'Rim tape',
  about: 'Width and length of the tape that seals a rim.',
  group: 'Tyres',
  asks: [
    lengthAsked('inner', 'Inner width of the rim', [10, 110]),
    beadSeatAsked,
    bareAsked('turns', 'Turns of tape', [1, 4], { whole: true, first: '2' }),
    lengthAsked('flank', 'Run of one flank of the well', [0, 40], { first: '0' }),
    lengthAsked('depth', 'Depth of the well', [0, 30], { first: '0' }),
  ],
  compute(given) {
    const [innerMm, flankMm, depthMm] = [given.number('inner'), given.number('flank'), given.number('depth')];
    if (2 * flankMm > innerMm) return { ok: false, reason: 'Two such flanks do not fit in that width.' };
    const [turns, beadSeatMm] = [given.number('turns'), Number(given.choice('seat'))];
    const inner = input('b', innerMm, 'mm');
    return {
      ok: true,
      results: [
        {
          label: 'Tape as wide as',
          working: worked(
            tapeWidthMm(innerMm),
            'mm',
            'b + 2 to b + 5',
            [inner],
            'assembly article on rim tape',
            'seen',
          ),
        },
        {
          label: 'Well along its profile',
          working: worked(
            channelWidthMm(innerMm, flankMm, depthMm),
            'mm',
            'b + 2·(√(flank² + depth²) − flank)',
            [inner, input('flank', flankMm, 'mm'), input('depth', depthMm, 'mm')],
            'geometry',
            'exact',
          ),
        },
        {
          label: 'Length to cut',
          working: worked(
            tapeLengthM(turns, beadSeatMm),
            'm',
            '(turns·π·D + 2 · 125 mm) / 1000',
            [input('turns', turns, ''), input('D', beadSeatMm, 'mm')],
            'assembly article: each end 10 to 15 cm past the valve',
            'seen',
          ),
        },
      ],
      remarks: ['Tape as wide as the opening is too narrow where the well is deep: compare the first two.'],
    };
  },
};

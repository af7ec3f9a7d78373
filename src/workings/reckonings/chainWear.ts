import { chainWearLimit, chainWearPercent, wornLengthMm } from '../../mechanics/drive/chainWear.ts';
import { CHAIN_PITCH_MM } from '../../mechanics/drive/pitchDiameter.ts';
import { given as input } from '../../mechanics/working.ts';
import { bareAsked, type Calculated, lengthAsked, type Reckoning, worked } from './reckoning.ts';

/** Wear of a chain, by a ruler. */
export const chainWear: Reckoning = {
  id: 'chain-wear',
  label: 'Chain wear',
  about: 'How far a chain has grown, by a ruler, and where it is commonly replaced.',
  group: 'Drive',
  asks: [
    lengthAsked('measured', 'Rivet to the same edge of a later rivet', [100, 1400], {
      hint: 'Chain taut. 24 links of a new chain are 12 in, 304.8 mm.',
    }),
    bareAsked('pitches', 'Links between them', [10, 100], { whole: true, first: '24' }),
    bareAsked('sprockets', 'Sprockets at the back', [1, 14], { whole: true, first: '1' }),
  ],
  compute(given): Calculated {
    const [measuredMm, pitches] = [given.number('measured'), given.number('pitches')];
    const newMm = pitches * CHAIN_PITCH_MM;
    if (measuredMm < newMm * 0.97 || measuredMm > newMm * 1.1)
      return { ok: false, reason: 'That is not a chain of half an inch with so many links. Count again.' };
    const percent = chainWearPercent(measuredMm, pitches);
    const limit = chainWearLimit(given.number('sprockets'));
    const common = 'common practice, no source; the chain maker’s own figure goes first';
    return {
      ok: true,
      results: [
        {
          label: 'Grown by',
          working: worked(
            percent,
            '%',
            'measured / (pitches · 12.7) − 1',
            [input('measured', measuredMm, 'mm'), input('pitches', pitches)],
            'definition; pitch half an inch',
            'exact',
          ),
        },
        {
          label: 'Reads this when it is commonly replaced',
          working: worked(
            wornLengthMm(pitches, limit.percent),
            'mm',
            'pitches · 12.7 · (1 + limit)',
            [input('pitches', pitches), input('limit', limit.percent, '%')],
            common,
            limit.known,
          ),
        },
      ],
      remarks: [percent >= limit.percent ? 'Time for another chain.' : 'It can stay on.'],
    };
  },
};

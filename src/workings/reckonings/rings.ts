import { frontChainlineMm } from '../../mechanics/drive/chainline.ts';
import { boltCircleMm, holeChordMm } from '../../mechanics/screws/boltCircle.ts';
import { given as input } from '../../mechanics/working.ts';
import { bareAsked, type Calculated, lengthAsked, type Reckoning, worked } from './reckoning.ts';

const boltCircle: Reckoning = {
  id: 'bolt-circle',
  label: 'Bolt circle',
  about: 'The bolt circle of a ring or rotor from hole to next hole, or the other way round.',
  group: 'Drive',
  asks: [
    bareAsked('bolts', 'Bolts', [3, 12], { whole: true, first: '5' }),
    lengthAsked('holes', 'Hole to next hole, centre to centre', [5, 150], {
      optional: true,
      hint: 'Edge to the same edge of the next hole reads the same.',
    }),
    lengthAsked('circle', 'Bolt circle', [20, 200], { optional: true }),
  ],
  compute(given): Calculated {
    const bolts = given.number('bolts');
    const [chordMm, circleMm] = [given.maybe('holes'), given.maybe('circle')];
    if (chordMm === undefined && circleMm === undefined)
      return { ok: false, reason: 'Give the distance of two holes, or the circle.' };
    const count = input('N', bolts);
    return {
      ok: true,
      results: [
        ...(chordMm === undefined
          ? []
          : [
              {
                label: 'Bolt circle',
                working: worked(
                  boltCircleMm(chordMm, bolts),
                  'mm',
                  'd = c / sin(180°/N)',
                  [input('c', chordMm, 'mm'), count],
                  'chord of a circle',
                  'exact',
                ),
              },
            ]),
        ...(circleMm === undefined
          ? []
          : [
              {
                label: 'Hole to next hole',
                working: worked(
                  holeChordMm(circleMm, bolts),
                  'mm',
                  'c = d · sin(180°/N)',
                  [input('d', circleMm, 'mm'), count],
                  'chord of a circle',
                  'exact',
                ),
              },
            ]),
      ],
    };
  },
};

const ringChainline: Reckoning = {
  id: 'ring-chainline',
  label: 'Chainline of a ring',
  about: 'Where a ring sits, by a ruler from the seat tube.',
  group: 'Drive',
  asks: [
    lengthAsked('tube', 'Outside of the seat tube', [20, 80]),
    lengthAsked('gap', 'Tube to the middle of the teeth', [0, 100]),
  ],
  compute(given): Calculated {
    const [tubeMm, gapMm] = [given.number('tube'), given.number('gap')];
    return {
      ok: true,
      results: [
        {
          label: 'Chainline',
          working: worked(
            frontChainlineMm(tubeMm, gapMm),
            'mm',
            'tube / 2 + gap',
            [input('tube', tubeMm, 'mm'), input('gap', gapMm, 'mm')],
            'definition; the tube sits in the middle of the bike',
            'exact',
          ),
        },
      ],
    };
  },
};

export const ringReckonings: readonly Reckoning[] = [boltCircle, ringChainline];

import { fitTogether, type LimitsRefusal, limits } from '../../mechanics/clamps/limitsAndFits.ts';
import { given as input } from '../../mechanics/working.ts';
import { isoFits } from '../../standards/interfaces/isoFits.ts';
import { weakest } from '../joint/line.ts';
import { type Calculated, type ChoiceAsked, lengthAsked, type Reckoning, worked } from './reckoning.ts';

const refusals: Record<LimitsRefusal, string> = {
  'not-a-class': 'A class is a letter and a grade, such as H7.',
  'size-outside-table': 'The table does not reach this size.',
  'letter-not-in-table': 'This letter is not in the table.',
  'grade-not-in-table': 'This grade is not in the table for this letter.',
};

const letters = [...new Set(isoFits.flatMap(({ shaftUm }) => Object.keys(shaftUm)))].sort();
const grades = [...new Set(isoFits.flatMap(({ gradeUm }) => Object.keys(gradeUm)))].sort(
  (a, b) => Number(a) - Number(b),
);
const letterAsked = (
  key: string,
  label: string,
  write: (letter: string) => string,
  first: string,
): ChoiceAsked => ({
  ...{ key, label, first },
  options: letters.map((letter) => ({ value: write(letter), label: write(letter) })),
});
const gradeAsked = (key: string, label: string, first: string): ChoiceAsked => ({
  ...{ key, label, first },
  options: grades.map((grade) => ({ value: grade, label: grade })),
});
const limitKinds = {
  clearance: 'They always go together with play.',
  transition: 'Play or press, as the two parts fall out.',
  interference: 'They always have to be pressed.',
} as const;

/** A fit as drawings name it: size, hole, shaft. */
export const fitByLetters: Reckoning = {
  id: 'fit-by-letters',
  label: 'Fit by letters',
  about: 'What 37 H7 p6 on a drawing means in hundredths: limits of hole and shaft, most and least press.',
  group: 'Bonds and fits',
  asks: [
    lengthAsked('size', 'Nominal size', [1, 120]),
    letterAsked('hole', 'Hole, letter', (letter) => letter.toUpperCase(), 'H'),
    gradeAsked('holeGrade', 'Hole, grade', '7'),
    letterAsked('shaft', 'Shaft, letter', (letter) => letter, 'h'),
    gradeAsked('shaftGrade', 'Shaft, grade', '6'),
  ],
  compute(given): Calculated {
    const sizeMm = given.number('size');
    const [holeClass, shaftClass] = [
      `${given.choice('hole')}${given.choice('holeGrade')}`,
      `${given.choice('shaft')}${given.choice('shaftGrade')}`,
    ];
    const [hole, shaft] = [limits(isoFits, sizeMm, holeClass), limits(isoFits, sizeMm, shaftClass)];
    if (!hole.ok) return { ok: false, reason: refusals[hole.reason] };
    if (!shaft.ok) return { ok: false, reason: refusals[shaft.reason] };
    const fit = fitTogether(hole, shaft);
    const size = input('nominal size', sizeMm, 'mm');
    const source = 'ISO 286-1 and -2; rows read in public copies where the class is marked as seen';
    const limit = (label: string, um: number, known: typeof hole.known) => ({
      label,
      working: worked(
        sizeMm + um / 1000,
        'mm',
        'nominal size + deviation',
        [size, input('deviation', um, 'µm')],
        source,
        known,
      ),
    });
    const known = weakest(hole.known, shaft.known);
    const ends = [
      input('hole, least', hole.lowerUm, 'µm'),
      input('hole, most', hole.upperUm, 'µm'),
      input('shaft, least', shaft.lowerUm, 'µm'),
      input('shaft, most', shaft.upperUm, 'µm'),
    ];
    return {
      ok: true,
      results: [
        limit(`Hole ${holeClass}, least`, hole.lowerUm, hole.known),
        limit(`Hole ${holeClass}, most`, hole.upperUm, hole.known),
        limit(`Shaft ${shaftClass}, least`, shaft.lowerUm, shaft.known),
        limit(`Shaft ${shaftClass}, most`, shaft.upperUm, shaft.known),
        {
          label: 'Most press (below 0 is play)',
          working: worked(fit.mostUm, 'µm', 'largest shaft − smallest hole', ends, source, known),
        },
        {
          label: 'Least press (below 0 is play)',
          working: worked(fit.leastUm, 'µm', 'smallest shaft − largest hole', ends, source, known),
        },
      ],
      remarks: [limitKinds[fit.kind]],
    };
  },
};

import { rotorWear } from '../../mechanics/brakes/rotor.ts';
import { mmText } from '../bridges/rule.ts';
import { readingOf } from '../faces/reading.ts';
import { type Finding, finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { askAt, facesOf } from '../placed.ts';

/** What is left of each rotor that was measured; others are left out. */
export function rotorWearFindings(parts: readonly PilePart[]): Finding[] {
  return facesOf(parts, 'rotor-size').flatMap(({ face, ref }) => {
    const thickness = readingOf(face, 'thicknessMm');
    if (!thickness) return [];
    const least = readingOf(face, 'minimumMm');
    const rest = {
      risk: 'A rotor below its minimum overheats, warps and can break under hard braking.',
      source: 'the minimum printed on the rotor; a workshop tool maker’s article on rotor wear',
      known: 'seen',
    } as const;
    const measured = `The rotor is ${mmText(thickness.mid)} thick at its thinnest`;
    if (!least)
      return [
        finding('rotor-wear', [ref], {
          outcome: 'not-known',
          because: `${measured}; its minimum is printed on it; enter that first.`,
          asks: [askAt(ref.partId, face, 'minimumMm')],
          ...rest,
        }),
      ];
    const { wear, leftMm } = rotorWear({ thicknessMm: thickness.mid, printedMinimumMm: least.mid });
    const mark = `it is marked ${mmText(least.mid)}`;
    if (wear === 'replace')
      return [
        finding('rotor-wear', [ref], {
          outcome: 'does-not-fit',
          because: `${measured}, ${mark}: it is worn out.`,
          ...rest,
        }),
      ];
    return [
      finding('rotor-wear', [ref], {
        outcome: 'fits',
        because: `${measured}, ${mark}: ${mmText(leftMm ?? 0)} left.`,
        notes: wear === 'watch' ? ['So near its minimum, check it at every service.'] : [],
        ...rest,
      }),
    ];
  });
}

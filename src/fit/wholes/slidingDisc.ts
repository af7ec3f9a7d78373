import { mmText } from '../bridges/rule.ts';
import { readingOf } from '../faces/reading.ts';
import { type Finding, finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { facesOf, onlyFace } from '../placed.ts';

/** The pads reach about this far over the rotor's edge either way. */
const DESIGN_POINT_MM = 1;

/** A rear disc on a frame whose axle slides: the rotor moves with the axle, the caliper does not. */
export function slidingDiscFindings(parts: readonly PilePart[]): Finding[] {
  const mount = onlyFace(parts, 'disc-mount', 'frame');
  const slot = onlyFace(parts, 'axle-slot', 'frame');
  const calipers = facesOf(parts, 'caliper-mount').filter(({ part }) => part.position === 'rear');
  if (!mount || !slot || calipers.length === 0) return [];
  const [near, far] = [readingOf(slot.face, 'nearestMm'), readingOf(slot.face, 'farthestMm')];
  if (!near || !far || far.mid - near.mid <= 2 * DESIGN_POINT_MM) return [];
  return [
    finding('disc-on-sliding-axle', [mount.ref, slot.ref], {
      outcome: 'fits',
      because: `The axle slides ${mmText(far.mid - near.mid)}, and the rotor with it, past a caliper that stays.`,
      notes: [
        `Correct only within about ${mmText(DESIGN_POINT_MM)} of where the mount was made for: look at the pads after every change of the chain.`,
      ],
      risk: 'Pads that hang over the rotor wear a step and catch on it.',
      source: 'geometry; the limit unverified',
      known: 'memory',
    }),
  ];
}

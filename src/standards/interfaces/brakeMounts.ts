import type { InterfaceRow, SizeSpan } from '../faces/interfaceRow.ts';

const spacing = 'shop’s article on IS and post mounts';
const rotorSides = 'rider’s page comparing rotor mounts';

const caliper = (
  id: string,
  label: string,
  holeSpacingMm: SizeSpan,
  source: string,
  known: InterfaceRow['known'],
): InterfaceRow => ({
  id,
  label,
  faces: { 'disc-mount': { holeSpacingMm }, 'caliper-mount': { holeSpacingMm } },
  source,
  known,
});

/** Patterns between caliper and frame, and between rotor and hub. */
export const brakeMounts: readonly InterfaceRow[] = [
  caliper('is', 'IS, two plain holes across the bike', [50, 52], spacing, 'seen'),
  caliper('post', 'post mount, two threads along the bike', [73, 75], spacing, 'seen'),
  caliper('flat-rear', 'flat mount, rear pattern', [33, 35], 'from memory', 'memory'),
  caliper('flat-front', 'flat mount, front pattern', [69, 71], 'from memory', 'memory'),
  {
    id: 'six-bolt',
    label: 'six bolts',
    faces: { 'rotor-seat': {}, 'rotor-mount': {} },
    source: rotorSides,
    known: 'seen',
  },
  {
    id: 'centre-lock',
    label: 'spline and lock ring',
    faces: { 'rotor-seat': {}, 'rotor-mount': {} },
    source: rotorSides,
    known: 'seen',
  },
];

/** Rotor an IS mount takes with no step. */
export const isNativeRotorMm = {
  front: 160,
  rear: 140,
  source: 'Q&A on IS adapters: a front 180 adapter is a rear 160 adapter; front least 160, rear least 140',
  known: 'seen',
} as const;

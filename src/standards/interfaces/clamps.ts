import type { FaceKind } from '../faces/faceKinds.ts';
import type { InterfaceRow } from '../faces/interfaceRow.ts';

const bars = 'bar and stem size table, a shop’s copy of an encyclopaedia table';
const seatClamps = 'from memory: sizes of tube outsides';

const size = (
  id: string,
  sizeMm: number,
  inside: FaceKind[],
  outside: FaceKind,
  met: string,
  source: string,
  known: InterfaceRow['known'],
): InterfaceRow => ({
  id,
  // Clamps go by their size at the bench: "old" or "widest" alone is not clear.
  label: [`${sizeMm} mm`, met].filter(Boolean).join(', '),
  faces: {
    ...Object.fromEntries(inside.map((kind) => [kind, { boreMm: sizeMm }])),
    [outside]: { diameterMm: sizeMm },
  },
  source,
  known,
});

const barClamp = (sizeMm: number, met: string, source = bars): InterfaceRow =>
  size(`bar-${sizeMm}`, sizeMm, ['bar-clamp'], 'bar-centre', met, source, 'seen');
const grip = (sizeMm: number, met: string): InterfaceRow =>
  size(`grip-${sizeMm}`, sizeMm, ['grip-bore', 'lever-clamp'], 'grip-area', met, bars, 'seen');
const seat = (sizeMm: number): InterfaceRow =>
  size(`seat-tube-${sizeMm}`, sizeMm, ['seat-clamp'], 'seat-tube-outside', '', seatClamps, 'memory');

const quill = (sizeMm: number, met: string): InterfaceRow =>
  size(
    `quill-${sizeMm}`,
    sizeMm,
    ['steerer-inside'],
    'quill',
    met,
    'bar and stem size article of a parts maker',
    'seen',
  );

/** Clamps on bars, grips and seat tubes, and quills in steerers. */
export const clamps: readonly InterfaceRow[] = [
  barClamp(22.2, '7/8 in, BMX and old roadsters'),
  barClamp(23.8, 'old steel'),
  barClamp(25, 'old French'),
  barClamp(25.4, '1 in'),
  barClamp(25.8, 'between 25.4 and 26.0'),
  barClamp(26, 'road'),
  barClamp(26.4, 'old Italian'),
  barClamp(27, 'old'),
  barClamp(31.8, '1-1/4 in, oversize'),
  barClamp(35, 'widest', 'article on bar diameters'),
  size(
    'grip-22',
    22,
    ['grip-bore', 'lever-clamp'],
    'grip-area',
    'old French flat bars',
    'from memory',
    'memory',
  ),
  grip(22.2, 'flat and BMX bars'),
  grip(23.5, 'old French drops'),
  grip(23.8, 'drop bars'),
  quill(22.2, 'in a 1 in steerer'),
  quill(22, 'old French'),
  quill(21.15, 'old BMX and American'),
  seat(25.4),
  seat(28.6),
  seat(30),
  seat(31.8),
  seat(34.9),
  seat(36.4),
];

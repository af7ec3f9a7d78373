import type { ToleranceStep } from '../../mechanics/clamps/limitsAndFits.ts';

/** IT5 to IT11, µm. */
const grades = (...um: [number, number, number, number, number, number, number]): ToleranceStep['gradeUm'] =>
  Object.fromEntries(um.map((value, at) => [at + 5, value]));

/** Fundamental deviations of the shafts e f g h (upper) and k m n p r s (lower), µm. */
const shafts = (
  e: number,
  f: number,
  g: number,
  k: number,
  m: number,
  n: number,
  p: number,
  r: number,
  s: number,
) => ({
  e,
  f,
  g,
  h: 0,
  k,
  m,
  n,
  p,
  r,
  s,
});

/** Classes that straddle the nominal size, µm: lower end of the shafts j5 to j7, upper end of the holes J6 to J8. */
const straddling = (j: [number, number, number], holes: [number, number, number]) => ({
  jShaftUm: Object.fromEntries(j.map((um, at) => [at + 5, um])),
  jHoleUm: Object.fromEntries(holes.map((um, at) => [at + 6, um])),
});

const from50 = grades(13, 19, 30, 46, 74, 120, 190);

/**
 * ISO 286 size steps a bicycle meets. Source: ISO 286-1 and -2 from memory; the classes under `seen` were
 * read in public copies of the tables (a DIN ISO 286-2 extract, two fit tables).
 */
export const isoFits: readonly ToleranceStep[] = [
  {
    overMm: 0,
    upToMm: 3,
    gradeUm: grades(4, 6, 10, 14, 25, 40, 60),
    ...straddling([-2, -2, -4], [2, 4, 6]),
    shaftUm: shafts(-14, -6, -2, 0, 2, 4, 6, 10, 14),
    seen: [],
  },
  {
    overMm: 3,
    upToMm: 6,
    gradeUm: grades(5, 8, 12, 18, 30, 48, 75),
    ...straddling([-2, -2, -4], [5, 6, 10]),
    shaftUm: shafts(-20, -10, -4, 1, 4, 8, 12, 15, 19),
    seen: [],
  },
  {
    overMm: 6,
    upToMm: 10,
    gradeUm: grades(6, 9, 15, 22, 36, 58, 90),
    ...straddling([-2, -2, -5], [5, 8, 12]),
    shaftUm: shafts(-25, -13, -5, 1, 6, 10, 15, 19, 23),
    seen: [],
  },
  {
    overMm: 10,
    upToMm: 18,
    gradeUm: grades(8, 11, 18, 27, 43, 70, 110),
    ...straddling([-3, -3, -6], [6, 10, 15]),
    shaftUm: shafts(-32, -16, -6, 1, 7, 12, 18, 23, 28),
    seen: [],
  },
  {
    overMm: 18,
    upToMm: 30,
    gradeUm: grades(9, 13, 21, 33, 52, 84, 130),
    ...straddling([-4, -4, -8], [8, 12, 20]),
    shaftUm: shafts(-40, -20, -7, 2, 8, 15, 22, 28, 35),
    seen: [],
  },
  {
    overMm: 30,
    upToMm: 50,
    gradeUm: grades(11, 16, 25, 39, 62, 100, 160),
    ...straddling([-5, -5, -10], [10, 14, 24]),
    shaftUm: shafts(-50, -25, -9, 2, 9, 17, 26, 34, 43),
    seen: ['H7', 'H8', 'H9', 'h6', 'h7', 'h8', 'M7', 'N7', 'R7'],
  },
  {
    overMm: 50,
    upToMm: 65,
    gradeUm: from50,
    ...straddling([-7, -7, -12], [13, 18, 28]),
    shaftUm: shafts(-60, -30, -10, 2, 11, 20, 32, 41, 53),
    seen: ['H7'],
  },
  {
    overMm: 65,
    upToMm: 80,
    gradeUm: from50,
    ...straddling([-7, -7, -12], [13, 18, 28]),
    shaftUm: shafts(-60, -30, -10, 2, 11, 20, 32, 43, 59),
    seen: ['H7'],
  },
];

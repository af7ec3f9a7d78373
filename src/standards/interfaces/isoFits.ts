import type { ToleranceStep } from '../../mechanics/clamps/limitsAndFits.ts';

/** IT5 to IT11, µm. */
const grades = (...um: [number, number, number, number, number, number, number]): ToleranceStep['gradeUm'] =>
  Object.fromEntries(um.map((value, at) => [at + 5, value]));

/** Fundamental deviations of the shafts f g h (upper) and k m n p r s (lower), µm. */
const shafts = (f: number, g: number, k: number, m: number, n: number, p: number, r: number, s: number) => ({
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
    shaftUm: shafts(-6, -2, 0, 2, 4, 6, 10, 14),
    seen: [],
  },
  {
    overMm: 3,
    upToMm: 6,
    gradeUm: grades(5, 8, 12, 18, 30, 48, 75),
    shaftUm: shafts(-10, -4, 1, 4, 8, 12, 15, 19),
    seen: [],
  },
  {
    overMm: 6,
    upToMm: 10,
    gradeUm: grades(6, 9, 15, 22, 36, 58, 90),
    shaftUm: shafts(-13, -5, 1, 6, 10, 15, 19, 23),
    seen: [],
  },
  {
    overMm: 10,
    upToMm: 18,
    gradeUm: grades(8, 11, 18, 27, 43, 70, 110),
    shaftUm: shafts(-16, -6, 1, 7, 12, 18, 23, 28),
    seen: [],
  },
  {
    overMm: 18,
    upToMm: 30,
    gradeUm: grades(9, 13, 21, 33, 52, 84, 130),
    shaftUm: shafts(-20, -7, 2, 8, 15, 22, 28, 35),
    seen: [],
  },
  {
    overMm: 30,
    upToMm: 50,
    gradeUm: grades(11, 16, 25, 39, 62, 100, 160),
    shaftUm: shafts(-25, -9, 2, 9, 17, 26, 34, 43),
    seen: ['H7', 'H8', 'H9', 'h6', 'h7', 'h8', 'M7', 'N7', 'R7'],
  },
  { overMm: 50, upToMm: 65, gradeUm: from50, shaftUm: shafts(-30, -10, 2, 11, 20, 32, 41, 53), seen: ['H7'] },
  { overMm: 65, upToMm: 80, gradeUm: from50, shaftUm: shafts(-30, -10, 2, 11, 20, 32, 43, 59), seen: ['H7'] },
];

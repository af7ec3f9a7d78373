import type { JointFacts } from '../../../../src/workings/joint/jointFacts.ts';

const DAY = 86_400_000;
export const NOW = Date.UTC(2026, 4, 3, 12);

/** The bar clamp of the demo: four M5 in a face plate, printed 5 N·m, a shim from 31.8 to 26.0. */
export const barInStem: JointFacts = {
  kind: 'bar-clamp',
  screws: [{ thread: 'M5', count: 4, screw: 'steel', propertyClass: '8.8', female: 'aluminium', gripMm: 8 }],
  changed: [],
  target: { loNm: 5, hiNm: 5, source: 'printed on the part', byMaker: true, othersNm: [] },
  appliedNm: 5,
  onThread: 'none',
  clampFace: 'metal-dry',
  clamp: { construction: 'two-piece', shim: 'slit' },
  tubeMm: 26,
  boreMm: 31.8,
  bar: { riseMm: 60, reachMm: -40 },
  piecesBetween: 1,
  softLayer: false,
  tool: { name: 'small wrench', toolClass: 'click', minNm: 2, maxNm: 24, lastCheckMs: NOW - 30 * DAY },
  lockerMeant: false,
  nowMs: NOW,
};

export const joint = (change: Partial<JointFacts> = {}): JointFacts => ({ ...barInStem, ...change });

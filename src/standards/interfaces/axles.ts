import type { InterfaceRow, SizeSpan } from '../faces/interfaceRow.ts';

const threadList = 'workshop list of bicycle axle threads';
const axle = (
  id: string,
  label: string,
  diameterMm: number,
  widthMm: SizeSpan,
  source: string,
  rest: Partial<InterfaceRow> = {},
): InterfaceRow => ({
  id,
  label,
  faces: { axle: { diameterMm }, 'axle-slot': { widthMm } },
  source,
  known: 'seen',
  ...rest,
});

const rod = { what: 'rod of a quick release', mm: 5, source: 'wheel builder’s page on axle standards' };

/** Axles and the slots made for them. */
export const axles: readonly InterfaceRow[] = [
  axle('axle-5/16', '5/16 in', 7.938, 8, threadList, { remark: '24 or 26 threads per inch.' }),
  axle('axle-9', '9 hollow, front', 9, 9, threadList, { others: [rod] }),
  axle('axle-3/8', '3/8 in', 9.525, [9.6, 10], threadList, {
    remark: '26 threads per inch are usual, 24 exist, and 1 mm pitch starts on 26 and then binds.',
  }),
  axle('axle-10', '10', 10, 10, threadList, {
    remark: 'M10 × 1; old ones 26 per inch.',
    others: [rod],
  }),
  axle(
    'axle-10-bolts',
    '10 bolts in a female axle',
    10,
    10,
    'article on male and female axles; pitch from memory',
    {
      fromMemory: ['diameterMm', 'widthMm'],
      known: 'memory',
      remark: 'M10, pitch 1, 1.25 or 1.5, or 3/8 in: measure the bolt. In a 14 mm slot each needs its bush.',
    },
  ),
  axle('axle-14', '14, BMX', 14, [14, 14.5], 'two pages on BMX axles', {
    fromMemory: ['widthMm'],
  }),
  axle('axle-12-through', '12 through', 12, 12, 'thru axle page of a parts shop', {
    remark: 'Pitch 1.0, 1.5 or 1.75 and length are not standardised.',
  }),
  axle('axle-15-through', '15 through', 15, 15, 'thru axle page of a parts shop', {
    remark: 'Ends in M15 × 1.5; some in M14 × 1.5 (from memory). Measure the thread, not the shaft.',
  }),
  axle('axle-20-through', '20 through', 20, 20, 'thru axle page of a parts shop'),
];

/** Filing a slot wider: up to this much the flats stay as they were. */
export const slotFiling = {
  cosmeticMm: 0.5,
  source: 'our suggestion, to be judged by a frame builder',
  known: 'proposal',
} as const;

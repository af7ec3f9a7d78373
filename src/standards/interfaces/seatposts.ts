import type { InterfaceRow } from '../faces/interfaceRow.ts';

const sizes = 'encyclopaedia mirror, article on seat posts';
const saddleMounts = 'two riders’ pages on saddle mounts';
const rails = 'seller’s article on saddle rails';

const post = (sizeMm: number, known: InterfaceRow['known'] = 'seen', source = sizes): InterfaceRow => ({
  id: `post-${sizeMm}`,
  label: `${sizeMm} post`,
  faces: { post: { diameterMm: sizeMm }, 'seat-tube': { boreMm: sizeMm } },
  source,
  known,
});
const mount = (id: string, label: string, source = saddleMounts): InterfaceRow => ({
  id,
  label,
  faces: { 'post-head': {}, 'saddle-mount': {} },
  source,
  known: 'seen',
});

/** Seatposts, and how saddles sit on them. */
export const seatposts: readonly InterfaceRow[] = [
  post(21.15),
  post(22.2, 'seen', 'seller’s list of seat post sizes'),
  post(25, 'memory', 'from memory'),
  post(25.4),
  ...[26, 26.2, 26.4, 26.6, 26.8, 27].map((mm) => post(mm, 'memory', 'from memory: steps of 0.2')),
  post(27.2),
  post(28.6, 'memory', 'from memory'),
  post(30, 'memory', 'from memory'),
  post(30.9),
  post(31.6),
  post(34.9, 'memory', 'from memory'),
  post(35),
  {
    ...mount('two-rail', 'two rails'),
    faces: { 'post-head': {}, 'saddle-mount': { railMm: [6.9, 7.1], railHeightMm: [6.9, 7.1] } },
    others: [{ what: 'rails, centre to centre', mm: 44, source: 'suspension seatpost page on saddle rails' }],
    source: rails,
  },
  {
    ...mount('two-rail-oval', 'two oval rails, 7 × 9'),
    faces: {
      'post-head': { railMm: 7, railHeightMm: [9, 9.9] },
      'saddle-mount': { railMm: 7, railHeightMm: [9, 9.9] },
    },
    source: rails,
  },
  mount('mono-rail', 'one beam'),
  mount('pivotal', 'one bolt from above on splines'),
  mount('tripod', 'three-point mount, one bolt'),
  mount('plain-7/8', 'clamp head on a plain 7/8 in post', 'seat clamp article of a parts shop'),
];

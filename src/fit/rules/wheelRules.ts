import type { Face } from '../face.ts';
import { readingOf } from '../reading.ts';
import { askFor, mm, type Rule, unknown } from '../rule.ts';
import type { Judgement } from '../verdict.ts';
import { sizedRule } from './sized.ts';
import { tyreRule } from './tyreRule.ts';

function spokesMatch(hub: Face, rim: Face): Judgement {
  const holes = [readingOf(hub, 'holesCount'), readingOf(rim, 'holesCount')] as const;
  if (!holes[0] || !holes[1])
    return unknown('Count the holes.', [
      ...(holes[0] ? [] : [askFor(hub, 'holesCount')]),
      ...(holes[1] ? [] : [askFor(rim, 'holesCount')]),
    ]);
  return holes[0].mid === holes[1].mid
    ? { meets: 'yes', because: `${holes[0].mid} holes each.` }
    : { meets: 'no', because: `${holes[0].mid} holes in the hub, ${holes[1].mid} in the rim.` };
}

/** Hub, rim, tyre, valve. */
export const wheelRules: readonly Rule[] = [
  {
    topic: 'spokes-hub-rim',
    first: 'hub-holes',
    second: 'rim-holes',
    risk: 'A wheel laced over missing holes has no known strength.',
    source: 'common practice, no source',
    known: 'proposal',
    judge: spokesMatch,
  },
  tyreRule,
  {
    topic: 'tyre-in-frame',
    first: 'tyre-room',
    second: 'tyre-bead',
    risk: 'A tyre that touches the frame saws through it, one that picks up a stone stops the wheel.',
    source: 'the room as somebody measured it, air on both sides already taken off',
    known: 'proposal',
    judge: (room, tyre) => {
      const wide = [readingOf(room, 'widthMm'), readingOf(tyre, 'widthMm')] as const;
      if (!wide[0] || !wide[1])
        return unknown('Room or tyre width is missing.', [
          ...(wide[0] ? [] : [askFor(room, 'widthMm')]),
          ...(wide[1] ? [] : [askFor(tyre, 'widthMm')]),
        ]);
      const gapMm = {
        lo: wide[0].lo - wide[1].hi,
        mid: wide[0].mid - wide[1].mid,
        hi: wide[0].hi - wide[1].lo,
      };
      return gapMm.mid >= 0
        ? { meets: 'yes', because: `A ${mm(wide[1].mid)} tyre where ${mm(wide[0].mid)} has room.`, gapMm }
        : { meets: 'no', because: `The tyre is ${mm(-gapMm.mid)} too wide.`, gapMm };
    },
  },
  sizedRule({
    topic: 'valve-in-rim',
    hole: ['valve-hole', 'diameterMm'],
    rod: ['valve-stem', 'diameterMm'],
    gap: [0.2, 0.6],
    risk: 'A valve that tilts tears at its root and lets go all at once.',
    source: 'valve hole pages of parts shops; limits are our own',
    known: 'proposal',
  }),
];

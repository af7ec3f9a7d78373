import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf } from '../faces/reading.ts';
import type { Judgement } from '../verdict.ts';
import { sizedRule } from './sized.ts';
import { tyreRule } from './tyreRule.ts';

function spokesMatch(hub: Face, rim: Face): Judgement {
  const holes = [readingOf(hub, 'holesCount'), readingOf(rim, 'holesCount')] as const;
  if (!holes[0] || !holes[1])
    return unknown('The spoke holes of hub or rim are not counted yet.', [
      ...(holes[0] ? [] : [askFor(hub, 'holesCount')]),
      ...(holes[1] ? [] : [askFor(rim, 'holesCount')]),
    ]);
  return holes[0].mid === holes[1].mid
    ? { meets: 'yes', because: `Hub and rim have ${holes[0].mid} spoke holes each.` }
    : { meets: 'no', because: `The hub has ${holes[0].mid} spoke holes, the rim ${holes[1].mid}.` };
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
    source: 'the clearance as measured, with the gap on both sides already taken off',
    known: 'proposal',
    judge: (room, tyre) => {
      const wide = [readingOf(room, 'widthMm'), readingOf(tyre, 'widthMm')] as const;
      if (!wide[0] || !wide[1])
        return unknown('The tyre clearance of the frame or the width of the tyre is not known yet.', [
          ...(wide[0] ? [] : [askFor(room, 'widthMm')]),
          ...(wide[1] ? [] : [askFor(tyre, 'widthMm')]),
        ]);
      const gapMm = {
        lo: wide[0].lo - wide[1].hi,
        mid: wide[0].mid - wide[1].mid,
        hi: wide[0].hi - wide[1].lo,
      };
      return gapMm.mid >= 0
        ? {
            meets: 'yes',
            because: `The tyre is ${mmText(wide[1].mid)} wide, and there is clearance for ${mmText(wide[0].mid)}.`,
            gapMm,
          }
        : {
            meets: 'no',
            because: `The tyre is ${mmText(wide[1].mid)} wide, ${mmText(-gapMm.mid)} more than there is clearance for.`,
            gapMm,
          };
    },
  },
  sizedRule({
    topic: 'valve-in-rim',
    hole: ['valve-hole', 'diameterMm', 'valve hole'],
    rod: ['valve-stem', 'diameterMm', 'valve'],
    gap: [0.2, 0.6],
    risk: 'A valve that tilts tears at its root and fails all at once.',
    source: 'valve hole pages of parts shops; limits are our own',
    known: 'proposal',
  }),
];

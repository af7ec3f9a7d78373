import type { Face } from '../face.ts';
import { readingOf, traitOf } from '../reading.ts';
import { askFor, mm, type Rule, unknown } from '../rule.ts';
import type { Judgement } from '../verdict.ts';
import { sizedRule } from './sized.ts';

const encyclopaedia = 'en.wikipedia.org, ISO 5775';

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

function tyreOnRim(rim: Face, tyre: Face): Judgement {
  const seats = [readingOf(rim, 'beadSeatMm'), readingOf(tyre, 'beadSeatMm')] as const;
  if (!seats[0] || !seats[1])
    return unknown('The bead seat diameter of one of them is missing.', [
      ...(seats[0] ? [] : [askFor(rim, 'beadSeatMm')]),
      ...(seats[1] ? [] : [askFor(tyre, 'beadSeatMm')]),
    ]);
  if (seats[0].mid !== seats[1].mid)
    return {
      meets: 'no',
      because: `Tyre for ${seats[1].mid}, rim of ${seats[0].mid}: near is not equal, whatever the inches say.`,
      source: encyclopaedia,
      known: 'seen',
    };
  if (traitOf(rim, 'bead') === 'straight' && traitOf(tyre, 'tubeless') === 'no')
    return {
      meets: 'no',
      because: 'A rim with straight walls holds only a tyre that is marked for it.',
      source: 'extract of BS ISO 5775-2:2015 on straight side rims; the refusal is our own',
      known: 'proposal',
    };
  return { meets: 'yes', because: `Both are ${seats[0].mid}.`, source: encyclopaedia, known: 'seen' };
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
  {
    topic: 'tyre-on-rim',
    first: 'rim-seat',
    second: 'tyre-bead',
    risk: 'A tyre that is nearly the size jumps off the rim.',
    source: encyclopaedia,
    known: 'seen',
    judge: tyreOnRim,
  },
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

import { cupPress, type HeadsetRow, headsets } from '../../standards/interfaces/headsets.ts';
import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf, traitOf } from '../faces/reading.ts';
import { standardOf } from '../faces/standardOf.ts';
import type { Judgement } from '../verdict.ts';
import { sizedRule } from './sized.ts';

const headsetRowOf = (face: Face): HeadsetRow | undefined =>
  headsets.find((row) => row.id === standardOf(face)?.id);

/** The upper and the lower end of a tube may carry different codes, but seat and bore decide whether they mate. */
const seatCode = (row: HeadsetRow): string => row.id.split('/')[0] ?? row.id;

/** A hair less press than the reamers aim at still holds; this much less lets the cup turn. */
const SLACK_PRESS_MM = 0.05;
const REAM_MOST_MM = 0.5;
const DROP_IN_MOST_MM = 0.25;

function cupInTube(tube: Face, cup: Face): Judgement {
  const tubeRow = headsetRowOf(tube);
  const cupRow = headsetRowOf(cup);
  const bore = readingOf(tube, 'boreMm');
  const outside = readingOf(cup, 'diameterMm');
  const named = tubeRow && cupRow;
  const same = named && seatCode(tubeRow) === seatCode(cupRow);
  if (named && tubeRow.seat === 'integrated' && cupRow.seat === 'integrated' && !same)
    return {
      meets: 'no',
      because: `${seatCode(cupRow)} in ${seatCode(tubeRow)}: size and bearing angle differ, it drops in and rocks.`,
    };
  if (named && (tubeRow.seat === 'integrated') !== (cupRow.seat === 'integrated'))
    return {
      meets: 'no',
      because: `${seatCode(cupRow)} and ${seatCode(tubeRow)} hold their bearings in different ways.`,
    };
  if (!bore || !outside) {
    if (same) return { meets: 'yes', because: `Both are ${seatCode(tubeRow)}.` };
    return unknown('The head tube bore or the cup has no size yet.', [
      ...(bore ? [] : [askFor(tube, 'boreMm')]),
      ...(outside ? [] : [askFor(cup, 'diameterMm')]),
    ]);
  }
  const pressMm = { lo: outside.lo - bore.hi, mid: outside.mid - bore.mid, hi: outside.hi - bore.lo };
  const gapMm = { lo: -pressMm.hi, mid: -pressMm.mid, hi: -pressMm.lo };
  const measured = bore.from === 'measured' || outside.from === 'measured';
  const integrated = (tubeRow ?? cupRow)?.seat === 'integrated';
  const [lo, hi] = integrated ? [-DROP_IN_MOST_MM, 0] : [SLACK_PRESS_MM, cupPress.mostMm];
  const cupTold = `The ${mmText(outside.mid)} ${integrated ? 'bearing' : 'cup'}`;
  const boreTold = `the ${mmText(bore.mid)} head tube`;
  const inside = pressMm.lo >= lo - 1e-6 && pressMm.hi <= hi + 1e-6;
  if (inside || (same && !measured)) {
    const seated = integrated
      ? `${cupTold} drops into ${boreTold}.`
      : `${cupTold} presses into ${boreTold}: ${mmText(pressMm.mid)} of press.`;
    return {
      meets: 'yes',
      because: same ? `Both are ${seatCode(tubeRow)}. ${seated}` : seated,
      gapMm,
    };
  }
  if (pressMm.hi < lo) return { meets: 'no', because: `${cupTold} is loose in ${boreTold}.`, gapMm };
  if (pressMm.lo > hi) {
    const reamable = !integrated && pressMm.mid - cupPress.aimMm[1] <= REAM_MOST_MM;
    const carbon = traitOf(tube, 'material') === 'carbon';
    const after = outside.mid - (cupPress.aimMm[0] + cupPress.aimMm[1]) / 2;
    return {
      meets: 'no',
      because: integrated
        ? `${cupTold} does not drop into ${boreTold}.`
        : `${cupTold} is too big for ${boreTold}: ${mmText(pressMm.mid)} of press, ${mmText(cupPress.mostMm)} is the most.`,
      gapMm,
      oneWay:
        reamable && !carbon
          ? [
              {
                change: 'ream-bore',
                faceId: tube.faceId,
                key: 'boreMm',
                before: bore.mid,
                after,
                sideEffects: [`The tube loses ${mmText((after - bore.mid) / 2)} of wall.`],
                caution:
                  'With the reamer of that size, square to the tube, by a mechanic who has done it before.',
                source: cupPress.source,
                known: cupPress.known,
              },
            ]
          : [],
    };
  }
  return {
    ...unknown(`${cupTold} and ${boreTold}: a press fit needs 0.01 mm, finer than a caliper reads.`, [
      ...(bore.from === 'measured' ? [askFor(tube, 'boreMm', true)] : []),
      ...(outside.from === 'measured' ? [askFor(cup, 'diameterMm', true)] : []),
    ]),
    gapMm,
  };
}

const cupRule = (end: 'upper' | 'lower'): Rule => ({
  topic: `headset-${end}`,
  first: `head-tube-${end}`,
  second: `headset-cup-${end}`,
  risk: 'A cup that creeps or a bearing that rocks loosens the steering.',
  source: cupPress.source,
  known: cupPress.known,
  judge: cupInTube,
});

const FILE_SEAT_MOST_MM = 1;

/** Head tube to fork, from the cups to the crown. */
export const headsetRules: readonly Rule[] = [
  cupRule('upper'),
  cupRule('lower'),
  sizedRule({
    topic: 'headset-on-steerer',
    hole: ['headset-bore', 'boreMm', 'headset'],
    rod: ['steerer', 'diameterMm', 'steerer'],
    gap: [-0.05, 0.3],
    risk: 'A steerer that is not centred knocks the bearing out.',
    source: 'common practice, no source: limits are our own',
    known: 'proposal',
  }),
  sizedRule({
    topic: 'crown-race-on-fork',
    hole: ['crown-race', 'boreMm', 'crown race'],
    rod: ['crown-seat', 'diameterMm', 'crown seat'],
    gap: [-0.15, 0.05],
    risk: 'A race that is not seated all round lets the fork knock.',
    source: 'headset identification guide of 2010: race 0.1 under its seat; limits are our own',
    known: 'proposal',
    special: (race, seat) => {
      const machined = traitOf(seat, 'race');
      if (machined === undefined || machined === 'loose') return undefined;
      const angle = traitOf(race, 'angle') ?? String(headsetRowOf(race)?.anglesDeg?.[0] ?? 'none');
      return machined === `machined-${angle}`
        ? { meets: 'yes', because: `The race is machined on the fork, ${angle}° like the bearing.` }
        : {
            meets: 'no',
            because:
              'The race is machined on the fork and works only with the integrated bearing of its angle.',
          };
    },
    tight: (_race, seat, { hole, rod }) =>
      rod.mid - hole.mid <= FILE_SEAT_MOST_MM && traitOf(seat, 'material') !== 'carbon'
        ? {
            oneWay: [
              {
                change: 'file-seat',
                faceId: seat.faceId,
                key: 'diameterMm',
                before: rod.mid,
                after: hole.mid + 0.1,
                sideEffects: [],
                caution: 'With a seat cutter, not by hand: the seat has to stay round and square.',
                source: 'common practice, no source',
                known: 'proposal',
              },
            ],
          }
        : {},
  }),
];

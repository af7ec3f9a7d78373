import { shells } from '../../standards/interfaces/shells.ts';
import { systemWidths } from '../../standards/interfaces/spindles.ts';
import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf } from '../faces/reading.ts';
import type { Judgement } from '../verdict.ts';
import { sizedRule } from './sized.ts';

const shellOf = (face: Face) => shells.find((row) => row.id === face.standard);

/** Plain bores whose cups have been measured: hole minus cup. */
const PRESS_MM: readonly [number, number] = [-0.12, 0];
const FACE_MOST_MM = 1;

function plainBore(shell: Face, cup: Face): Judgement {
  const bore = readingOf(shell, 'boreMm');
  const outside = readingOf(cup, 'diameterMm');
  if (!bore || !outside)
    return unknown('Shell or bottom bracket is neither named nor measured yet.', [
      ...(bore ? [] : [askFor(shell, 'boreMm')]),
      ...(outside ? [] : [askFor(cup, 'diameterMm')]),
    ]);
  const gapMm = { lo: bore.lo - outside.hi, mid: bore.mid - outside.mid, hi: bore.hi - outside.lo };
  const cupTold = `The ${mmText(outside.mid)} cup`;
  const boreTold = `the ${mmText(bore.mid)} shell`;
  const named = [shellOf(shell), shellOf(cup)];
  if (named.some((row) => row?.seat === 'threaded'))
    return Math.abs(gapMm.mid) > 2
      ? {
          meets: 'no',
          because: `${cupTold} is far from the size of ${boreTold}, and one of the two is threaded.`,
          gapMm,
        }
      : {
          ...unknown(`${cupTold} is near the size of ${boreTold}, but size alone does not tell the thread.`, [
            ...(shell.standard ? [] : [askFor(shell, 'standard')]),
            ...(cup.standard ? [] : [askFor(cup, 'standard')]),
          ]),
          gapMm,
        };
  if (gapMm.lo >= PRESS_MM[0] && gapMm.hi <= PRESS_MM[1])
    return {
      meets: 'yes',
      because: `${cupTold} presses into ${boreTold}: ${mmText(-gapMm.mid)} of press.`,
      gapMm,
    };
  if (gapMm.hi < PRESS_MM[0])
    return {
      meets: 'no',
      because: `${cupTold} is ${mmText(-gapMm.mid)} bigger than ${boreTold}; a press fit allows ${mmText(-PRESS_MM[0])}.`,
      gapMm,
    };
  if (gapMm.lo > PRESS_MM[1]) return { meets: 'no', because: `${cupTold} is loose in ${boreTold}.`, gapMm };
  return {
    ...unknown(`${cupTold} and ${boreTold}: a press fit needs 0.01 mm, finer than a caliper reads.`, [
      askFor(shell, 'boreMm', true),
      askFor(cup, 'diameterMm', true),
    ]),
    gapMm,
  };
}

function cupInShell(shell: Face, cup: Face): Judgement {
  const shellRow = shellOf(shell);
  const cupRow = shellOf(cup);
  if (!shellRow || !cupRow) return plainBore(shell, cup);
  if (shellRow.id === cupRow.id) {
    const hand = shellRow.driveSide === 'left' ? ' The cup of the drive side has a left-hand thread.' : '';
    return { meets: 'yes', because: `Both are ${shellRow.label}.${hand}` };
  }
  // Two names for one bore differ only in width, and width is judged on its own.
  const bothPlain = shellRow.seat === 'pressed' && cupRow.seat === 'pressed';
  const bore = readingOf(shell, 'boreMm');
  const outside = readingOf(cup, 'diameterMm');
  const samePair = [shellRow.id, cupRow.id].sort().join(' ') === 'pf30 pf46-wide';
  if (bothPlain && samePair && bore && outside)
    return { meets: 'no', because: 'Same bore, but the cups are made for another width.' };
  const near = bore && outside ? ` (cup ${mmText(outside.mid)}, bore ${mmText(bore.mid)})` : '';
  return { meets: 'no', because: `The cups are ${cupRow.label}; the shell is ${shellRow.label}${near}.` };
}

/** Spacers under the cups of a two-piece crank; no spacers without a system width. */
function cupsToWidth(shell: Face, bore: Face): Judgement | null {
  const system = readingOf(bore, 'systemWidthMm');
  if (!system) return null;
  const width = readingOf(shell, 'widthMm');
  if (!width) return unknown('The width of the shell is not known yet.', [askFor(shell, 'widthMm')]);
  const row = systemWidths.find(({ systemWidthMm, overBearingsMm }) =>
    [systemWidthMm, overBearingsMm].some((width) => Math.abs(width - system.mid) <= 0.3),
  );
  if (!row)
    return unknown(`No spacer table for a system width of ${mmText(system.mid)}: follow the crank's sheet.`, [
      askFor(bore, 'systemWidthMm'),
    ]);
  const missingMm = row.underCupsMm - width.mid;
  const { source, known } = row;
  const sum = `The shell is ${mmText(width.mid)} wide, the crank needs ${mmText(row.underCupsMm)} under its cups`;
  if (missingMm < -0.3)
    return {
      meets: 'no',
      because: `${sum}: ${mmText(-missingMm)} too wide.`,
      source,
      known,
      oneWay:
        -missingMm <= FACE_MOST_MM
          ? [
              {
                change: 'face-shell',
                faceId: shell.faceId,
                key: 'widthMm',
                before: width.mid,
                after: row.underCupsMm,
                sideEffects: [],
                caution: 'With a facing tool that keeps both faces parallel.',
                source: 'common practice, no source',
                known: 'proposal',
              },
            ]
          : [],
    };
  const count = Math.round(missingMm / row.spacerMm);
  if (Math.abs(missingMm - count * row.spacerMm) > 0.6)
    return {
      ...unknown(`${sum}: ${mmText(missingMm)} is not a whole number of ${mmText(row.spacerMm)} spacers.`, [
        askFor(shell, 'widthMm', true),
      ]),
      source,
      known,
    };
  if (count === 0) return { meets: 'yes', because: `${sum}: no spacer is needed.`, source, known };
  const driveCount = Math.ceil(count / 2);
  return {
    meets: 'with-spacers',
    because: `${sum}: ${count} spacers of ${mmText(row.spacerMm)}, ${driveCount} of them on the drive side.`,
    spacers: { what: 'cup-spacer', thicknessMm: row.spacerMm, driveCount, otherCount: count - driveCount },
    source,
    known,
  };
}

/** Bottom bracket in its shell, and the spindle in it. */
export const shellRules: readonly Rule[] = [
  {
    topic: 'bottom-bracket-in-shell',
    first: 'shell',
    second: 'bb-cup',
    risk: 'A forced or loose cup creaks, and wears the shell oval or strips it.',
    source: 'the table of shells; press limits are our own',
    known: 'proposal',
    judge: cupInShell,
  },
  {
    topic: 'crank-width',
    first: 'shell',
    second: 'bb-bore',
    risk: 'Too wide and the arms do not clamp the spindle; too narrow and they press on the bearings.',
    source: 'rider’s blog on two-piece cranks',
    known: 'computed',
    judge: cupsToWidth,
  },
  sizedRule({
    topic: 'spindle-in-bearing',
    hole: ['bb-bore', 'boreMm', 'bearing'],
    rod: ['spindle', 'diameterMm', 'spindle'],
    gap: [-0.01, 0.06],
    risk: 'A spindle that moves in its bearing wears both.',
    source: 'common practice, no source: limits are our own',
    known: 'proposal',
    tight: (_hole, spindle, { hole, rod }) =>
      rod.mid - hole.mid <= 0.1
        ? {
            oneWay: [
              {
                change: 'turn-spindle',
                faceId: spindle.faceId,
                key: 'diameterMm',
                before: rod.mid,
                after: hole.mid,
                sideEffects: [],
                caution: 'Polished between centres, never filed; a notch in a spindle is where it breaks.',
                source: 'common practice, no source',
                known: 'proposal',
              },
            ],
          }
        : {},
  }),
];

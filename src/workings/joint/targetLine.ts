import { exactly } from '../../mechanics/band.ts';
import { given } from '../../mechanics/working.ts';
import {
  type BandPrint,
  type BandStrength,
  bandFor,
  bandsFor,
  placeIn,
  strengthOf,
  type TorqueBandRow,
} from '../../standards/screws/torqueBands.ts';
import type { JointFacts, ScrewFacts } from './jointFacts.ts';
import { type LineVerdict, missing, type Saying, type WorkingLine } from './line.ts';
import { onlyScrew } from './onlyScrew.ts';

/** Why no torque is named for a joint with a changed part; nothing where none was changed. */
export const changedText = ({ changed }: Pick<JointFacts, 'changed'>): string | undefined =>
  changed.length === 0
    ? undefined
    : `${changed.join(', ')}: permanently changed, so no torque is offered. Ask the maker or a qualified mechanic.`;

/**
 * The torque asked for and by whom.
 * @example targetLine({ target: { loNm: 5, hiNm: 5, source: 'Printed on the part', byMaker: true, othersNm: [] }, … }, plainly).text
 *   //=> '5 N·m. Printed on the part'
 */
export function targetLine(facts: JointFacts, say: Saying): WorkingLine {
  const { target } = facts;
  const line = { id: 'target', label: 'Target' };
  const changed = changedText(facts);
  if (changed)
    return {
      ...line,
      text: target ? `Logged before the change, from: ${target.source}. ${changed}` : changed,
      verdict: { tone: 'stop', word: 'No published value' },
    };
  if (!target) return { ...line, text: 'No torque is logged.', missing: [missing('torque')] };
  const { loNm, hiNm, source, byMaker, othersNm } = target;
  const inputs = [
    given('ruling figure', loNm === hiNm ? loNm : { lo: loNm, mid: (loNm + hiNm) / 2, hi: hiNm }, 'N·m'),
    ...othersNm.map((nm, at) => given(`other figure ${at + 1}`, nm, 'N·m')),
  ];
  return {
    ...line,
    text: `${say.torque(loNm, hiNm)}. ${source}`,
    ...(byMaker ? {} : { verdict: { tone: 'care', word: 'Not from a part maker' } as const }),
    working: {
      result: loNm === hiNm ? exactly(loNm) : { lo: loNm, mid: (loNm + hiNm) / 2, hi: hiNm },
      unit: 'N·m',
      formula: 'the part makers’ figures first, the lowest of equal standing',
      inputs,
      source: `${source}; both parts must withstand it (common practice, no source)`,
      known: byMaker ? 'seen' : 'proposal',
    },
  };
}

/** Why a torque inside a band is still no ground to be content. */
const doubtsInside = {
  weak: { tone: 'care', word: 'Inside a band that is advice only' },
  thread: { tone: 'care', word: 'Inside a band that names no thread' },
  screw: { tone: 'care', word: 'Inside a band for steel screws' },
} as const;
const insideOf = {
  A: { tone: 'good', word: 'Inside the bands of two documents' },
  B: { tone: 'good', word: 'Inside the band of one document' },
  C: doubtsInside.weak,
} as const;
const outside = {
  below: { tone: 'care', word: 'Below the printed band' },
  between: { tone: 'care', word: 'Between two printed bands' },
  above: { tone: 'care', word: 'Above the printed band' },
} as const;

function verdictOf(row: TorqueBandRow, screw: ScrewFacts | undefined, nm: number): LineVerdict {
  const { place, strength } = placeIn(row, nm);
  if (place !== 'inside') return outside[place];
  if (strength === 'C') return doubtsInside.weak;
  if (row.threads === null) return doubtsInside.thread;
  const light = screw?.screw === 'aluminium' || screw?.screw === 'titanium';
  return light && row.screw !== screw.screw ? doubtsInside.screw : insideOf[strength];
}

const bandOf = ({ loNm, hiNm }: { loNm: number; hiNm: number }) => ({
  lo: loNm,
  mid: (loNm + hiNm) / 2,
  hi: hiNm,
});
const printText = ({ loNm, hiNm, origin }: BandPrint, say: Saying): string =>
  `${say.torque(loNm, hiNm)} (${origin.document ? 'printed document' : 'advice only'})`;

/**
 * Torques printed elsewhere for this very make of joint. Matched by kind, thread and make: where one of them is not
 * known it is asked for, and there is no verdict. Withheld where a part was changed, absent where no figure is known.
 */
export function publishedLine(facts: JointFacts, say: Saying): WorkingLine | undefined {
  const bands = bandsFor(facts.kind);
  if (bands.length === 0 || facts.changed.length > 0) return undefined;
  const line = { id: 'published', label: 'Printed elsewhere' };
  const screw = facts.screws.length === 0 ? undefined : onlyScrew(facts.screws);
  if (typeof screw === 'string')
    return { ...line, text: `Not compared: screws of several ${screw} share the joint.` };
  const match = bandFor(facts.kind, { ...screw });
  if (match.is === 'none')
    return { ...line, text: `No figure is known for ${screw?.variant ?? 'this joint'} on ${screw?.thread}.` };
  // Without screws there is nothing to write a make down with; the joint is edited first.
  if (match.is === 'ask') {
    const key = screw ? match.what : 'thread';
    return { ...line, text: `Not compared: ${askWords[key]}.`, missing: [missing(key)] };
  }
  const { row } = match;
  const nm = facts.appliedNm ?? facts.target?.hiNm;
  const near = row.prints.find(({ loNm, hiNm }) => nm !== undefined && nm >= loNm && nm <= hiNm);
  const shown = near ?? row.prints[0];
  if (!shown) return undefined;
  return {
    ...line,
    text: `${row.variant}: ${row.prints.map((print) => printText(print, say)).join('; ')}`,
    ...(nm === undefined ? {} : { verdict: verdictOf(row, screw, nm) }),
    warnings: [
      `To compare with, never in place of the figure printed on the part. ${strengths[strengthOf(row)]}.`,
    ],
    working: {
      result: bandOf(shown),
      unit: 'N·m',
      formula: `as printed: ${row.variant}`,
      inputs: row.prints.map((print) => given(print.origin.source, bandOf(print), 'N·m')),
      source: shown.origin.source,
      known: shown.origin.known,
    },
  };
}

const askWords = {
  thread: 'the thread of its screw is not known',
  variant: 'several makes of such a joint have bands of their own',
} as const;

const strengths: Record<BandStrength, string> = {
  A: 'Documents of two origins or more print it',
  B: 'One origin prints it',
  C: 'No document prints it: advice only',
};

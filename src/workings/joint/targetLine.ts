import { exactly } from '../../mechanics/band.ts';
import { given } from '../../mechanics/working.ts';
import { amongBands, bandsFor } from '../../standards/screws/torqueBands.ts';
import type { JointFacts } from './jointFacts.ts';
import { missing, type Saying, type WorkingLine } from './line.ts';

/** Why no torque is named for a joint with a changed part; nothing where none was changed. */
export const changedText = ({ changed }: Pick<JointFacts, 'changed'>): string | undefined =>
  changed.length === 0
    ? undefined
    : `${changed.join(', ')}: changed for good, so no torque is offered. Ask the maker or a qualified mechanic.`;

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
      text: target ? `Written down before the change, from: ${target.source}. ${changed}` : changed,
      verdict: { tone: 'stop', word: 'No table knows it' },
    };
  if (!target) return { ...line, text: 'No torque is written down.', missing: [missing('torque')] };
  const { loNm, hiNm, source, byMaker, othersNm } = target;
  const inputs = [
    given('ruling figure', loNm === hiNm ? loNm : { lo: loNm, mid: (loNm + hiNm) / 2, hi: hiNm }, 'N·m'),
    ...othersNm.map((nm, at) => given(`other figure ${at + 1}`, nm, 'N·m')),
  ];
  return {
    ...line,
    text: `${say.torque(loNm, hiNm)}. ${source}`,
    ...(byMaker ? {} : { verdict: { tone: 'care', word: 'No part maker stands behind it' } as const }),
    working: {
      result: loNm === hiNm ? exactly(loNm) : { lo: loNm, mid: (loNm + hiNm) / 2, hi: hiNm },
      unit: 'N·m',
      formula: 'the part makers’ figures first, the lowest of equal standing',
      inputs,
      source: `${source}; both parts have to bear it (common practice, no source)`,
      known: byMaker ? 'seen' : 'proposal',
    },
  };
}

const among = {
  inside: { tone: 'good', word: 'Inside a printed band' },
  'below-all': { tone: 'care', word: 'Below every printed band' },
  between: { tone: 'care', word: 'Between two printed bands' },
  'above-all': { tone: 'care', word: 'Above every printed band' },
} as const;

const strengths = {
  A: 'two or more documents of separate origin',
  B: 'one document',
  C: 'memory or common practice',
} as const;

/** Torques printed elsewhere for this kind of joint; withheld where a part was changed, absent where none is known. */
export function publishedLine(facts: JointFacts, say: Saying): WorkingLine | undefined {
  const bands = bandsFor(facts.kind);
  const nm = facts.appliedNm ?? facts.target?.hiNm;
  if (bands.length === 0 || facts.changed.length > 0) return undefined;
  const place = nm === undefined ? undefined : amongBands(facts.kind, nm);
  const nearest = bands.find(({ loNm, hiNm }) => nm !== undefined && nm >= loNm && nm <= hiNm) ?? bands[0];
  if (!nearest) return undefined;
  const bandOf = ({ loNm, hiNm }: typeof nearest) => ({ lo: loNm, mid: (loNm + hiNm) / 2, hi: hiNm });
  return {
    id: 'published',
    label: 'Printed elsewhere',
    text: bands
      .map(({ variant, loNm, hiNm, strength }) => `${say.torque(loNm, hiNm)} ${variant} (${strength})`)
      .join('; '),
    ...(place && place !== 'no-band' ? { verdict: among[place] } : {}),
    warnings: [`To compare with, never in place of the mark on the part. ${strengthText(bands)}`],
    working: {
      result: bandOf(nearest),
      unit: 'N·m',
      formula: `as printed: ${nearest.variant}`,
      inputs: bands.map((band) => given(`${band.variant} (${band.strength})`, bandOf(band), 'N·m')),
      source: nearest.source,
      known: nearest.known,
    },
  };
}

function strengthText(bands: ReturnType<typeof bandsFor>): string {
  const met = (['A', 'B', 'C'] as const).filter((letter) =>
    bands.some(({ strength }) => strength === letter),
  );
  return `${met.map((letter) => `${letter}: ${strengths[letter]}`).join('; ')}.`;
}

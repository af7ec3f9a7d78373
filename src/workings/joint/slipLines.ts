import type { Band } from '../../mechanics/band.ts';
import {
  type ClampLever,
  clampLevers,
  clampMargin,
  type LeverEffect,
} from '../../mechanics/clamps/clampMargin.ts';
import { worstRiderMomentNm } from '../../mechanics/clamps/clampMoment.ts';
import type { ClampConstruction } from '../../mechanics/clamps/clampSlip.ts';
import { marginWorking, slipWorking } from '../../mechanics/clamps/clampWorkings.ts';
import { boltCount } from '../../mechanics/screws/boltCount.ts';
import { given } from '../../mechanics/working.ts';
import type { JointKind } from '../../standards/jointKinds.ts';
import { clampFriction } from '../../standards/screws/friction.ts';
import { jointTests } from '../../standards/screws/torqueTests.ts';
import type { JointFacts } from './jointFacts.ts';
import {
  bandText,
  type MissingInput,
  missing,
  type Saying,
  type WorkingLine,
  weakest,
  withoutDocument,
} from './line.ts';
import { type JointPreload, waitsFor } from './preload.ts';

/** Both hands pulling hard; our suggestion, no published figure for a rider. */
const HANDS_N = 400;
/** A clamp that is wider than its tube by more than play holds a shim. */
const SHIM_FROM_MM = 0.6;

const tubeClamps: readonly JointKind[] = ['bar-clamp', 'stem-steerer', 'seatpost', 'lever-clamp', 'grip'];

const turnsWords = {
  'bar-clamp': 'The bar turns',
  'stem-steerer': 'The stem turns on the steerer',
  seatpost: 'The post turns',
  'lever-clamp': 'The lever turns',
  grip: 'The grip turns',
} as const;

/** The clamp as the computation wants it, or what is lacking. */
function construction({ clamp, screws }: JointFacts): ClampConstruction | MissingInput {
  if (!clamp) return missing('clamp');
  const bolts = boltCount(screws);
  if (clamp.construction !== 'one-slit-stiff') return { kind: clamp.construction, bolts };
  const { tubeArmMm, boltArmMm } = clamp;
  if (!tubeArmMm || !boltArmMm) return missing('clamp-arms');
  return { kind: 'one-slit-stiff', bolts, tubeArmMm, boltArmMm };
}

const holdsShim = ({ tubeMm, boreMm, clamp }: JointFacts): boolean =>
  clamp?.shim !== undefined ||
  (tubeMm !== undefined && boreMm !== undefined && boreMm - tubeMm > SHIM_FROM_MM);

/** The hardest load a standard puts on this kind of joint, N·m; nothing where none turns it. */
function testOf(kind: JointKind): { nm: number; source: string } | undefined {
  const rows = jointTests.filter((row) => row.joint === kind && row.unit === 'N.m');
  const loads = rows.map((row) => ({ nm: Math.max(...Object.values(row.byUse)), source: row.source }));
  return loads.sort((a, b) => b.nm - a.nm)[0];
}

const leverWords: Record<ClampLever, string> = {
  'bring-to-the-marked-torque': 'bring it to the marked torque',
  'clean-off-grease': 'clean the grease off tube and clamp',
  'grit-paste': 'assembly paste, where both makers permit it',
  'part-of-the-clamps-own-diameter': 'a tube of the clamp’s own diameter instead of the shim',
  'bond-the-shim': 'bond the shim to the tube',
  'slit-the-shim': 'slit the shim from end to end',
  'lower-the-rise': 'a bar of half the rise',
  'longer-clamp': 'a longer clamp',
  'more-torque-than-marked': 'more torque than marked',
};

function raiseText({ lever, gain }: LeverEffect, say: Saying): string {
  const words = leverWords[lever].charAt(0).toUpperCase() + leverWords[lever].slice(1);
  if (gain === 'not-to-be-done') return `${words}: never, it breaks the clamp before it helps`;
  if (gain === 'from-nothing') return `${words}: without it nothing may hold`;
  return gain > 0 ? `${words}: ${say.number(gain * 100, 0)} % more` : `${words}: nothing`;
}

/** Without a measurable rise there is no arm that lowering the bar would shorten. */
const NO_RISE_MM = 0.1;

function raises(facts: JointFacts, tubeMm: number, say: Saying): string[] {
  const torqueNm = facts.appliedNm ?? facts.target?.hiNm;
  if (torqueNm === undefined) return [];
  const face = facts.clampFace ?? 'metal-dry';
  const { bar, clamp } = facts;
  // A changed part has no marked torque any more.
  const markedNm = facts.changed.length === 0 && facts.target?.byMaker ? facts.target.loNm : undefined;
  return clampLevers({
    appliedNm: torqueNm,
    ...(markedNm ? { markedNm } : {}),
    friction: clampFriction[face].friction.mid,
    ...(face === 'metal-greased' ? { cleanFriction: clampFriction['metal-dry'].friction.mid } : {}),
    ...(face === 'carbon-dry' ? { pasteFriction: clampFriction['carbon-paste'].friction.mid } : {}),
    tubeMm,
    clampMm: clamp?.shim === 'bonded' ? tubeMm : Math.max(facts.boreMm ?? tubeMm, tubeMm),
    ...(bar && bar.riseMm > NO_RISE_MM
      ? {
          momentArmMm: Math.hypot(bar.riseMm, bar.reachMm),
          lowerArmMm: Math.hypot(bar.riseMm / 2, bar.reachMm),
        }
      : {}),
  }).map((lever) => raiseText(lever, say));
}

const margins = {
  holds: { tone: 'good', word: 'Holds even at the low end' },
  'in-doubt': { tone: 'care', word: 'In doubt: holds at the high end only' },
  slips: { tone: 'stop', word: 'Slips even at the high end' },
} as const;

/**
 * At which torque a clamped tube turns, and how that stands to what is asked of it: the hardest test a standard
 * knows for the joint or the rider's own pull, whichever is more.
 * @returns no line where no tube is clamped
 */
export function slipLines(facts: JointFacts, preload: JointPreload, say: Saying): WorkingLine[] {
  const { kind, tubeMm } = facts;
  if (!tubeClamps.includes(kind)) return [];
  const line = { id: 'slip', label: 'Slip torque' };
  if (!preload.ok) return refusedLines(facts, preload);
  if (facts.clamp?.shim === 'closed')
    return [
      {
        ...line,
        text: 'Not computed: a shim that is not slit may keep the force of the clamp to itself.',
        verdict: { tone: 'stop', word: 'Its grip is not known' },
        raises: [raiseText({ lever: 'slit-the-shim', gain: 'from-nothing' }, say)],
      },
    ];
  const made = construction(facts);
  const lacks = [...('key' in made ? [made] : []), ...(tubeMm === undefined ? [missing('tube')] : [])];
  if ('key' in made || tubeMm === undefined) return [{ ...line, text: waitsFor(lacks), missing: lacks }];

  // With equal friction on every face the thinnest one slips first; a bonded shim is part of its tube.
  const holds = facts.clamp?.shim === 'bonded' ? (facts.boreMm ?? tubeMm) : tubeMm;
  const face = clampFriction[facts.clampFace ?? 'metal-dry'];
  const slip = slipWorking(made, preload.preloadN, face.friction, holds);
  const slipNm = slip.result as Band;
  const known = weakest(preload.working.known, slip.known, face.known);
  const asked = holdsShim(facts) && facts.clamp?.shim === undefined ? [missing('shim')] : [];
  const lines: WorkingLine[] = [
    {
      ...line,
      text: `${turnsWords[kind as keyof typeof turnsWords]} at ${bandText(slipNm, say, 0)} N·m; trust the low end`,
      working: { ...slip, source: `${slip.source}. µ: ${face.source}`, known },
      ...(asked.length > 0 ? { missing: asked } : {}),
    },
  ];
  const rider = riderLine(facts, say);
  if (rider) lines.push(rider.line);
  const test = testOf(kind);
  const riderNm = rider?.nm ?? 0;
  if (!test && riderNm === 0) return lines;
  const byTest = test !== undefined && test.nm >= riderNm;
  const demand = byTest
    ? { nm: test.nm, source: `Mdemand: ${test.source}, the hardest column` }
    : { nm: riderNm, source: 'Mdemand: the rider’s own moment' };
  const { ratio, verdict } = clampMargin(slipNm, demand.nm);
  lines.push({
    id: 'margin',
    label: 'Slip margin',
    text: `${bandText(ratio, say)} times the ${say.number(demand.nm, 0)} N·m asked of it`,
    verdict:
      preload.unprinted || face.origins === 0 || !byTest
        ? withoutDocument(margins[verdict])
        : margins[verdict],
    raises: raises(facts, tubeMm, say),
    warnings: ['A test load is for comparing parts on sale. It is not a tightening torque; do not try it.'],
    working: { ...marginWorking(slipNm, demand.nm, demand.source), known },
  });
  return lines;
}

/** Without a preload there is no slip torque; what else the line will want is asked for in the same go. */
function refusedLines(facts: JointFacts, { text, missing: lacks }: Extract<JointPreload, { ok: false }>) {
  const made = construction(facts);
  const more = [
    ...('key' in made ? [made] : []),
    ...(facts.tubeMm === undefined ? [missing('tube')] : []),
    ...(facts.kind === 'bar-clamp' && !facts.bar ? [missing('bar')] : []),
  ];
  return [
    { id: 'slip', label: 'Slip torque', text, missing: lacks.length > 0 ? [...lacks, ...more] : lacks },
  ];
}

/** The moment of a hard pull about the clamp of a bar. */
function riderLine(facts: JointFacts, say: Saying): { nm: number; line: WorkingLine } | undefined {
  if (facts.kind !== 'bar-clamp') return undefined;
  const line = { id: 'rider', label: 'Pull of the rider' };
  const { bar } = facts;
  if (!bar) return { nm: 0, line: { ...line, text: waitsFor([missing('bar')]), missing: [missing('bar')] } };
  const nm = worstRiderMomentNm(bar, HANDS_N);
  return {
    nm,
    line: {
      ...line,
      text: `Up to ${say.number(nm, 0)} N·m, both hands pulling ${HANDS_N} N the worst way`,
      working: {
        result: nm,
        unit: 'N·m',
        formula: 'M = F·√(rise² + reach²)',
        inputs: [
          given('F', HANDS_N, 'N'),
          given('rise', bar.riseMm, 'mm'),
          given('reach', bar.reachMm, 'mm'),
        ],
        source: 'statics; the force is our suggestion',
        known: 'proposal',
      },
    },
  };
}

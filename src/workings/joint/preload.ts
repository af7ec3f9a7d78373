import type { Band } from '../../mechanics/band.ts';
import { type PreloadRefusal, preloadAllowed } from '../../mechanics/screws/preloadRefusal.ts';
import { preloadUse, proofLoadN } from '../../mechanics/screws/preloadUse.ts';
import { stressAreaMm2 } from '../../mechanics/screws/threadGeometry.ts';
import { preloadWorking, useWorking } from '../../mechanics/screws/torqueWorkings.ts';
import { given, type Working } from '../../mechanics/working.ts';
import { nutFactorFor } from '../../standards/screws/nutFactors.ts';
import { assumedClass, propertyClasses } from '../../standards/screws/propertyClasses.ts';
import { type ThreadRow, threadNamed } from '../../standards/screws/threads.ts';
import type { JointFacts, ScrewFacts } from './jointFacts.ts';
import { bandText, lackText, type Missing, missing, type Saying, type WorkingLine, weakest } from './line.ts';
import { toolError } from './toolError.ts';

/** Cups, lock rings and axles wider than this are tubes; a solid screw's nut factor says nothing of them. */
const SOLID_UP_TO_MM = 16;

/** Why no preload is computed, and what to go by. */
export const preloadRefusals: Record<PreloadRefusal, string> = {
  'aluminium-screw': 'No strength table holds for aluminium screws. Only the mark on the part counts.',
  'titanium-screw': 'No strength table holds for titanium screws. Only the mark on the part counts.',
  'unknown-screw': 'Nobody wrote down what the screw is of.',
  'dry-stainless-on-stainless':
    'Dry stainless in stainless seizes at no friction one could name. Grease it, then write that down.',
  'titanium-on-titanium': 'Titanium in titanium seizes without a paste meant for it.',
  'plastic-thread': 'A thread in plastic creeps away from any preload.',
};

export type JointPreload =
  | {
      ok: true;
      preloadN: Band;
      thread: ThreadRow;
      screw: ScrewFacts;
      working: Working;
      /** Whether the torque was given or is only asked for. */
      from: 'applied' | 'target';
      missing: Missing[];
    }
  | { ok: false; text: string; missing: Missing[] };

/** The one screw size of a joint, or why there is none to reckon with. */
function onlyScrew(screws: readonly ScrewFacts[]): ScrewFacts | undefined {
  const [first] = screws;
  return first && screws.every(({ thread }) => thread === first.thread) ? first : undefined;
}

/**
 * The preload band of the screws of a joint, from the torque applied or, before that, the torque asked for.
 * @example jointPreload(fourM5At5Nm) //=> { ok: true, preloadN: { lo: 3481…, mid: 5000, hi: 6235… }, … }
 */
export function jointPreload(facts: JointFacts): JointPreload {
  const refused = (text: string, ...lacks: Missing[]): JointPreload => ({ ok: false, text, missing: lacks });
  if (facts.screws.length === 0) return refused('Nothing is screwed here.');
  const screw = onlyScrew(facts.screws);
  if (!screw) return refused('Not computed: screws of several sizes share the joint.');
  const thread = threadNamed(screw.thread);
  if (!thread) return refused('Not computed: the thread is not in the table.', missing('thread'));
  if (thread.diameterMm > SOLID_UP_TO_MM)
    return refused('Not computed: this thread is cut on a tube, and the short form holds for solid screws.');
  const torqueNm = facts.appliedNm ?? facts.target?.hiNm;
  if (torqueNm === undefined) return refused('Not computed: there is no torque yet.', missing('torque'));
  const lubricant = facts.onThread ?? 'unknown';
  const material = screw.screw ?? 'unknown';
  const allowed = preloadAllowed({ screw: material, female: screw.female ?? 'unknown', lubricant });
  if (!allowed.ok)
    return refused(
      `Not computed. ${preloadRefusals[allowed.reason]}`,
      ...(allowed.reason === 'unknown-screw' ? screwAsks(facts, screw) : []),
    );
  const nut = nutFactorFor(material === 'stainless' ? 'stainless' : 'unknown', lubricant);
  const error = toolError(facts.tool, torqueNm);
  const working = preloadWorking(torqueNm, thread.diameterMm, nut.nutFactor, error.share);
  return {
    ok: true,
    preloadN: working.result as Band,
    thread,
    screw,
    from: facts.appliedNm === undefined ? 'target' : 'applied',
    working: {
      ...working,
      source: `${working.source}. K: ${nut.source}. w: ${error.source}`,
      known: weakest(working.known, nut.known, error.known),
    },
    missing: [
      ...(facts.onThread === undefined ? [missing('on-thread')] : []),
      ...(material === 'stainless' && screw.female === undefined ? [missing('female')] : []),
      ...(facts.tool ? [] : [missing('tool')]),
    ],
  };
}

/** Everything a screw of nobody knows what will be asked for, so that it is taken out once. */
const screwAsks = (facts: JointFacts, screw: ScrewFacts): Missing[] => [
  missing('screw'),
  ...(screw.propertyClass === undefined ? [missing('property-class')] : []),
  ...(facts.onThread === undefined ? [missing('on-thread')] : []),
  ...(screw.gripMm === undefined ? [missing('grip')] : []),
];

/** The preload band in a line. */
export function preloadLine(preload: JointPreload, say: Saying): WorkingLine {
  const line = { id: 'preload', label: 'Preload of one screw' };
  if (!preload.ok) return { ...line, text: preload.text, missing: preload.missing };
  const { lo, mid, hi } = preload.preloadN;
  const kN = bandText({ lo: lo / 1000, mid: mid / 1000, hi: hi / 1000 }, say);
  const at = preload.from === 'applied' ? 'from the torque applied' : 'once the target is applied';
  return { ...line, text: `${kN} kN, ${at}`, working: preload.working, missing: preload.missing };
}

const useWords = {
  low: { tone: 'care', word: 'Low: it lives from friction' },
  ordinary: { tone: 'good', word: 'Ordinary' },
  high: { tone: 'care', word: 'High' },
  'near-proof': { tone: 'care', word: 'Near its proof load' },
  'beyond-proof': { tone: 'stop', word: 'Perhaps beyond its proof load' },
} as const;

/** How far up its proof load a screw may be. */
export function useLine(preload: JointPreload, say: Saying): WorkingLine | undefined {
  if (!preload.ok) return undefined;
  const { preloadN, thread, screw, working } = preload;
  const row = propertyClasses.find(({ propertyClass }) => propertyClass === screw.propertyClass);
  const taken = row ?? assumedClass(screw.screw ?? 'unknown');
  if (!taken) return undefined;
  const areaMm2 = stressAreaMm2(thread);
  const proofMPa = taken.proofMPa ?? taken.yieldMPa;
  const proofN = proofLoadN(areaMm2, proofMPa);
  const { share, verdict } = preloadUse(preloadN, proofN);
  const percent = bandText({ lo: share.lo * 100, mid: share.mid * 100, hi: share.hi * 100 }, say, 0);
  const assumed = row ? '' : `, class ${taken.propertyClass} taken: the weakest usual one`;
  const use = useWorking(preloadN, proofN);
  return {
    id: 'proof',
    label: 'Share of the proof load',
    text: `${percent} %${assumed}`,
    verdict: useWords[verdict],
    working: {
      ...use,
      formula: 'F / (As·Sp)',
      inputs: [
        given('F', preloadN, 'N'),
        given('As', areaMm2, 'mm²'),
        given(taken.proofMPa === undefined ? 'Sp, its yield strength' : 'Sp', proofMPa, 'MPa'),
      ],
      source: `${use.source}. Sp, ${taken.propertyClass}: ${taken.source}`,
      known: weakest(working.known, taken.known, thread.known),
    },
    ...(row ? {} : { missing: [missing('property-class')] }),
  };
}

/** The end of a sentence that cannot be finished. @example waitsFor([missing('tube')]) //=> 'Not computed; missing: diameter of the tube.' */
export const waitsFor = (lacks: readonly Missing[]): string => `Not computed; missing: ${lackText(lacks)}.`;

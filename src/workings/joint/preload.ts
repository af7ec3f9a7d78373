import type { Band } from '../../mechanics/band.ts';
import { type PreloadRefusal, preloadAllowed } from '../../mechanics/screws/preloadRefusal.ts';
import { type PreloadUse, preloadUse, proofLoadN } from '../../mechanics/screws/preloadUse.ts';
import { stressAreaMm2 } from '../../mechanics/screws/threadGeometry.ts';
import { SOLID_UP_TO_MM } from '../../mechanics/screws/torquePlausible.ts';
import { preloadWorking, useWorking } from '../../mechanics/screws/torqueWorkings.ts';
import { given, type Working } from '../../mechanics/working.ts';
import { nutFactorFor } from '../../standards/screws/nutFactors.ts';
import {
  NO_MARK,
  type PropertyClassRow,
  propertyClasses,
  unmarkedClasses,
} from '../../standards/screws/propertyClasses.ts';
import { type ThreadRow, threadNamed } from '../../standards/screws/threads.ts';
import type { JointFacts, ScrewFacts } from './jointFacts.ts';
import {
  bandText,
  type LineVerdict,
  lackText,
  type MissingInput,
  missing,
  type Saying,
  type WorkingLine,
  weakest,
} from './line.ts';
import { toolError } from './toolError.ts';

/** Why no preload is computed, and what to go by. */
export const preloadRefusals: Record<PreloadRefusal, string> = {
  'aluminium-screw':
    'No strength table holds for aluminium screws. Only the figure printed on the part counts.',
  'titanium-screw':
    'No strength table holds for titanium screws. Only the figure printed on the part counts.',
  'unknown-screw': 'Bolt material not recorded.',
  'dry-stainless-on-stainless':
    'Dry stainless in stainless seizes, so no friction figure holds. Grease it, then log that.',
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
      missing: MissingInput[];
    }
  | { ok: false; text: string; missing: MissingInput[] };

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
  const refused = (text: string, ...lacks: MissingInput[]): JointPreload => ({
    ok: false,
    text,
    missing: lacks,
  });
  if (facts.screws.length === 0) return refused('No bolts here.');
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

/** Everything that is asked about an unknown screw, so that it is taken out once. */
const screwAsks = (facts: JointFacts, screw: ScrewFacts): MissingInput[] => [
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
  low: { tone: 'care', word: 'Low: relies on friction' },
  ordinary: { tone: 'good', word: 'Ordinary' },
  high: { tone: 'care', word: 'High' },
  'near-proof': { tone: 'care', word: 'Near its proof load' },
  'partly-beyond': { tone: 'care', word: 'Partly beyond its proof load' },
  'beyond-proof': { tone: 'stop', word: 'Mostly beyond its proof load' },
} as const;

/** What can be said of a screw by its head: a class, no mark at all, or not looked at yet. */
function classesOf({ screw, propertyClass }: ScrewFacts) {
  const row = propertyClasses.find((each) => each.propertyClass === propertyClass);
  const rows = row ? [row] : unmarkedClasses(screw ?? 'unknown');
  return { rows, head: row ? 'marked' : propertyClass === NO_MARK ? 'unmarked' : 'not-looked' } as const;
}

/** A screw without a known class is never called good; red stays for one that was looked at. */
function useVerdict(use: PreloadUse['verdict'], head: ReturnType<typeof classesOf>['head']): LineVerdict {
  const words = useWords[use];
  if (head === 'marked' || (head === 'unmarked' && words.tone !== 'good')) return words;
  return head === 'unmarked'
    ? { tone: 'care', word: 'No grade on it: its class is a guess' }
    : { tone: 'care', word: 'Grade on the head not known' };
}

/** How far up its proof load a screw may be. */
export function useLine(preload: JointPreload, say: Saying): WorkingLine | undefined {
  if (!preload.ok) return undefined;
  const { preloadN, thread, screw, working } = preload;
  const { rows, head } = classesOf(screw);
  const weak = rows[0];
  const strong = rows.at(-1);
  if (!weak || !strong) return undefined;
  const areaMm2 = stressAreaMm2(thread);
  const proofOf = ({ proofMPa, yieldMPa }: PropertyClassRow) => proofMPa ?? yieldMPa;
  // The weakest class the screw may be of ends the band, the strongest begins it.
  const least = preloadUse(preloadN, proofLoadN(areaMm2, proofOf(strong)));
  const most = preloadUse(preloadN, proofLoadN(areaMm2, proofOf(weak)));
  const share = { lo: least.share.lo, mid: (least.share.mid + most.share.mid) / 2, hi: most.share.hi };
  const percent = bandText({ lo: share.lo * 100, mid: share.mid * 100, hi: share.hi * 100 }, say, 0);
  const names = [...new Set([weak.propertyClass, strong.propertyClass])].join(' to ');
  const taken = head === 'marked' ? '' : `, if it is of class ${names}, as a screw without a mark may be`;
  const beyond = least.beyond > 0 ? `; ${say.number(least.beyond * 100, 0)} % of that band is beyond it` : '';
  return {
    id: 'proof',
    label: 'Share of the proof load',
    text: `${percent} %${taken}${beyond}`,
    verdict: useVerdict(least.verdict, head),
    working: {
      ...useWorking(preloadN, proofLoadN(areaMm2, proofOf(weak))),
      result: share,
      formula: 'F / (As·Sp)',
      inputs: [
        given('F', preloadN, 'N'),
        given('As', areaMm2, 'mm²'),
        ...rows.map((row) =>
          given(`Sp ${row.propertyClass}${row.proofMPa ? '' : ', its yield strength'}`, proofOf(row), 'MPa'),
        ),
      ],
      source: `ISO 898-1 proof loads, public copy. Sp: ${weak.source}`,
      known: weakest(working.known, ...rows.map(({ known }) => known), thread.known),
    },
    ...(head === 'not-looked' ? { missing: [missing('property-class')] } : {}),
  };
}

/** The end of a sentence that cannot be finished. @example waitsFor([missing('tube')]) //=> 'Not computed; missing: diameter of the tube.' */
export const waitsFor = (lacks: readonly MissingInput[]): string =>
  `Not computed; missing: ${lackText(lacks)}.`;

import type { Band } from '../../mechanics/band.ts';
import { type PreloadRefusal, preloadAllowed } from '../../mechanics/screws/preloadRefusal.ts';
import { SOLID_UP_TO_MM } from '../../mechanics/screws/torquePlausible.ts';
import { preloadWorking } from '../../mechanics/screws/torqueWorkings.ts';
import type { Working } from '../../mechanics/working.ts';
import { nutFactorFor } from '../../standards/screws/nutFactors.ts';
import { type ThreadRow, threadNamed } from '../../standards/screws/threads.ts';
import type { JointFacts, ScrewFacts } from './jointFacts.ts';
import {
  bandText,
  lackText,
  type MissingInput,
  missing,
  type Saying,
  type WorkingLine,
  weakest,
} from './line.ts';
import { onlyScrew } from './onlyScrew.ts';
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
      /** No document prints the nut factor or the error of the tool: no verdict on it is green. */
      unprinted: boolean;
      missing: MissingInput[];
    }
  | { ok: false; text: string; missing: MissingInput[] };

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
  if (typeof screw === 'string') return refused(`Not computed: screws of several ${screw} share the joint.`);
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
    unprinted: nut.origins === 0 || !error.printed,
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

/** The end of a sentence that cannot be finished. @example waitsFor([missing('tube')]) //=> 'Not computed; missing: diameter of the tube.' */
export const waitsFor = (lacks: readonly MissingInput[]): string =>
  `Not computed; missing: ${lackText(lacks)}.`;

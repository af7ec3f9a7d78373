import type { Band } from '../../mechanics/band.ts';
import { settlingLoss } from '../../mechanics/screws/settling.ts';
import { type RecheckSpan, recheckRows } from '../../standards/checks/recheckSchedule.ts';
import { elasticMaterials } from '../../standards/interfaces/elasticMaterials.ts';
import { embedment, embedmentSource } from '../../standards/screws/embedment.ts';
import type { JointFacts } from './jointFacts.ts';
import { bandText, missing, type Saying, type WorkingLine, weakest } from './line.ts';
import type { JointPreload } from './preload.ts';

// Socket heads are about 1.7 times as wide as the thread and their holes a tenth wider than it; from memory.
const HEAD = 1.7;
const HOLE = 1.1;
/** A grip shorter than this many diameters hardly stretches, so bedding in takes much of it; our suggestion. */
const SHORT_GRIP = 3;

/** When the first look falls due, in words. @example firstCheckWords({ afterRides: 1, km: 10 }) //=> '1 ride or 10 km' */
function firstCheckWords({ afterRides, km, hours, days }: RecheckSpan): string {
  const terms = [
    ...(afterRides ? [afterRides === 1 ? '1 ride' : `${afterRides} rides`] : []),
    ...(km ? [`${km} km`] : []),
    ...(hours ? [hours === 1 ? '1 h ridden' : `${hours} h ridden`] : []),
    ...(days ? [days === 1 ? '1 day' : `${days} days`] : []),
  ];
  return terms.length > 0 ? terms.join(' or ') : 'the next ride';
}

const firstLook = (facts: JointFacts): string | undefined => {
  const row = recheckRows(facts.kind, facts.locker !== undefined).find(
    ({ instruction }) => instruction === 'retorque' || instruction === 'look-at-mark',
  );
  return row && firstCheckWords(row.whenFirst);
};

/** Preload that goes while faces bed in, and why the joint is looked at again as soon as it is. */
export function settlingLine(facts: JointFacts, preload: JointPreload, say: Saying): WorkingLine | undefined {
  if (!preload.ok) return undefined;
  const line = { id: 'settling', label: 'Settling' };
  const { thread, screw, preloadN, working } = preload;
  const first = firstLook(facts);
  const look = first ? ` So it is looked at again after ${first}.` : '';
  if (screw.gripMm === undefined)
    return {
      ...line,
      text: `Some preload goes while the faces bed in; how much hangs on the clamped length.${look}`,
      missing: [missing('grip')],
    };
  const row = embedment.find(({ roughness, load }) => roughness === 'medium' && load === 'shear');
  if (!row) return undefined;
  const { female } = screw;
  const parts = elasticMaterials[female && female in elasticMaterials ? (female as 'steel') : 'aluminium'];
  const loss = settlingLoss(
    {
      thread,
      gripMm: screw.gripMm,
      headMm: thread.diameterMm * HEAD,
      holeMm: thread.diameterMm * HOLE,
      screwModulusGpa: elasticMaterials[screw.screw === 'stainless' ? 'stainless' : 'steel'].modulusGpa,
      partModulusGpa: parts.modulusGpa,
      heads: 1,
      innerJoints: 1 + facts.piecesBetween,
      softLayer: facts.softLayer,
    },
    row,
    preloadN.mid,
  );
  const share: Band = {
    lo: loss.lostShare.lo * 100,
    mid: loss.lostShare.mid * 100,
    hi: loss.lostShare.hi * 100,
  };
  const reasons = [
    ...(screw.gripMm < SHORT_GRIP * thread.diameterMm ? ['the screw is short and hardly stretches'] : []),
    ...(facts.piecesBetween > 0 ? ['every piece between adds a face that beds in'] : []),
    ...(facts.softLayer ? ['a soft layer is squeezed too'] : []),
  ];
  const why = reasons.length > 0 ? ` Much, because ${reasons.join(', and ')}.` : '';
  return {
    ...line,
    text: `${bandText(share, say, 0)} % of the preload goes without the screw turning.${why}${look}`,
    ...(share.hi >= 50 ? { verdict: { tone: 'care', word: 'Pull it again soon' } as const } : {}),
    working: {
      ...loss.working,
      source: `${loss.working.source}; ${embedmentSource.source}; ${parts.source}`,
      known: weakest(loss.working.known, embedmentSource.known, working.known),
    },
  };
}

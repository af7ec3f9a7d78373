import type { BikeZone } from '../../drawing/bike/shape.ts';
import type { ZoneMarks, ZoneState } from '../../drawing/bike/zoneMark.ts';
import { zoneOfPart } from '../../drawing/bike/zoneOf.ts';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import type { FitOutcome } from '../../fit/verdict.ts';

interface Grade {
  state: ZoneState;
  words: (count: number) => string;
}

/** From the worst to the best. */
const grades: readonly (readonly [FitOutcome, Grade])[] = [
  ['does-not-fit', { state: 'wrong', words: (count) => `${count} do not fit` }],
  ['one-way-only', { state: 'wrong', words: (count) => `${count} only by a cut` }],
  ['not-known', { state: 'unknown', words: (count) => `${count} not known` }],
  ['fits-with', { state: 'bridged', words: (count) => `${count} with something between` }],
  ['fits', { state: 'done', words: (count) => `${count} fit` }],
];

/** Zones of the parts that a finding is about. */
export function zonesOfFinding(finding: Finding, parts: readonly PilePart[]): ReadonlySet<BikeZone> {
  const zones = finding.faces.map(({ partId }) => {
    const part = parts.find((one) => one.partId === partId);
    return part && zoneOfPart(part);
  });
  return new Set(zones.filter((zone) => zone !== undefined));
}

/**
 * The worst that the fit check finds in each zone, and how often.
 * @param findings that still count; what was accepted counts as fitting
 * @param parts of the pile
 * @param accepted ids of findings that were accepted
 */
export function fitMarks(
  findings: readonly Finding[],
  parts: readonly PilePart[],
  accepted: ReadonlySet<string>,
): ZoneMarks {
  const found = new Map<BikeZone, FitOutcome[]>();
  for (const finding of findings) {
    const counts = accepted.has(finding.findingId) ? 'fits' : finding.outcome;
    for (const zone of zonesOfFinding(finding, parts)) found.set(zone, [...(found.get(zone) ?? []), counts]);
  }
  const marks: ZoneMarks = {};
  for (const [zone, outcomes] of found) {
    const worst = grades.find(([outcome]) => outcomes.includes(outcome));
    if (!worst) continue;
    const [outcome, { state, words }] = worst;
    const count = outcomes.filter((one) => one === outcome).length;
    marks[zone] = { state, count, words: words(count) };
  }
  return marks;
}

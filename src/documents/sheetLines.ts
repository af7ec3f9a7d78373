import type { AsBuilt } from '../journal/answers.ts';
import type { Id, OpenItem } from '../journal/entries.ts';
import type { JointRow, PartRow, RecheckRow } from '../journal/rows.ts';
import { cautions } from '../standards/checks/releaseRules.ts';
import { jointKindRow } from '../standards/jointKinds.ts';
import { type Names, partCalled } from '../words/history/names.ts';
import { dueText } from '../words/history/sentencesOfWork.ts';
import { dayWords, remark } from '../words/phrases.ts';
import { field, loud, type SheetLine, whenWords } from './sheetLine.ts';
import { sheetOfJoint, type When } from './sheetOfJoint.ts';
import { sheetOfPart } from './sheetOfPart.ts';
import { riddenText, sheetOfRelease } from './sheetOfRelease.ts';

/** What the sheet takes from outside the bike's own record. */
export interface SheetCircumstances {
  /** Time zone in which dates are printed. */
  zone: string;
  /** Names of parts that are no longer on the bike. */
  names: Names;
}

function stateLine({ bike }: AsBuilt, zone: string): SheetLine {
  const { release, revoked } = bike ?? {};
  if (!release) return loud('State', 'not released');
  if (release.withdrawn !== undefined)
    return loud('State', `release withdrawn.${remark('Why', release.withdrawn)}`);
  if (release.statement === 'not-to-ride') return loud('State', 'signed as NOT to be ridden');
  if (revoked?.releaseId === release.releaseId) {
    return loud('State', `release revoked on ${dayWords(revoked.atMs, zone)} by later work`);
  }
  return field(
    'State',
    `released on ${dayWords(release.atMs, zone)}${release.statement === 'first-ride' ? ' for a first short ride' : ''}`,
  );
}

function openLines(open: readonly OpenItem[]): SheetLine[] {
  // A check clears the bike for one release; that it is undone says nothing against the last one.
  const checks = open.filter(({ what }) => what === 'check-open').map(({ words }) => words);
  const others = open.filter(({ what }) => what !== 'check-open');
  return [
    ...others.filter(({ blocks }) => blocks).map(({ words }) => loud('Blocks riding', words)),
    ...others.filter(({ blocks }) => !blocks).map(({ words }) => field('Open', words)),
    ...(checks.length > 0 ? [field('Before the next release', checks.join('; '))] : []),
  ];
}

/** What is due goes first; what comes later follows in the order it was set. */
function recheckLines(rechecks: readonly RecheckRow[], { zone, atMs }: When): SheetLine[] {
  const isDue = ({ dueAtMs }: RecheckRow) => dueAtMs !== undefined && dueAtMs <= atMs;
  const text = (recheck: RecheckRow, due: string) =>
    `${recheck.title}: ${due}, counted from ${dayWords(recheck.setAtMs, zone)}`;
  return [
    ...rechecks.filter(isDue).map((recheck) => loud('Next check', text(recheck, 'due'))),
    ...rechecks
      .filter((recheck) => !isDue(recheck))
      .map((recheck) => field('Next check', text(recheck, dueText(recheck)))),
  ];
}

/** In the order of a build, so that two sheets of one bike can be laid side by side. */
const byBuildOrder = (a: JointRow, b: JointRow) =>
  jointKindRow(a.kind).buildOrder - jointKindRow(b.kind).buildOrder || a.name.localeCompare(b.name);

const byLabel = (a: PartRow, b: PartRow) =>
  a.label.localeCompare(b.label, undefined, { numeric: true }) || a.name.localeCompare(b.name);

function section(text: string, lines: SheetLine[], none: string): SheetLine[] {
  return [{ is: 'section', text }, ...(lines.length > 0 ? lines : [field('None', none)])];
}

/**
 * The as-built sheet of a bike: what it is made of, what was done to each joint, by what figures, when, with
 * what and by whom; every release with what was open; and the content that rules for maintenance records ask for.
 * @param built the bike as it was at an instant
 * @returns lines in the order of the paper; empty when there was no such bike yet
 * @example sheetLines(built, { zone: 'UTC', names })[0] //=> { is: 'title', text: 'Magpie, as built' }
 */
export function sheetLines(built: AsBuilt, { zone, names }: SheetCircumstances): SheetLine[] {
  const { bike, parts, joints, rides, open, releases, rechecks, defects, atMs } = built;
  if (!bike) return [];
  const here = new Map<Id, string>(parts.map(({ partId, name, label }) => [partId, partCalled(name, label)]));
  const known: Names = {
    ...names,
    bike: (id) => (id === bike.bikeId ? bike.name : names.bike(id)),
    part: (id) => here.get(id) ?? names.part(id),
  };
  const when = { zone, atMs };
  const together = joints.filter(({ state }) => state !== 'apart').toSorted(byBuildOrder);
  const apart = joints.filter(
    ({ state, partIds }) => state === 'apart' && partIds.every((id) => here.has(id)),
  );
  return [
    { is: 'title', text: `${bike.name}, as built` },
    field('As of', whenWords(atMs, zone)),
    stateLine(built, zone),
    field('Use so far', riddenText(rides ?? { count: 0, km: 0, minutes: 0 })),
    ...(bike.about.trim() ? [field('About', bike.about.trim())] : []),
    { is: 'caution', text: cautions.release },
    ...section('Open items', openLines(open), 'nothing was open'),
    ...section(
      'Releases',
      releases.toReversed().flatMap((release) => sheetOfRelease(release, built, zone)),
      'never released',
    ),
    ...section(
      'Joints',
      together.flatMap((joint) => sheetOfJoint(joint, built, known, when)),
      'no joints logged',
    ),
    ...(apart.length > 0
      ? section(
          'Taken apart',
          apart.map(({ name, apartWhy }) => loud(name, apartWhy ?? 'no reason given')),
          '',
        )
      : []),
    ...section(
      'Parts',
      parts.toSorted(byLabel).flatMap((part) => sheetOfPart(part, zone)),
      'no parts',
    ),
    ...section('Re-checks', recheckLines(rechecks, when), 'no check is set'),
    ...section(
      'Problems',
      defects.map(({ words, restriction, foundAtMs, decision }) =>
        loud(
          decision === 'do-not-ride' ? 'Do not ride' : 'Ride within limits',
          `${words}${restriction ? `, ${restriction}` : ''}, found ${dayWords(foundAtMs, zone)}`,
        ),
      ),
      'none open',
    ),
  ];
}

import { ceilingText, sealCeiling } from '../fit/tyreCeiling.ts';
import { boltCount } from '../mechanics/screws/boltCount.ts';
import { plausibleTorque } from '../mechanics/screws/torquePlausible.ts';
import { pressureBar, type TorqueUnit, type Typed, torqueNm, unitLabel } from '../mechanics/units.ts';
import { notFitted } from '../standards/checks/notFitted.ts';
import { neverDeferred } from '../standards/checks/releaseRules.ts';
import { rideCheck } from '../standards/checks/rideCheck.ts';
import { threadDiameterMm } from '../standards/screws/threadDiameter.ts';
import { refuse } from './decide/ruling.ts';
import type { EntryHead, EntryOf, Id, OneWayChange, SealMark, StepAbout, ToolAbout } from './entries.ts';
import type { Rows } from './fold.ts';
import { labelHolder } from './labelHolder.ts';
import type { JointRow, StepRow } from './rows.ts';

/** What holds between an entry and the rest of the logbook, for a new entry and for a corrected one alike. */

/**
 * Refuses a figure that the screws of the joint cannot have been given. What may only be a slip of the unit is asked
 * about on the screen and kept as it was.
 */
export function checkTorque(joint: JointRow | undefined, { value, unit, typed }: Typed<TorqueUnit>): void {
  const plausible = plausibleTorque(torqueNm(value, unit), threadDiameterMm(joint?.fasteners ?? []));
  if (!plausible.ok && plausible.reason === 'absurd') refuse('absurd-torque', typed);
}

/** A torque is logged when every bolt of the joint was counted. */
export function checkBolts(rows: Rows, jointId: Id, bolts: number): void {
  const joint = rows.get('joint', jointId);
  const all = boltCount(joint?.fasteners ?? []);
  if (all > 0 && bolts < all) refuse('bolts-missing', `${bolts} of ${all}`);
}

/** A pressure above what tyre or rim may see is asked about before it is kept; both figures are said. */
export function checkPressure(rows: Rows, jointId: Id, mark: SealMark, overLimit: true | undefined): void {
  const read = 'reading' in mark ? mark.reading?.pressure : undefined;
  const pressure = mark.mark === 'riding' ? mark.pressure : read;
  const joint = rows.get('joint', jointId);
  if (!pressure || !joint || overLimit) return;
  const ceiling = sealCeiling(joint.partIds.flatMap((partId) => rows.get('part', partId) ?? []));
  if (!ceiling.ok || pressureBar(pressure.value, pressure.unit) <= ceiling.ceilingBar + 1e-9) return;
  const { typed, unit } = pressure;
  refuse('above-the-limit', `${typed} ${unitLabel[unit]}, at most ${ceilingText(ceiling.ceilingBar, unit)}`);
}

/**
 * A torque step has its joint; and a step that is done does not become one that a tick cannot finish.
 * @param step as it stands; undefined for one that is new
 */
export function checkStepKind(
  { kind, jointId }: Partial<Pick<StepAbout, 'kind' | 'jointId'>>,
  step: StepRow | undefined,
): void {
  if (kind === 'torque' && (jointId ?? step?.jointId) === undefined) refuse('no-such-joint');
  if (step?.state !== 'done' || step.kind === kind) return;
  if (kind === 'torque' || kind === 'lock' || (kind === 'cut' && step.partId !== undefined))
    refuse('already-done', step.title);
}

/** A change of a part says by how much, or from which size to which. */
export function checkChangeSize({
  before,
  after,
  amount,
}: Pick<OneWayChange, 'before' | 'after' | 'amount'>): void {
  if (!amount && !(before && after)) refuse('change-unmeasured');
}

/** A label is on one part. */
export function checkLabel(rows: Rows, partId: Id, label: string): void {
  const holder = labelHolder(rows.all('part'), partId, label);
  if (holder) refuse('label-taken', holder.name);
}

/** The range of a tool has its lower end below its upper one, as it reads after the change. */
export function checkToolRange(
  before: ToolAbout | undefined,
  about: Partial<ToolAbout> & { cleared?: (keyof ToolAbout)[] },
): void {
  const after = (field: 'minNm' | 'maxNm') =>
    about[field] ?? (about.cleared?.includes(field) ? undefined : before?.[field]);
  const [minNm, maxNm] = [after('minNm'), after('maxNm')];
  if (minNm !== undefined && maxNm !== undefined && minNm >= maxNm)
    refuse('absurd-value', `${minNm}–${maxNm}`);
}

/** Some things are mended or the bike stays: no date and no distance makes them rideable. */
export function checkLimit(rows: Rows, defect: Omit<EntryOf<'defect-found'>, keyof EntryHead>): void {
  if (defect.decision !== 'ride-limited') return;
  const joint = defect.jointId === undefined ? undefined : rows.get('joint', defect.jointId);
  if (joint?.matters === true || neverDeferred.some(({ id }) => id === defect.area))
    refuse('must-not-be-deferred', defect.words);
  if (defect.untilMs === undefined && defect.untilKm === undefined) refuse('limit-missing');
}

/**
 * A group of the pre-ride check is answered with all its items, each once, and a finding has its words. Not fitted can be
 * what is a thing.
 */
export function checkRideItems(groupId: string, items: EntryOf<'ride-check-confirmed'>['items']): void {
  const wanted = rideCheck.find(({ id }) => id === groupId)?.items ?? refuse('check-incomplete', groupId);
  const given = new Set(items.map(({ itemId }) => itemId));
  const missing = wanted.find(({ id }) => !given.has(id));
  if (missing) refuse('check-incomplete', missing.words);
  if (items.length !== wanted.length) refuse('check-incomplete', groupId);
  if (items.some(({ ok, absent }) => ok && absent)) refuse('malformed');
  const act = items.find(({ itemId, absent }) => absent && !notFitted[itemId]);
  if (act) refuse('must-be-done', wanted.find(({ id }) => id === act.itemId)?.words);
  if (items.some(({ ok, absent, words }) => !ok && !absent && (words ?? '').trim() === ''))
    refuse('words-missing');
}

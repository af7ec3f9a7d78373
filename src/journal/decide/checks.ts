import { fittedHere } from '../../fit/fittedHere.ts';
import { stopsStatement } from '../../planning/stopsStatement.ts';
import { notFitted } from '../../standards/checks/notFitted.ts';
import type { CommandOf } from '../commands.ts';
import type { EntryBody } from '../entries.ts';
import type { Rows } from '../fold.ts';
import { releaseStands } from '../kinds/ofChecks.ts';
import { mayWait, NO_BRAKE, noBrakeAtAll, openItems } from '../openItems.ts';
import type { BikeRow } from '../rows.ts';
import { bikeOf, type Circumstances, freshId, present, type Ruling, refuse, words } from './ruling.ts';

/** A reason is words, not a book. */
const MOST_WHY = 4000;

/** What may never be put off takes back the release that stands: the stamp must not be older than the crack. */
export function takenBack(bike: BikeRow, found: readonly string[]): EntryBody[] {
  if (found.length === 0 || !releaseStands(bike)) return [];
  return [{ type: 'release-withdrawn', bikeId: bike.bikeId, why: found.join('; ').slice(0, MOST_WHY) }];
}

export function findDefect(rows: Rows, command: CommandOf<'find-defect'>, now: Circumstances): Ruling {
  const bike = bikeOf(rows, command.bikeId);
  const { bikeId } = bike;
  const { jointId, partId, area, decision, untilMs, untilKm, restriction } = command;
  const text = words(command.words, 'words-missing');
  const defectId = freshId(rows, 'defect', command.defectId, now);
  return [
    present({
      type: 'defect-found',
      ...{ defectId, bikeId, jointId, partId, words: text, area, decision, untilMs, untilKm, restriction },
    }),
    ...takenBack(bike, decision === 'do-not-ride' ? [text] : []),
  ];
}

export function closeDefect(rows: Rows, command: CommandOf<'close-defect'>): Ruling {
  const defect = rows.get('defect', command.defectId) ?? refuse('no-such-defect');
  if (defect.closed !== undefined) refuse('already-closed', defect.words);
  const { defectId, bikeId } = defect;
  return [{ type: 'defect-closed', defectId, bikeId, how: words(command.how, 'words-missing') }];
}

export function confirmRideCheck(rows: Rows, command: CommandOf<'confirm-ride-check'>): Ruling {
  const bike = bikeOf(rows, command.bikeId);
  const { groupId, happenedAtMs } = command;
  const parts = rows.group('part', `part@${bike.bikeId}`);
  const joints = rows.group('joint', `joint@${bike.bikeId}`);
  // What is on the bike now says nothing of a look that is written down late.
  const there =
    happenedAtMs === undefined &&
    command.items.find(({ itemId, absent }) => absent && fittedHere(itemId, { parts, joints }));
  if (there) refuse('is-fitted', notFitted[there.itemId]?.thing ?? there.itemId);
  const grave = command.items.flatMap(({ itemId, ok, absent, words: text }) => {
    if (ok) return [];
    if (absent) return notFitted[itemId]?.without === 'stands' ? [`no ${notFitted[itemId].thing}`] : [];
    const finding = words(text, 'words-missing');
    return mayWait(groupId, itemId) ? [] : [finding];
  });
  const items = command.items.map((item) => present(item));
  const { groups = {} } = rows.get('ridecheck', bike.bikeId) ?? {};
  const now = { ...groups, [groupId]: { atMs: 0, items } };
  const brakeless = noBrakeAtAll(now, { parts, joints }) ? [NO_BRAKE] : [];
  return [
    { type: 'ride-check-confirmed', bikeId: bike.bikeId, groupId, items },
    ...takenBack(bike, [...grave, ...brakeless]),
  ];
}

/** A release says what is open word for word; what may never be put off stops it. */
export function releaseBike(rows: Rows, command: CommandOf<'release-bike'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const covers = words(command.covers, 'covers-missing');
  const by = words(command.by, 'name-missing');
  if (!now.openInPile) throw new RangeError('a release wants the fit check at hand');
  const open = openItems(rows, bikeId, now.nowMs, now.openInPile);
  const { statement, restrictions } = command;
  const blocking = open.filter((item) => stopsStatement(item, statement));
  if (statement !== 'not-to-ride' && blocking.length > 0) {
    refuse('must-not-be-deferred', blocking.map((item) => item.words).join('; '));
  }
  const { releaseId = now.newId() } = command;
  return [present({ type: 'bike-released', bikeId, releaseId, statement, covers, by, open, restrictions })];
}

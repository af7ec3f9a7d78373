import type { AsBuilt } from '../journal/answers.ts';
import { rideCheck } from '../standards/checks/rideCheck.ts';
import { countWords, dayWords, listWords, numberWords } from '../words/phrases.ts';
import { field, loud, type SheetLine, whenWords } from './sheetLine.ts';

type SheetRelease = AsBuilt['releases'][number];

const statements: Record<string, string> = {
  'first-ride': 'passed for a first short ride',
  ride: 'passed for riding',
  'not-to-ride': 'FAILED, not to be ridden',
};

/** @example riddenText({ count: 2, km: 12.5, minutes: 90 }) //=> '2 rides, 12.5 km, 1 hour and 30 minutes' */
export function riddenText({ count, km, minutes }: SheetRelease['ridden']): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  const time = [
    ...(hours > 0 ? [countWords(hours, 'hour')] : []),
    ...(rest > 0 || hours === 0 ? [countWords(rest, 'minute')] : []),
  ];
  return `${countWords(count, 'ride')}, ${numberWords(km)} km, ${listWords(time)}`;
}

/** What was looked over for a release: everything since the one before it, the newest look at each group. */
function lookedOver({ atMs }: SheetRelease, { inspections, releases }: AsBuilt): SheetLine {
  const before = Math.max(
    ...releases.map((other) => other.atMs).filter((other) => other < atMs),
    Number.NEGATIVE_INFINITY,
  );
  const seen = new Map(
    inspections.filter((look) => look.atMs > before && look.atMs <= atMs).map((look) => [look.groupId, look]),
  );
  if (seen.size === 0) return loud('Pre-ride check', 'nothing on record');
  const groups = [...seen.values()].map(({ groupId, items }) => {
    const title = rideCheck.find(({ id }) => id === groupId)?.title ?? groupId;
    const absent = items.filter((item) => item.absent).length;
    const bad = items.filter((item) => !item.ok && !item.absent).length;
    return `${title} (${countWords(items.length, 'point')}${bad > 0 ? `, ${bad} not OK` : ''}${absent > 0 ? `, ${absent} not fitted` : ''})`;
  });
  const missing = rideCheck.filter(({ id }) => !seen.has(id)).map(({ title }) => title);
  const text = `check before riding: ${groups.join(', ')}${missing.length > 0 ? `; not checked: ${missing.join(', ')}` : ''}`;
  return missing.length > 0 ? loud('Pre-ride check', text) : field('Pre-ride check', text);
}

/** A release on the sheet: pass or fail, what it covers, what was looked over, and every item open that day. */
export function sheetOfRelease(release: SheetRelease, built: AsBuilt, zone: string): SheetLine[] {
  const { atMs, statement, covers, by, open, restrictions, ridden } = release;
  const says = statements[statement] ?? statement;
  return [
    { is: 'heading', text: `Signed ${dayWords(atMs, zone)}` },
    statement === 'not-to-ride' ? loud('Statement', says) : field('Statement', says),
    field('This covers', covers.trim()),
    lookedOver(release, built),
    field('Signed on', whenWords(atMs, zone)),
    field('Use at that date', riddenText(ridden)),
    field('Signed by', by.trim() || 'not named'),
    ...(restrictions?.trim() ? [loud('Restrictions', restrictions.trim())] : []),
    ...(open.length === 0
      ? [field('Open then', 'nothing')]
      : open.map(({ words, blocks }) => (blocks ? loud : field)('Open then', words))),
  ];
}

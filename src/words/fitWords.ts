import type { PlannedPart } from '../fit/bridges/acceptBridge.ts';
import type { Bridge } from '../fit/bridges/bridge.ts';
import type { Finding } from '../fit/finding.ts';
import type { GroupId } from '../fit/openFindings.ts';
import type { PilePart } from '../fit/pile.ts';
import type { OneWayKind, SpacerSet } from '../fit/verdict.ts';
import { numberText } from '../mechanics/numberText.ts';
import type { Known } from '../standards/known.ts';
import { sentenceCase } from './sentenceCase.ts';

/** Headings of the groups. */
export const groupWords: Record<GroupId, string> = {
  'does-not-fit': 'Does not fit',
  'one-way-only': 'Only with a permanent change',
  'not-known': 'Not known yet',
  'fits-with': 'Fits with an adapter or shim',
  accepted: 'Accepted',
  fits: 'Fits',
};

/** How a figure came into the tables. */
export const tableKnownWords: Record<Known, string> = {
  seen: 'printed in the source',
  exact: 'exact by definition',
  computed: 'computed here',
  memory: 'unverified: measure before you rely on it',
  proposal: 'our suggestion',
};

export const changeWords: Record<OneWayKind, string> = {
  'cold-set': 'Cold-set the dropouts',
  'file-slot': 'File the slot',
  'cut-hub': 'Shorten the hub',
  'ream-bore': 'Ream the bore',
  'file-seat': 'File the seat',
  'turn-spindle': 'Turn the spindle',
  'face-shell': 'Face the shell',
  'saw-steerer': 'Saw the steerer',
};

export { topicName as topicWords } from '../fit/openFindings.ts';

/** The parts a finding is about, each once. */
export function partNames({ faces }: Finding, parts: readonly PilePart[]): string[] {
  const ids = [...new Set(faces.map(({ partId }) => partId))];
  return ids.map((id) => parts.find(({ partId }) => partId === id)?.name ?? 'a part that is gone');
}

/** Rings by side. @example spacerWords({ what: 'cup-spacer', thicknessMm: 2.5, driveCount: 2, otherCount: 1 }) //=> '3 cup spacers of 2.5 mm: 2 on the drive side, 1 on the other' */
function spacerWords({ what, thicknessMm, driveCount, otherCount }: SpacerSet): string {
  const name = what === 'cup-spacer' ? 'cup spacer' : 'axle washer';
  const count = driveCount + otherCount;
  return `${count} ${name}${count === 1 ? '' : 's'} of ${numberText(thicknessMm, 2)} mm: ${driveCount} on the drive side, ${otherCount} on the other`;
}

/** A bridge in one line, its pieces in order from the first face to the second. */
export function bridgeWords({ bridgeId, links, spacers, oneWay }: Bridge): string {
  if (spacers) return sentenceCase(spacerWords(spacers));
  if (oneWay)
    return `${changeWords[oneWay.change]}: ${numberText(oneWay.before, 2)} to ${numberText(oneWay.after, 2)} mm`;
  if (links.length === 0) return sentenceCase(bridgeId);
  return sentenceCase(links.map(({ adapter }) => adapter.label).join(', then '));
}

/** The name a piece still to be got is entered under. @example plannedName({ name: 'cup spacer 2.5 mm', count: 3, … }) //=> '3 × cup spacer 2.5 mm' */
export const plannedName = ({ name, count }: PlannedPart): string =>
  count === 1 ? sentenceCase(name) : `${count} × ${name}`;

/** The way over a finding as one line: the best that comes apart again, or every change for good alike. */
export function wayWords({ bridges }: Finding): string | undefined {
  const [best] = bridges;
  if (!best) return undefined;
  return best.reversible ? bridgeWords(best) : bridges.map(bridgeWords).join(', or: ');
}

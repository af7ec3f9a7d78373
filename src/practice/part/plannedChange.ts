import type { ChangeDraft } from '../../drafts/changeDraft.ts';
import { checkPile } from '../../fit/checkPile.ts';
import { isAccepted } from '../../fit/openFindings.ts';
import { pileOf } from '../../fit/pileOf.ts';
import type { OneWayKind } from '../../fit/verdict.ts';
import type { CutKind, Id } from '../../journal/entries.ts';
import type { FindingRow, PartRow } from '../../journal/rows.ts';
import { bridgeWords } from '../../words/fitWords.ts';

/** The hand's way of doing what the fit check asked for. */
const cutOf: Record<OneWayKind, CutKind> = {
  'cold-set': 'cold-set',
  'file-slot': 'file',
  'cut-hub': 'saw',
  'ream-bore': 'ream',
  'file-seat': 'file',
  'turn-spindle': 'turn',
  'face-shell': 'file',
  'saw-steerer': 'saw',
};

export interface PlannedChange {
  /** As it was accepted: "Ends in hub: Bend the ends cold: 120 to 130 mm". */
  words: string;
  draft: Pick<ChangeDraft, 'cut' | 'before' | 'after' | 'unit' | 'why'>;
}

/**
 * The changes for good that were accepted for a part in the fit check of its bike and are still to be done, with
 * the figures the hand aims at. Measured anew, a part that was changed asks for none any more.
 * @example plannedChanges('frame', magpie)[0]?.draft //=> { cut: 'cold-set', before: '120', after: '130', unit: 'mm', … }
 */
export function plannedChanges(
  partId: Id,
  { parts, findings: kept }: { parts: readonly PartRow[]; findings: readonly FindingRow[] },
): PlannedChange[] {
  const { findings } = checkPile(pileOf(parts));
  return findings
    .filter((finding) => isAccepted(kept, finding))
    .flatMap(({ findingId, faces, bridges }) => {
      const words = kept.find((row) => row.findingId === findingId)?.words ?? '';
      const oneWay = bridges.find((bridge) => words.endsWith(bridgeWords(bridge)))?.oneWay;
      const owner = faces.find(({ faceId }) => faceId === oneWay?.faceId);
      if (!oneWay || owner?.partId !== partId) return [];
      const { change, before, after } = oneWay;
      const figures = { before: String(before), after: String(after), unit: 'mm' as const };
      return [{ words, draft: { cut: cutOf[change], ...figures, why: words } }];
    });
}

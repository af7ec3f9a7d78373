import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import type { SizeAsked } from '../../fit/verdict.ts';
import type { FaceKindRow } from '../../standards/faces/faceKind.ts';
import { faceKinds } from '../../standards/faces/faceKinds.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { go } from '../route.ts';

function askLabel({ kind, key }: SizeAsked): string {
  const row: FaceKindRow = faceKinds[kind];
  if (key === 'standard') return 'the standard';
  const size = row.dimensions.find((dimension) => dimension.key === key);
  return (size ?? row.traits?.find((trait) => trait.key === key))?.label ?? key;
}

/** What to measure or look at, each line leading to the part it is measured on. */
export function Asks({
  finding,
  parts,
  bikeId,
}: {
  finding: Finding;
  parts: readonly PilePart[];
  bikeId: string;
}) {
  if (finding.asks.length === 0) return null;
  return (
    <section aria-label="What to measure">
      <h3 class="caption">Measure to find out</h3>
      {finding.asks.map((ask) => {
        const part = parts.find(({ partId }) => partId === ask.partId);
        return (
          <ListRow
            key={`${ask.partId} ${ask.faceId} ${ask.key}`}
            icon="caliper"
            title={sentenceCase(askLabel(ask))}
            detail={[`${part?.name ?? ''}, ${faceKinds[ask.kind].label}`, ask.how].join('. ')}
            onPress={() => {
              // Back from the face leads to this finding again.
              go({ at: 'fit', bikeId, findingId: finding.findingId }, true);
              go({ at: 'edit-part', partId: ask.partId, faceId: ask.faceId });
            }}
          />
        );
      })}
    </section>
  );
}

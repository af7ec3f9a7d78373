import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import type { SizeAsked } from '../../fit/verdict.ts';
import type { FaceKindRow } from '../../standards/faces/faceKind.ts';
import { faceKinds } from '../../standards/faces/faceKinds.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { hrefOf } from '../route.ts';

function askLabel({ kind, key }: SizeAsked): string {
  const row: FaceKindRow = faceKinds[kind];
  if (key === 'standard') return 'the standard';
  const size = row.dimensions.find((dimension) => dimension.key === key);
  return (size ?? row.traits?.find((trait) => trait.key === key))?.label ?? key;
}

/** What to measure or look at, each line leading to the part it is measured on. */
export function Asks({ finding, parts }: { finding: Finding; parts: readonly PilePart[] }) {
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
            href={part && hrefOf({ at: 'edit-part', partId: part.partId })}
          />
        );
      })}
    </section>
  );
}

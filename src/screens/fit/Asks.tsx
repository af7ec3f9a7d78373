import { ListRow } from '../../controls/ListRow.tsx';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import type { Ask } from '../../fit/verdict.ts';
import type { FaceKindRow } from '../../standards/faceKind.ts';
import { faceKinds } from '../../standards/faceKinds.ts';
import { sentenceCase } from '../part/sentenceCase.ts';
import { hrefOf } from '../route.ts';

function askLabel({ kind, key }: Ask): string {
  const row: FaceKindRow = faceKinds[kind];
  if (key === 'standard') return 'the standard';
  const size = row.dimensions.find((dimension) => dimension.key === key);
  return (size ?? row.traits?.find((trait) => trait.key === key))?.label ?? key;
}

/** The part a question is about: its face ids are only its own. */
function partOf({ faces }: Finding, parts: readonly PilePart[], { faceId, kind }: Ask): PilePart | undefined {
  const here = faces.filter((face) => face.faceId === faceId).map(({ partId }) => partId);
  return parts.find(
    ({ partId, faces: own }) =>
      here.includes(partId) && own.some((face) => face.faceId === faceId && face.kind === kind),
  );
}

/** What to measure or look at, each line leading to the part it is measured on. */
export function Asks({ finding, parts }: { finding: Finding; parts: readonly PilePart[] }) {
  if (finding.asks.length === 0) return null;
  return (
    <section aria-label="What to measure">
      <h3 class="caption">To settle it, measure or look</h3>
      {finding.asks.map((ask) => {
        const part = partOf(finding, parts, ask);
        return (
          <ListRow
            key={`${ask.faceId} ${ask.key}`}
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

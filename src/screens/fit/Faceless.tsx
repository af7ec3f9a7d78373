import { Notice } from '../../controls/frames/Notice.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { RowList } from '../../controls/lists/RowList.tsx';
import { partKinds } from '../../fit/partKinds.ts';
import type { PilePart } from '../../fit/pile.ts';
import { faceKinds } from '../../standards/faces/faceKinds.ts';
import { hrefOf } from '../route.ts';

/** Parts that are not checked because none of their faces is recorded. */
export function Faceless({ parts }: { parts: readonly PilePart[] }) {
  const bare = parts.filter(({ kind, faces }) => faces.length === 0 && partKinds[kind].faces.length > 0);
  if (bare.length === 0) return null;
  return (
    <>
      {parts.every(({ faces }) => faces.length === 0) && (
        <Notice kind="empty" title="No part has sizes yet">
          Sizes decide what fits: a bore, a thread, a clamp. Open a part below and enter what is stamped on it
          or what the caliper reads.
        </Notice>
      )}
      <Fold label="Without sizes" end={bare.length} open>
        <RowList
          label="Parts without sizes"
          of={bare}
          keyOf={({ partId }) => partId}
          draw={({ partId, name, kind }) => (
            <ListRow
              icon="caliper"
              title={name}
              detail={partKinds[kind].faces.map((face) => faceKinds[face].label).join('; ')}
              href={hrefOf({ at: 'edit-part', partId })}
            />
          )}
        />
      </Fold>
    </>
  );
}

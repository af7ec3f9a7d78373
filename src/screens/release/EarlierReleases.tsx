import { Fold } from '../../controls/lists/Fold.tsx';
import { RowList } from '../../controls/lists/RowList.tsx';
import type { ReleaseRow } from '../../journal/rows.ts';
import { whenText } from '../../words/dayText.ts';
import { statementText } from '../../words/statements.ts';

type EarlierRelease = ReleaseRow['releases'][number];

function Signed({ release }: { release: EarlierRelease }) {
  const { atMs, covers, by, open, restrictions } = release;
  return (
    <article class="release-signed">
      <h3>{`${whenText(atMs)}: ${statementText(release).toLowerCase()}`}</h3>
      <p>{`Covers: ${covers}`}</p>
      <p>{`Signed by ${by}`}</p>
      {restrictions && <p>{`Only: ${restrictions}`}</p>}
      {open.length === 0 ? (
        <p class="small">Nothing was open.</p>
      ) : (
        <>
          <p class="small">{`Open that day, ${open.length}:`}</p>
          <ul>
            {open.map(({ words }) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </>
      )}
    </article>
  );
}

/** Every release signed so far, word for word, the newest first. */
export function EarlierReleases({ releases }: { releases: readonly EarlierRelease[] }) {
  if (releases.length === 0) return null;
  return (
    <Fold label="Signed so far" end={releases.length}>
      <RowList
        label="Signed so far"
        of={releases.toReversed()}
        keyOf={({ releaseId }) => releaseId}
        draw={(release) => <Signed release={release} />}
        estimatePx={200}
      />
    </Fold>
  );
}

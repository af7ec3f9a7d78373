import type { Face } from '../faces/face.ts';
import type { OneWayFix, SpacerSet } from '../verdict.ts';
import { type Link, type Links, tableLinks } from './links.ts';
import { meet } from './meet.ts';

/** A way to join two faces: adapters in a row, or spacers, or one change of a part. */
export interface Bridge {
  /** The same for the same way, from whichever side and whenever it is asked for. */
  bridgeId: string;
  links: readonly Link[];
  spacers: SpacerSet | null;
  oneWay: OneWayFix | null;
  reversible: boolean;
  /** Why this way is not a good one, in sentences; empty when nothing speaks against it. */
  discouraged: readonly string[];
}

/** More in a row than this is not a joint any more. */
export const LINKS_MOST = 3;

const isTube = ({ adapter }: Link): boolean => adapter.sort !== 'adapter';

/** A row read from either end is one row: of its two names the one that comes first counts. */
function idOfRow(links: readonly Link[]): string {
  const ids = links.map(({ adapter }) => adapter.id);
  if (ids.length === 1) return ids.join();
  const [first = ''] = [ids.join('+'), ids.toReversed().join('+')].sort();
  return first;
}

/**
 * A row of adapters as a bridge.
 * @param against what speaks against this row beyond what any such row has against it
 */
export function ofLinks(links: readonly Link[], against: readonly string[] = []): Bridge {
  const discouraged = [...against];
  if (links.filter(isTube).length > 1)
    discouraged.push(
      'Shims inside shims: every gap adds, and the inner one cannot be seen. Have one made instead.',
    );
  if (links.some(({ adapter }) => adapter.known === 'memory'))
    discouraged.push('The size of one piece is unverified: measure before buying.');
  return {
    bridgeId: idOfRow(links),
    links,
    spacers: null,
    oneWay: null,
    reversible: links.every(({ adapter }) => adapter.reversible),
    discouraged,
  };
}

const meritOf = ({ reversible, links, discouraged }: Bridge): readonly number[] => [
  reversible ? 0 : 1,
  links.length,
  discouraged.length,
  links.filter(({ adapter }) => adapter.partId === null).length,
];

/** Best first: what comes apart again, then fewest pieces, then what speaks against it, then what is there. */
export function bestFirst(bridges: readonly Bridge[]): Bridge[] {
  return bridges
    .map((bridge) => ({ bridge, merit: meritOf(bridge) }))
    .sort((a, b) => {
      const at = a.merit.findIndex((value, index) => value !== b.merit[index]);
      if (at >= 0) return (a.merit[at] ?? 0) - (b.merit[at] ?? 0);
      return a.bridge.bridgeId < b.bridge.bridgeId ? -1 : 1;
    })
    .map(({ bridge }) => bridge);
}

/**
 * Every way to join two faces by adapters, at most three in a row, no piece of which could be left out.
 * A breadth-first walk from `one`: an adapter follows where its face sits on the open face with nothing to ask.
 * @param links adapters to choose from: those of the table, or these and what is at hand
 * @returns best first; empty when there is none
 * @example adapterBridges(stemClamp, steerer)[0]?.bridgeId //=> 'steerer-shim-28.6-25.4'
 */
export function adapterBridges(one: Face, other: Face, links: Links = tableLinks): Bridge[] {
  const starts = links.sittingOn(one);
  // Turned round, what sits on the other face is what ends a row there.
  const ends = new Set(starts.length > 0 ? links.sittingOn(other).map(({ near }) => near) : []);
  if (ends.size === 0 || meet(one, other)?.final) return [];
  const onOne = new Set(starts);
  const closes = (link: Link): boolean => ends.has(link.far);

  const found: Bridge[] = [];
  let open: readonly (readonly Link[])[] = starts.map((link) => [link]);
  for (let length = 1; length <= LINKS_MOST && open.length > 0; length++) {
    const next: (readonly Link[])[] = [];
    for (const row of open) {
      const last = row[row.length - 1];
      if (!last) continue;
      // A row that closes the gap is not walked on from: anything further would be redundant.
      if (closes(last)) {
        if (isIrredundant(row)) found.push(ofLinks(row));
        continue;
      }
      if (length === LINKS_MOST) continue;
      for (const link of links.after(last))
        if ((length + 1 < LINKS_MOST || closes(link)) && !row.some(({ adapter }) => adapter === link.adapter))
          next.push([...row, link]);
    }
    open = next;
  }
  return bestFirst(found);

  /** No run of pieces can be dropped so that what is left on either side of it sits by itself. */
  function isIrredundant(row: readonly Link[]): boolean {
    for (let from = 0; from < row.length; from++)
      for (let to = from; to < row.length; to++) {
        const [before, after] = [row[from - 1], row[to + 1]];
        if (
          before && after
            ? links.after(before).includes(after)
            : before
              ? closes(before)
              : after && onOne.has(after)
        )
          return false;
      }
    return true;
  }
}

/** Spacers as a bridge. */
export const spacerBridge = (spacers: SpacerSet): Bridge => ({
  bridgeId: `${spacers.what}:${spacers.driveCount}+${spacers.otherCount}x${Math.round(spacers.thicknessMm * 100) / 100}`,
  links: [],
  spacers,
  oneWay: null,
  reversible: true,
  discouraged: [],
});

/** A change that cannot be undone as a bridge. */
export const oneWayBridge = (change: OneWayFix): Bridge => ({
  bridgeId: `one-way:${change.change}`,
  links: [],
  spacers: null,
  oneWay: change,
  reversible: false,
  discouraged: [],
});

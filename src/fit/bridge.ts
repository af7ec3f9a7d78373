import type { Face } from './face.ts';
import { meet, ruleFor } from './meet.ts';
import { type Bridging, tableAdapters } from './shelfAdapter.ts';
import type { OneWayChange, SpacerSet } from './verdict.ts';

/** One adapter of a bridge, turned so that `near` looks at the first face of the pair. */
export interface Link {
  adapter: Bridging;
  near: Face;
  far: Face;
}

/** A way to join two faces: adapters in a row, or spacers, or one change of a part. */
export interface Bridge {
  /** The same for the same way, whenever it is asked for. */
  bridgeId: string;
  links: readonly Link[];
  spacers: SpacerSet | null;
  oneWay: OneWayChange | null;
  reversible: boolean;
  /** Why this way is not a good one, in sentences; empty when nothing speaks against it. */
  discouraged: readonly string[];
}

/** More in a row than this is not a joint any more. */
export const LINKS_MOST = 3;

const isTube = ({ adapter }: Link): boolean => adapter.sort !== 'adapter';

function ofLinks(links: readonly Link[]): Bridge {
  const discouraged = [];
  if (links.filter(isTube).length > 1)
    discouraged.push(
      'Shims inside shims: every gap adds, and the inner one cannot be seen. Have one made instead.',
    );
  if (links.some(({ adapter }) => adapter.known === 'memory'))
    discouraged.push('The size of one piece stands in the table from memory: measure before buying.');
  return {
    bridgeId: links.map(({ adapter }) => adapter.id).join('+'),
    links,
    spacers: null,
    oneWay: null,
    reversible: links.every(({ adapter }) => adapter.reversible),
    discouraged,
  };
}

/** Bridges, best first: fewest pieces, then what comes apart again, then what speaks against it, then what is there. */
function byMerit(one: Bridge, other: Bridge): number {
  const merit = (bridge: Bridge): number[] => [
    bridge.reversible ? 0 : 1,
    bridge.links.length,
    bridge.discouraged.length,
    bridge.links.filter(({ adapter }) => adapter.partId === null).length,
  ];
  const [a, b] = [merit(one), merit(other)];
  const at = a.findIndex((value, index) => value !== b[index]);
  return at < 0 ? one.bridgeId.localeCompare(other.bridgeId) : (a[at] ?? 0) - (b[at] ?? 0);
}

/**
 * Every way to join two faces by adapters, at most three in a row, no piece of which could be left out.
 * A breadth-first walk from `one`: an adapter follows where its face sits on the open face with nothing to ask.
 * @param shelf adapters that are there, tried before those of the table
 * @returns best first; empty when there is none
 * @example adapterBridges(stemClamp, steerer)[0]?.bridgeId //=> 'steerer-shim-28.6-25.4'
 */
export function adapterBridges(one: Face, other: Face, shelf: readonly Bridging[] = []): Bridge[] {
  if (meet(one, other)?.final) return [];
  const candidates = [...shelf, ...tableAdapters];
  const found: Bridge[] = [];
  let open: { face: Face; links: readonly Link[] }[] = [{ face: one, links: [] }];
  for (let depth = 1; depth <= LINKS_MOST && open.length > 0; depth++) {
    const next: typeof open = [];
    for (const { face, links } of open)
      for (const adapter of candidates) {
        if (links.some((link) => link.adapter.id === adapter.id)) continue;
        for (const [near, far] of [adapter.faces, [adapter.faces[1], adapter.faces[0]] as const]) {
          if (!ruleFor(face.kind, near.kind) || meet(face, near)?.meets !== 'yes') continue;
          const row = [...links, { adapter, near, far }];
          // A row that closes the gap is not walked on from: anything further would be redundant.
          if (meet(far, other)?.meets === 'yes') found.push(ofLinks(row));
          else next.push({ face: far, links: row });
        }
      }
    open = next;
  }
  return found.filter(isIrredundant).sort(byMerit);

  function isIrredundant({ links }: Bridge): boolean {
    // Dropping the links from i to j would leave two faces that sit on each other by themselves.
    for (let from = 0; from < links.length; from++)
      for (let to = from; to < links.length; to++) {
        if (to - from + 1 === links.length) continue;
        const before = from === 0 ? one : links[from - 1]?.far;
        const after = to === links.length - 1 ? other : links[to + 1]?.near;
        if (before && after && meet(before, after)?.meets === 'yes') return false;
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
export const oneWayBridge = (change: OneWayChange): Bridge => ({
  bridgeId: `one-way:${change.change}`,
  links: [],
  spacers: null,
  oneWay: change,
  reversible: false,
  discouraged: [],
});

import { type Bridge, bestFirst, ofLinks } from './bridges/bridge.ts';
import type { Link } from './bridges/links.ts';
import type { Finding } from './finding.ts';

const ownParts = ({ links }: Bridge): string[] =>
  links.flatMap(({ adapter }) => (adapter.partId === null ? [] : [adapter.partId]));

/** A part of the shelf as a piece that has to be got: one like it. */
const another = ({ adapter, ...faces }: Link): Link => ({
  ...faces,
  adapter: { ...adapter, id: `another:${adapter.partId}`, label: `another ${adapter.label}`, partId: null },
});

/**
 * Every part of the shelf goes into one joint at most. As many joints as possible get a single piece that is there;
 * where that piece is taken, the bridge stays, made of another like it, and says so. Two stems to choose from count
 * as two joints: whether both will be made, the pile does not tell.
 * @param findings of one pile, in any order: who gets what does not depend on it
 * @returns the same findings in the same order, no part of the shelf in two of them
 * @example allotShelf([barInStemA, barInStemB]).map(({ bridges }) => bridges[0]?.bridgeId) //=> ['part:shim', 'another:shim']
 */
export function allotShelf(findings: readonly Finding[]): Finding[] {
  const owners = ownersOf(findings);
  return findings.map((finding) => {
    const taken = (partId: string | null): boolean =>
      partId !== null && owners.get(partId) !== finding.findingId;
    if (!finding.bridges.some((bridge) => ownParts(bridge).some(taken))) return finding;
    const rows = finding.bridges.filter(({ links }) => links.length > 0);
    const bridges = rows.map((bridge) => {
      const gone = bridge.links.filter(({ adapter }) => taken(adapter.partId));
      if (gone.length === 0) return bridge;
      return ofLinks(
        bridge.links.map((link) => (gone.includes(link) ? another(link) : link)),
        gone.map(
          ({ adapter }) => `Another joint takes ${adapter.label}: to make both, one more like it is needed.`,
        ),
      );
    });
    const bare = finding.bridges.filter(({ links }) => links.length === 0);
    return {
      ...finding,
      bridges: [
        ...bare.filter(({ reversible }) => reversible),
        ...bestFirst(bridges),
        ...bare.filter(({ reversible }) => !reversible),
      ],
    };
  });
}

/** Which finding each part of the shelf is for. */
function ownersOf(findings: readonly Finding[]): Map<string, string> {
  const inOrder = [...findings]
    .filter(({ bridges }) => bridges.some((bridge) => ownParts(bridge).length > 0))
    .sort((one, other) => (one.findingId < other.findingId ? -1 : 1));
  const owners = new Map<string, string>();
  const byId = new Map(inOrder.map((finding) => [finding.findingId, finding]));

  /** Gives a finding a piece of its own, moving others on to another piece of theirs where they have one. */
  function settle(finding: Finding, tried: Set<string>): boolean {
    for (const partId of finding.bridges.flatMap(asSinglePiece)) {
      if (tried.has(partId)) continue;
      tried.add(partId);
      const owner = byId.get(owners.get(partId) ?? '');
      if (owner && !settle(owner, tried)) continue;
      owners.set(partId, finding.findingId);
      return true;
    }
    return false;
  }
  const served = inOrder.filter((finding) => settle(finding, new Set()));
  // Then rows of several pieces, where all that is there of a row is still free.
  for (const { findingId, bridges } of inOrder.filter((finding) => !served.includes(finding))) {
    const free = bridges.map(ownParts).find((parts) => parts.every((partId) => !owners.has(partId)));
    for (const partId of free ?? []) owners.set(partId, findingId);
  }
  // What is left lies in second-best rows only: the first that names it may have it.
  for (const { findingId, bridges } of inOrder)
    for (const partId of bridges.flatMap(ownParts)) if (!owners.has(partId)) owners.set(partId, findingId);
  return owners;
}

/** The part a bridge consists of, where it is one part that is there. */
function asSinglePiece(bridge: Bridge): string[] {
  return bridge.links.length === 1 ? ownParts(bridge) : [];
}

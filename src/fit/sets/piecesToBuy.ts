import type { Bridging } from '../bridges/shelfAdapter.ts';
import type { PileCheck } from '../checkPile.ts';

/** What has to be got for a joint whichever of its shortest ways is taken, of those that come apart again. */
function piecesBetween({ findings }: PileCheck): Bridging[] {
  return findings
    .filter(({ outcome }) => outcome === 'fits-with')
    .flatMap(({ bridges }) => {
      const reversible = bridges.filter((bridge) => bridge.reversible);
      const short = Math.min(...reversible.map(({ links }) => links.length));
      const ways = reversible.filter(({ links }) => links.length === short);
      const pieces = ways.flatMap(({ links }) => links.map(({ adapter }) => adapter));
      return pieces.filter(
        ({ id, partId }, at) =>
          partId === null &&
          pieces.findIndex((piece) => piece.id === id) === at &&
          ways.every(({ links }) => links.some(({ adapter }) => adapter.id === id)),
      );
    });
}

/**
 * Adapters and shims that are not at hand and that none of several sets of parts can do without. A piece that a set
 * needs in two joints is named as often as every set needs it.
 * @example piecesToBuy(completeSets(shelf, frame).sets.map(({ check }) => check)).map(({ label }) => label) //=> ['bar shim 31.8 → 26']
 */
export function piecesToBuy(checks: readonly PileCheck[]): Bridging[] {
  const [first = [], ...others] = checks.map(piecesBetween);
  return first.filter(({ id }, at) => {
    const so = first.slice(0, at + 1).filter((piece) => piece.id === id).length;
    return others.every((pieces) => pieces.filter((piece) => piece.id === id).length >= so);
  });
}

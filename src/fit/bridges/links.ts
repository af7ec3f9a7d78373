import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import type { Face } from '../faces/face.ts';
import { meet, partnersOf } from './meet.ts';
import { type Bridging, tableAdapters } from './shelfAdapter.ts';

/** An adapter turned so that `near` looks at what stands before it. */
export interface Link {
  adapter: Bridging;
  near: Face;
  far: Face;
}

/** What may go between two faces, asked by the face it has to sit on. */
export interface Links {
  /** Every link whose near face sits on this one with nothing to ask. */
  sittingOn(face: Face): readonly Link[];
  /** Every link that follows another in a row; the same adapter turned round may be among them. */
  after(link: Link): readonly Link[];
}

function linksAmong(adapters: readonly Bridging[]): Links {
  const byNear = new Map<FaceKind, Link[]>();
  for (const adapter of adapters) {
    const [one, other] = adapter.faces;
    for (const link of [
      { adapter, near: one, far: other },
      { adapter, near: other, far: one },
    ])
      byNear.set(link.near.kind, [...(byNear.get(link.near.kind) ?? []), link]);
  }
  // A link never changes, so what follows it is found once and kept as long as the link itself.
  const followers = new WeakMap<Link, readonly Link[]>();

  function sittingOn(face: Face): Link[] {
    const found: Link[] = [];
    for (const kind of partnersOf(face.kind))
      for (const link of byNear.get(kind) ?? []) if (meet(face, link.near)?.meets === 'yes') found.push(link);
    return found;
  }
  function after(link: Link): readonly Link[] {
    const known = followers.get(link);
    if (known) return known;
    const found = sittingOn(link.far);
    followers.set(link, found);
    return found;
  }
  return { sittingOn, after };
}

/** The links of the adapter table. */
export const tableLinks: Links = linksAmong(tableAdapters);

/**
 * The links of some adapters at hand together with those of the table.
 * @example linksOf([ownShim]).sittingOn(clampFace).map(({ adapter }) => adapter.id) //=> ['part:own-shim', …]
 */
export function linksOf(shelf: readonly Bridging[]): Links {
  const own = linksAmong(shelf);
  return {
    sittingOn: (face) => [...own.sittingOn(face), ...tableLinks.sittingOn(face)],
    after: (link) => [...own.after(link), ...tableLinks.after(link)],
  };
}

import type { Face } from '../faces/face.ts';
import type { Finding } from '../finding.ts';
import type { PartKind } from '../partKinds.ts';
import type { FaceRef } from '../pile.ts';
import type { OneWayFix } from '../verdict.ts';
import type { Bridge } from './bridge.ts';
import { mmText } from './rule.ts';

/** A part that has to come into the house for a bridge. Its faces get ids of their own when it is entered. */
export interface PlannedPart {
  planId: string;
  kind: PartKind;
  name: string;
  faces: readonly Face[];
  count: number;
  caution: string;
  source: string;
}

/** One side of a planned joint: a face of a part that is there, or of one of the planned parts. */
export type PlannedSide = FaceRef | { planId: string; faceId: string };

export interface BridgePlan {
  findingId: string;
  bridgeId: string;
  /** Parts to buy or make. */
  parts: readonly PlannedPart[];
  /** Parts of the shelf that come into use. */
  fromShelf: readonly string[];
  joints: readonly {
    one: PlannedSide;
    other: PlannedSide;
    between: readonly string[];
    /** An adapter goes in here that does not come out again. */
    permanent: boolean;
  }[];
  oneWayChanges: readonly (OneWayFix & { partId: string })[];
  discouraged: readonly string[];
}

export type Acceptance = { ok: true; plan: BridgePlan } | { ok: false; reason: 'no-such-bridge' };

/**
 * What has to be entered when a bridge of a finding is accepted: parts, joints, one-way changes. Nothing is
 * entered here; torque is not part of it, a changed part has none. A change for good makes no joint: the parts
 * meet directly once it is done. Neither does a piece of a chain.
 * @param bridgeId one of the finding's bridges; the best when left out
 * @example acceptBridge(barFinding) //=> { ok: true, plan: { parts: [{ name: 'bar shim 31.8 → 26', … }], … } }
 */
export function acceptBridge(finding: Finding, bridgeId?: string): Acceptance {
  const bridge =
    bridgeId === undefined
      ? finding.bridges[0]
      : finding.bridges.find((candidate) => candidate.bridgeId === bridgeId);
  if (!bridge) return { ok: false, reason: 'no-such-bridge' };

  const bought = bridge.links.filter(({ adapter }) => adapter.partId === null);
  const parts: PlannedPart[] = bought.map(({ adapter }) => ({
    planId: adapter.id,
    kind: adapter.sort,
    name: adapter.label,
    faces: adapter.faces,
    count: 1,
    caution: adapter.caution,
    source: adapter.source,
  }));
  const between: string[] = [];
  if (bridge.spacers) {
    const { what, thicknessMm, driveCount, otherCount } = bridge.spacers;
    parts.push({
      planId: bridge.bridgeId,
      kind: 'spacer',
      name: `${what === 'cup-spacer' ? 'cup spacer' : 'axle washer'} ${mmText(thicknessMm)}`,
      faces: [],
      count: driveCount + otherCount,
      caution: finding.risk,
      source: finding.source,
    });
    between.push(`${driveCount} on the drive side`, `${otherCount} on the other`);
  }
  if (isLoosePiece(bridge))
    parts.push({
      planId: bridge.bridgeId,
      kind: 'other',
      name: bridge.bridgeId,
      faces: [],
      count: 1,
      caution: finding.risk,
      source: finding.source,
    });
  // A row of n adapters makes n + 1 joints, from the first face to the second.
  const [one, other] = finding.faces;
  const joined = one && other && (bridge.links.length > 0 || bridge.spacers);
  const sides: PlannedSide[] = !joined
    ? []
    : [
        one,
        ...bridge.links.flatMap(({ adapter, near, far }) => [
          sideOf(adapter.partId, adapter.id, near.faceId),
          sideOf(adapter.partId, adapter.id, far.faceId),
        ]),
        other,
      ];
  const joints = [];
  for (let index = 0; index + 1 < sides.length; index += 2) {
    const [near, far] = [sides[index], sides[index + 1]];
    if (near && far)
      joints.push({
        one: near,
        other: far,
        between,
        permanent: bridge.links[index / 2]?.adapter.reversible === false,
      });
  }
  const owner = finding.faces.find(({ faceId }) => faceId === bridge.oneWay?.faceId);
  return {
    ok: true,
    plan: {
      findingId: finding.findingId,
      bridgeId: bridge.bridgeId,
      parts,
      fromShelf: bridge.links.flatMap(({ adapter }) => (adapter.partId === null ? [] : [adapter.partId])),
      joints,
      oneWayChanges: bridge.oneWay && owner ? [{ ...bridge.oneWay, partId: owner.partId }] : [],
      discouraged: bridge.discouraged,
    },
  };
}

/** A way that is a piece of its own and lies between no two faces, as a half-link does. */
const isLoosePiece = ({ links, spacers, oneWay }: Bridge): boolean =>
  links.length === 0 && !spacers && !oneWay;

const sideOf = (partId: string | null, planId: string, faceId: string): PlannedSide =>
  partId === null ? { planId, faceId } : { partId, faceId };

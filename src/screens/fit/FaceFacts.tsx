import { faceKnown } from '../../exchange/faceText.ts';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import { faceKinds } from '../../standards/faceKinds.ts';
import { Facts } from '../part/Facts.tsx';

/** Each face of a finding with its part and every figure known of it. */
export function FaceFacts({ finding, parts }: { finding: Finding; parts: readonly PilePart[] }) {
  const told = finding.faces.flatMap(({ partId, faceId }) => {
    const part = parts.find((one) => one.partId === partId);
    const face = part?.faces.find((one) => one.faceId === faceId);
    if (!part || !face) return [];
    const label = faceKinds[face.kind].label;
    return [[`${part.name}, ${label}`, faceKnown(face)] as const];
  });
  return <Facts of={told} />;
}

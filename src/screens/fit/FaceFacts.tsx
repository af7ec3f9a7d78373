import { Facts } from '../../controls/lists/Facts.tsx';
import type { Face } from '../../fit/faces/face.ts';
import { readingOf } from '../../fit/faces/reading.ts';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import { numberText } from '../../mechanics/numberText.ts';
import { faceKinds } from '../../standards/faces/faceKinds.ts';
import { faceKnown } from '../../words/faceText.ts';

/** Sizes that follow from the standard the face names, where none was measured or read on the part. */
function fromStandard(face: Face): string[] {
  return faceKinds[face.kind].dimensions.flatMap(({ key, label }) => {
    const reading = readingOf(face, key);
    if (reading?.from !== 'standard') return [];
    const unit = key.endsWith('Mm') ? ' mm' : key.endsWith('Bar') ? ' bar' : '';
    const weak = reading.weak ? ', unverified: measure it' : '';
    return [`${label} ${numberText(reading.mid, 2)}${unit} (by its standard${weak})`];
  });
}

/** Each face of a finding with its part and every figure known of it. */
export function FaceFacts({ finding, parts }: { finding: Finding; parts: readonly PilePart[] }) {
  const facts = finding.faces.flatMap(({ partId, faceId }) => {
    const part = parts.find((one) => one.partId === partId);
    const face = part?.faces.find((one) => one.faceId === faceId);
    if (!part || !face) return [];
    const { label } = faceKinds[face.kind];
    return [[`${part.name}, ${label}`, [faceKnown(face), ...fromStandard(face)].join('\n')] as const];
  });
  return <Facts of={facts} />;
}

import { CAP_GAP_MM, steererSpare } from '../../mechanics/clamps/steererLength.ts';
import { steererGap } from '../../standards/interfaces/headsets.ts';
import { mmText } from '../bridges/rule.ts';
import { type Finding, finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { onlyFace, readAll } from '../placed.ts';

/** Whether the steerer reaches through head tube, headset and stem. Too short is never bridged. */
export function steererFindings(parts: readonly PilePart[]): Finding[] {
  const steerer = onlyFace(parts, 'steerer');
  const tube = onlyFace(parts, 'head-tube-upper');
  const upper = onlyFace(parts, 'headset-cup-upper');
  const lower = onlyFace(parts, 'headset-cup-lower');
  const clamp = onlyFace(parts, 'steerer-clamp');
  if (!steerer || !tube || !upper || !lower || !clamp) return [];
  const faces = [steerer.ref, tube.ref, upper.ref, lower.ref, clamp.ref];
  const rest = {
    risk: 'A steerer that the stem does not clamp over its whole height can come out of the stem.',
    source: steererGap.source,
    known: steererGap.known,
  };
  const read = readAll({
    length: [steerer, 'lengthMm'],
    headTube: [tube, 'lengthMm'],
    upper: [upper, 'stackMm'],
    lower: [lower, 'stackMm'],
    clamp: [clamp, 'heightMm'],
  });
  if ('asks' in read)
    return [
      finding('steerer-length', faces, {
        outcome: 'not-known',
        because: 'Not known yet: whether the steerer is long enough.',
        asks: read.asks,
        ...rest,
      }),
    ];
  const { length, headTube, upper: top, lower: bottom, clamp: height } = read.readings;
  const { spareMm } = steererSpare(length.mid, {
    lowerStackMm: bottom.mid,
    headTubeMm: headTube.mid,
    upperStackMm: top.mid,
    spacersMm: 0,
    stemClampMm: height.mid,
  });
  const words = `The steerer is ${mmText(length.mid)} long, ${mmText(length.mid - spareMm)} are needed`;
  // The gap under the cap is the reserve; a steerer that ends lower leaves the clamp half empty.
  if (spareMm < -CAP_GAP_MM)
    return [
      finding('steerer-length', faces, { outcome: 'does-not-fit', because: `${words}: too short.`, ...rest }),
    ];
  const notes =
    spareMm > 0.5 ? [`${mmText(spareMm)} of spacers; saw it only once the bar height is settled.`] : [];
  return [
    finding('steerer-length', faces, { outcome: 'fits', because: `${words}: long enough.`, notes, ...rest }),
  ];
}

import { chainAngleDeg, judgeChainline, rearChainlineMm } from '../../mechanics/chainline.ts';
import { type Finding, finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { onlyFace, readAll } from '../placed.ts';
import { readingOf } from '../reading.ts';
import { mm } from '../rule.ts';

const words = {
  straight: 'straight',
  usable: 'usable',
  noticeable: 'to be heard and felt',
  'too-far': 'too far',
} as const;

/** Front and rear chainline against each other, with the angle of the chain at the middle of the slot. */
export function chainlineFindings(parts: readonly PilePart[]): Finding[] {
  const spider = onlyFace(parts, 'spider');
  const driver = onlyFace(parts, 'driver-mount');
  const width = onlyFace(parts, 'hub-spacing', 'rear-hub');
  const slot = onlyFace(parts, 'axle-slot', 'frame');
  if (!spider || !driver || !width) return [];
  const faces = [spider.ref, driver.ref, width.ref];
  const rest = {
    risk: 'A slanting chain is loud, wears out early and comes off a single sprocket.',
    source: 'limits from memory; a cycling forum calls a couple of millimetres fine',
    known: 'memory',
  } as const;
  const read = readAll({
    front: [spider, 'chainlineMm'],
    toothCentre: [driver, 'toothCentreMm'],
    width: [width, 'spacingMm'],
  });
  if ('asks' in read)
    return [
      finding('chainline', faces, {
        outcome: 'not-known',
        because: 'How straight the chain runs is not known yet.',
        asks: read.asks,
        ...rest,
      }),
    ];
  const frontMm = read.readings.front.mid;
  const rearMm = rearChainlineMm(read.readings.width.mid, read.readings.toothCentre.mid);
  const offsetMm = frontMm - rearMm;
  const { judgement } = judgeChainline(offsetMm);
  const reach = slot && [readingOf(slot.face, 'nearestMm'), readingOf(slot.face, 'farthestMm')];
  const angle =
    reach?.[0] && reach[1]
      ? `, ${Math.abs(chainAngleDeg(offsetMm, (reach[0].mid + reach[1].mid) / 2)).toFixed(2)}°`
      : '';
  return [
    finding('chainline', faces, {
      outcome: judgement === 'too-far' ? 'does-not-fit' : 'fits',
      because: `Front ${mm(frontMm)}, rear ${mm(rearMm)}: ${mm(Math.abs(offsetMm))} apart${angle}, ${words[judgement]}.`,
      notes:
        judgement === 'noticeable' || judgement === 'too-far'
          ? [
              'Move the ring to the other side of its spider, or change cup spacers or the washers of the hub.',
            ]
          : [],
      ...rest,
    }),
  ];
}

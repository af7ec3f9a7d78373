import {
  type ChainlineJudgement,
  chainAngleDeg,
  judgeChainline,
  rearChainlineMm,
} from '../../mechanics/drive/chainline.ts';
import { bareNumber } from '../../mechanics/numberText.ts';
import { chainlines } from '../../standards/interfaces/chainlines.ts';
import { mmText } from '../bridges/rule.ts';
import { readingOf } from '../faces/reading.ts';
import { type Finding, finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { onlyFace, readAll } from '../placed.ts';

/** Where the chain runs at either end, from the middle plane of the bike, positive to the drive side. */
export interface Chainline {
  frontMm: number;
  rearMm: number;
  /** Front less rear, mm. */
  offsetMm: number;
  judgement: ChainlineJudgement;
  /** With the axle in the middle of its slot; null when the slot is not known. */
  angleDeg: number | null;
}

const judgementWords: Record<ChainlineJudgement, string> = {
  straight: 'straight',
  usable: 'usable',
  noticeable: 'you will hear and feel it',
  'too-far': 'too far',
};

function chainlineFaces(parts: readonly PilePart[]) {
  const spider = onlyFace(parts, 'spider');
  const driver = onlyFace(parts, 'driver-mount');
  const width = onlyFace(parts, 'hub-spacing', 'rear-hub');
  return spider && driver && width ? { spider, driver, width } : undefined;
}

type Places = NonNullable<ReturnType<typeof chainlineFaces>>;

const readingsOf = ({ spider, driver, width }: Places) =>
  readAll({
    front: [spider, 'chainlineMm'],
    toothCentre: [driver, 'toothCentreMm'],
    width: [width, 'spacingMm'],
  });

/**
 * The chainline of a bike by the faces of its parts.
 * @returns undefined when a part or a figure is missing, or there are two of a part
 * @example chainlineOf([cranks42, hub135with16point5])?.offsetMm //=> -9
 */
export function chainlineOf(parts: readonly PilePart[]): Chainline | undefined {
  const places = chainlineFaces(parts);
  const read = places && readingsOf(places);
  if (!read || 'asks' in read) return undefined;
  const { front, width, toothCentre } = read.readings;
  const rearMm = rearChainlineMm(width.mid, toothCentre.mid);
  const offsetMm = front.mid - rearMm;
  const slot = onlyFace(parts, 'axle-slot', 'frame');
  const [near, far] = ['nearestMm', 'farthestMm'].map((key) => slot && readingOf(slot.face, key)?.mid);
  return {
    frontMm: front.mid,
    rearMm,
    offsetMm,
    judgement: judgeChainline(offsetMm).judgement,
    angleDeg:
      near === undefined || far === undefined ? null : Math.abs(chainAngleDeg(offsetMm, (near + far) / 2)),
  };
}

/** Usual figures, where the front was not measured yet. */
const usual = `Usual, from the middle of the bike: ${chainlines
  .map(
    ({ use, chainlineMm: [lo, hi] }) =>
      `${use} ${lo === hi ? bareNumber(lo) : `${bareNumber(lo)} to ${bareNumber(hi)}`}`,
  )
  .join(', ')}. Measure your own.`;

/** Front and rear chainline against each other, with the angle of the chain at the middle of the slot. */
export function chainlineFindings(parts: readonly PilePart[]): Finding[] {
  const places = chainlineFaces(parts);
  if (!places) return [];
  const faces = [places.spider.ref, places.driver.ref, places.width.ref];
  const rest = {
    risk: 'A slanting chain is loud, wears out early and comes off a single sprocket.',
    source: 'limits unverified; a cycling forum calls a couple of millimetres fine',
    known: 'memory',
  } as const;
  const read = readingsOf(places);
  if ('asks' in read)
    return [
      finding('chainline', faces, {
        outcome: 'not-known',
        because: 'Not known yet.',
        asks: read.asks,
        notes: [usual],
        ...rest,
      }),
    ];
  const line = chainlineOf(parts);
  if (!line) return [];
  const { frontMm, rearMm, offsetMm, angleDeg, judgement } = line;
  const angle = angleDeg === null ? '' : `, ${bareNumber(angleDeg)}°`;
  return [
    finding('chainline', faces, {
      outcome: judgement === 'too-far' ? 'does-not-fit' : 'fits',
      because: `The ring runs ${mmText(frontMm)} from the middle of the bike, the sprocket ${mmText(rearMm)}: ${mmText(Math.abs(offsetMm))} apart${angle}, ${judgementWords[judgement]}.`,
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

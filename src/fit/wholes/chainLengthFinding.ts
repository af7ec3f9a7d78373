import { type Bridge, oneWayBridge } from '../bridges/bridge.ts';
import { mmText } from '../bridges/rule.ts';
import { readingOf, traitOf } from '../faces/reading.ts';
import { type Finding, finding } from '../finding.ts';
import type { PilePart } from '../pile.ts';
import { onlyFace, type Placed, readAll } from '../placed.ts';
import { axlePositions } from './axlePosition.ts';
import type { FilingAdvice } from './filingAdvice.ts';

/** More than this off the front of a slot is a new frame end, not a file. */
const FILE_MOST_MM = 4;

const halfLink: Bridge = {
  bridgeId: 'half-link',
  links: [],
  spacers: null,
  oneWay: null,
  reversible: true,
  discouraged: [],
};

const filing = (slot: Placed, frontMm: number, { fileMm, leftMm, rearMm, pitches }: FilingAdvice): Bridge =>
  oneWayBridge({
    change: 'file-slot',
    faceId: slot.face.faceId,
    key: 'nearestMm',
    before: frontMm,
    after: frontMm - fileMm,
    sideEffects: [
      `${mmText(fileMm)} off the front of both slots, slack, reading and file counted in, for ${pitches} links.`,
      `Left in front of the axle: ${mmText(leftMm.least)} to ${mmText(leftMm.most)}; behind it, with the chain worn, ${mmText(rearMm)}.`,
    ],
    caution:
      'Both sides alike, and at least a slot width of metal left in front; judged by a frame builder first.',
    source: 'chain geometry; what has to stay is unverified',
    known: 'memory',
  });

/** Whether a whole chain puts the axle into the slot, for one ring and one sprocket. */
export function chainLengthFindings(parts: readonly PilePart[]): Finding[] {
  const ring = onlyFace(parts, 'ring-teeth');
  const sprocket = onlyFace(parts, 'sprocket-teeth');
  const slot = onlyFace(parts, 'axle-slot', 'frame');
  const chain = onlyFace(parts, 'chain');
  if (!ring || !sprocket || !slot) return [];
  const faces = [slot.ref, ring.ref, sprocket.ref];
  const rest = {
    risk: 'A chain too slack comes off; one too tight breaks bearings.',
    source: 'chain geometry, every length tried',
    known: 'computed',
  } as const;
  const read = readAll({
    front: [slot, 'nearestMm'],
    rear: [slot, 'farthestMm'],
    ring: [ring, 'teethCount'],
    sprocket: [sprocket, 'teethCount'],
  });
  const open = (because: string, asks: Finding['asks']): Finding[] => [
    finding('chain-length', faces, { outcome: 'not-known', because, asks, ...rest }),
  ];
  if ('asks' in read) return open('Where the chain puts the axle is not known yet.', read.asks);
  const { front, rear, ring: ringTeeth, sprocket: sprocketTeeth } = read.readings;
  const slotMm = { frontMm: front.mid, rearMm: rear.mid };
  const readingMm = Math.max(front.hi - front.mid, rear.hi - rear.mid);
  const even = axlePositions(slotMm, ringTeeth.mid, sprocketTeeth.mid, { readingMm });
  // Figures that cannot be meant are told by the faces' own contradictions and ranges.
  if (!even.ok) return [];
  const [stop] = even.stops;
  const has = chain && readingOf(chain.face, 'pitchesCount')?.mid;
  if (stop) {
    const words = `A chain of ${stop.pitches} links puts the axle ${mmText(stop.tautMm)} behind the spindle; the slot runs from ${mmText(front.mid)} to ${mmText(rear.mid)}`;
    return [
      has !== undefined && has < stop.pitches
        ? finding('chain-length', faces, {
            outcome: 'does-not-fit',
            because: `${words}. This chain has only ${has}.`,
            ...rest,
          })
        : finding('chain-length', faces, { outcome: 'fits', because: `${words}.`, ...rest }),
    ];
  }
  const odd = axlePositions(slotMm, ringTeeth.mid, sprocketTeeth.mid, { halfLink: true, readingMm });
  const advised = odd.ok ? odd.filing : null;
  const files =
    advised &&
    advised.fileMm <= FILE_MOST_MM &&
    advised.rearMm >= 0 &&
    (traitOf(slot.face, 'material') ?? 'steel') === 'steel'
      ? [filing(slot, front.mid, advised)]
      : [];
  if (odd.ok && odd.stops[0])
    return [
      finding('chain-length', faces, {
        outcome: 'fits-with',
        because: `No even number of links puts the axle into the slot; ${odd.stops[0].pitches} with a half-link put it ${mmText(odd.stops[0].tautMm)} behind the spindle.`,
        bridges: [halfLink],
        ...rest,
      }),
    ];
  return [
    finding('chain-length', faces, {
      outcome: files.length > 0 ? 'one-way-only' : 'does-not-fit',
      because: 'No number of links puts the axle into the slot; a tooth more or less may.',
      bridges: files,
      ...rest,
    }),
  ];
}

import { acceptBridge, type BridgePlan } from '../fit/bridges/acceptBridge.ts';
import { checkPile } from '../fit/checkPile.ts';
import type { Finding } from '../fit/finding.ts';
import { pileOf } from '../fit/pileOf.ts';
import { id } from './demoWords.ts';
import { type MagpiePart, magpieParts } from './magpieParts.ts';
import { magpiePile as pile } from './magpiePile.ts';

type Piece = Pick<MagpiePart, 'key' | 'label' | 'name' | 'origin'> & Partial<MagpiePart>;

/** What the builder took for each finding, by its topic. What a piece measures is the plan's to say. */
const taken: [topic: string, piece: Piece | null][] = [
  [
    'stem-on-steerer',
    { key: 'm-shim-steerer', label: 'P-024', name: 'Steerer shim 28.6 to 25.4', origin: 'bought-new' },
  ],
  ['bar-in-stem', { key: 'm-shim-bar', label: 'P-025', name: 'Bar shim 31.8 to 26.0', origin: 'bought-new' }],
  [
    'post-in-seat-tube',
    {
      ...{ key: 'm-shim-post', label: 'P-026', name: 'Seatpost shim 27.2 to 25.4' },
      ...{ origin: 'made', originWords: 'turned from aluminium tube' },
    },
  ],
  [
    'crank-width',
    { key: 'm-spacers', label: 'P-027', name: 'Three spacers 2.5 for the cups', origin: 'found' },
  ],
  [
    'caliper-on-mount',
    {
      ...{ key: 'm-adapter', label: 'P-028', name: 'Brake adapter for rotor 180', origin: 'bought-new' },
      position: 'front',
    },
  ],
  [
    'valve-in-rim',
    {
      ...{ key: 'm-sleeve-front', label: 'P-029', name: 'Valve hole sleeve, front', origin: 'bought-new' },
      position: 'front',
    },
  ],
  [
    'valve-in-rim',
    {
      ...{ key: 'm-sleeve-rear', label: 'P-030', name: 'Valve hole sleeve, rear', origin: 'bought-new' },
      position: 'rear',
    },
  ],
  ['hub-between-ends', null],
];

export interface Taken {
  finding: Finding;
  plan: BridgePlan;
  /** The piece as a part; null where a part is changed instead. */
  part: MagpiePart | null;
}

/** The faces of a part that came off the other bike. */
const facesGiven = (pileId: string) => pile.find(({ partId }) => partId === pileId)?.faces ?? [];

/** The pile as it lies on the bike: without what stayed on the shelf, with what the other bike gave. */
const onBike = pileOf([
  ...magpieParts
    .filter(({ shelf }) => shelf === undefined)
    .map(({ key, name, kind, faces, position }) => ({ partId: id(key), name, kind, faces, position })),
  { partId: id('f-saddle'), name: 'Saddle, sprung', kind: 'saddle', faces: facesGiven('saddle') },
  { partId: id('f-pedals'), name: 'Pedals, broad platform', kind: 'pedals', faces: facesGiven('pedals') },
]);

/**
 * The best way over each finding of the pile, accepted through the same door as on the screen.
 * @throws RangeError when the check no longer finds what the story tells
 */
export function magpieBridges(): Taken[] {
  const { findings } = checkPile(onBike);
  return taken.map(([topic, piece]): Taken => {
    const finding = findings.find(
      (one) =>
        one.topic === topic &&
        (piece?.position === undefined ||
          topic !== 'valve-in-rim' ||
          one.faces.some(({ partId }) => partId === id(`m-rim-${piece.position}`))),
    );
    const accepted = finding && acceptBridge(finding);
    if (!finding || !accepted?.ok) throw new RangeError(`the check has no way over ${topic}`);
    const { plan } = accepted;
    const [planned] = plan.parts;
    if (!piece || !planned) return { finding, plan, part: null };
    return {
      finding,
      plan,
      part: { kind: planned.kind, faces: [...planned.faces], note: planned.caution, ...piece },
    };
  });
}

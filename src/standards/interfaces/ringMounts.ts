import type { InterfaceRow } from '../faces/interfaceRow.ts';

export interface RingMountRow extends InterfaceRow {
  /** Smallest ring that clears the bolts, teeth; null where it was not looked up. */
  leastTeethCount: number | null;
  /** Rings with still fewer teeth that exist all the same, teeth: their bolts thread into the ring, or it sits off the plane. */
  rareTeethCount?: number;
}

const circles = 'bicycle encyclopaedia, chainring bolt circle pages';
const mount = (
  boltCircleMm: number,
  boltsCount: number,
  leastTeethCount: number | null,
  rareTeethCount?: number,
): RingMountRow => ({
  id: `${boltCircleMm}/${boltsCount}`,
  label: `${boltsCount} bolts on ${boltCircleMm}`,
  faces: { spider: { boltCircleMm, boltsCount }, 'ring-mount': { boltCircleMm, boltsCount } },
  leastTeethCount,
  ...(rareTeethCount === undefined ? {} : { rareTeethCount }),
  source: circles,
  known: 'seen',
});

/** Bolt circles of chainrings. */
export const ringMounts: readonly RingMountRow[] = [
  mount(144, 5, null),
  mount(130, 5, 38),
  // 33 on 110: a cycling FAQ on bolt circles (seen); 30 on 104, bolts threaded into the ring: from memory.
  mount(110, 5, 34, 33),
  mount(94, 5, 29),
  mount(74, 5, 24),
  mount(112, 4, 34),
  mount(104, 4, 32, 30),
  mount(68, 4, 22),
  mount(64, 4, 22),
];

export type ScrewMaterial = 'steel' | 'stainless' | 'aluminium' | 'titanium' | 'unknown';
export type Lubricant =
  | 'none'
  | 'oil'
  | 'grease'
  | 'anti-seize'
  | 'moly'
  | 'wax'
  | 'threadlocker-wet'
  | 'unknown';
export type FemaleMaterial =
  | 'steel'
  | 'stainless'
  | 'cast-iron'
  | 'brass'
  | 'aluminium'
  | 'magnesium'
  | 'titanium'
  | 'plastic'
  | 'unknown';

/** Why no preload is computed; the mark on the part then stands alone. */
export type PreloadRefusal =
  | 'aluminium-screw'
  | 'titanium-screw'
  | 'unknown-screw'
  | 'dry-stainless-on-stainless'
  | 'titanium-on-titanium'
  | 'plastic-thread';

export interface ScrewJoint {
  screw: ScrewMaterial;
  female: FemaleMaterial;
  lubricant: Lubricant;
}

/**
 * Whether a preload may be computed for a screw at all. Aluminium and titanium screws have no strength table that
 * holds for all of them; dry stainless on stainless seizes at no predictable friction; plastic creeps away from it.
 * @returns `ok`, or the reason; an unknown lubricant on stainless in stainless counts as none
 * Source: galling range of stainless from a fastener distributor's table; the rest common practice, no source.
 * @example preloadAllowed({ screw: 'titanium', female: 'aluminium', lubricant: 'grease' }) //=> { ok: false, reason: 'titanium-screw' }
 */
export function preloadAllowed(joint: ScrewJoint): { ok: true } | { ok: false; reason: PreloadRefusal } {
  const { screw, female, lubricant } = joint;
  const dry = lubricant === 'none' || lubricant === 'unknown';
  if (screw === 'titanium')
    return { ok: false, reason: female === 'titanium' && dry ? 'titanium-on-titanium' : 'titanium-screw' };
  if (screw === 'aluminium') return { ok: false, reason: 'aluminium-screw' };
  if (screw === 'unknown') return { ok: false, reason: 'unknown-screw' };
  if (screw === 'stainless' && female === 'stainless' && dry)
    return { ok: false, reason: 'dry-stainless-on-stainless' };
  if (female === 'plastic') return { ok: false, reason: 'plastic-thread' };
  return { ok: true };
}

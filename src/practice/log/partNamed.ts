import type { PartKind } from '../../fit/partKinds.ts';

export interface NamedPart {
  kind: PartKind;
  position?: 'front' | 'rear';
}

/** Words of the trade for each kind of part, the more particular before the general. Common practice, no source. */
const tradeNames: readonly (readonly [kind: PartKind, lower: RegExp])[] = [
  ['spoke-set', /\b(spokes?|nipples?)\b/],
  ['rim-tape', /\brim (tape|strip)\b/],
  ['tape', /\b(bar )?tape\b/],
  ['adapter', /\b(adapt[eo]r|reducer|post mount|is mount)\b/],
  ['shim', /\bshim\b/],
  ['sleeve', /\bsleeve\b/],
  ['spacer', /\b(spacers?|washers?)\b/],
  ['top-cap', /\b(top ?cap|star nut)\b/],
  ['headset', /\b(headset|crown race|bearing cups?)\b/],
  ['cable', /\b(cables?|hoses?|housing)\b/],
  ['caliper', /\b(calipers?|v-?brakes?|cantilevers?|brake pads?)\b/],
  ['lever', /\b(levers?|shifters?)\b/],
  ['rotor', /\b(rotors?|discs?|disks?)\b/],
  ['seat-clamp', /\bseat ?(clamp|collar|binder)\b/],
  ['seatpost', /\bseat ?(post|pin)\b|\bdropper\b/],
  ['saddle', /\b(saddle|seat)\b(?! ?tube)/],
  ['chainring', /\bchain ?rings?\b/],
  ['chain', /\b(chain|quick ?link)\b(?! ?stays?)/],
  ['sprocket', /\b(sprockets?|cogs?|cassette|free ?wheel|lock ?ring)\b/],
  ['bottom-bracket', /\b(bottom bracket|bb)\b(?! shell)/],
  ['cranks', /\b(cranks?|crank ?arms?|crankset|spider)\b/],
  ['pedals', /\bpedals?\b/],
  ['front-hub', /\bfront\b.*\b(hub|axle)\b/],
  ['rear-hub', /\b(hub|axle)\b/],
  ['tube', /\b(inner tube|tube)\b(?<!(seat|head|down|top|steerer) ?tube)/],
  ['valve', /\bvalve\b/],
  ['tyre', /\b(tyres?|tires?)\b/],
  ['rim', /\brims?\b/],
  ['stem', /\b(stem|quill)\b/],
  ['grips', /\bgrips?\b/],
  ['bar', /\b(handle ?bars?|bars?|bar ?ends?)\b/],
  ['fork', /\b(fork|steerer|front drop ?outs?)\b/],
  [
    'frame',
    /\b(frame|drop ?outs?|(seat|head|down|top) ?tube|(chain|seat) ?stays?|bb shell|hanger|brake bridge)\b/,
  ],
];

/**
 * Which kind of part a person means by its name.
 * @param name as typed, in any case
 * @returns the kind, `other` where no word of the trade is known in it, and front or rear where that is lower
 * @example partNamed('saddle') //=> { kind: 'saddle' }
 */
export function partNamed(name: string): NamedPart {
  const lower = name.toLowerCase();
  const [kind] = tradeNames.find(([, pattern]) => pattern.test(lower)) ?? ['other' as const];
  const position = /\bfront\b/.test(lower) ? 'front' : /\b(rear|back)\b/.test(lower) ? 'rear' : undefined;
  return { kind, ...(position ? { position } : {}) };
}

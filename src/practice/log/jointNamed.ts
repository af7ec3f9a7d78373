import type { JointKind } from '../../standards/jointKinds.ts';

export interface NamedJoint {
  kind: JointKind;
  side?: 'left' | 'right';
}

/** Words of the trade for each kind of joint, the more particular before the general. Common practice, no source. */
const tradeNames: readonly (readonly [kind: JointKind, lower: RegExp])[] = [
  ['spokes', /\b(spokes?|nipples?)\b/],
  ['cable-anchor', /\b(cables?|anchor)\b/],
  ['brake-mount', /\b(post mount|is mount|brake (mount|adapt[eo]r)|(rotor|caliper|brake) adapt[eo]r)\b/],
  ['caliper', /\b(calipers?|brake bolts?|v-?brakes?|cantilevers?)\b/],
  ['lever-clamp', /\b(levers?|shifters?)\b/],
  ['rotor', /\b(rotors?|discs?|disks?|cent(er|re) ?lock)\b/],
  ['freewheel', /\bfree ?(wheel|hub)\b/],
  ['lockring', /\block ?ring\b/],
  ['sprocket', /\b(sprockets?|cogs?|cassette|driver)\b/],
  ['chainring', /\b(chain ?rings?|ring bolts?|spider)\b/],
  ['crank-pinch', /\bcrank\b.*\bpinch\b|\bpinch\b.*\bcrank\b/],
  ['pedal', /\bpedals?\b/],
  ['crank', /\b(crank ?(arms?|s|set)?|cotters?)\b/],
  ['bottom-bracket', /\b(bottom bracket|bb( shell| cups?)?)\b/],
  ['chain', /\b(chain|quick ?link|joining link)\b/],
  ['crown-race', /\bcrown race\b/],
  ['headset', /\b(headset|top ?cap|star nut|preload|bearing cap)\b/],
  ['stem-quill', /\b(quill|wedge)\b/],
  ['bar-clamp', /\b(face ?plate|bar clamp|handle ?bars?|bar in stem|bars?)\b(?!.*\btape\b)/],
  ['stem-steerer', /\b(stem|steerer)\b/],
  ['seatpost', /\bseat ?(post|clamp|collar|tube|bolt|binder)\b|\b(dropper|seat ?pin)\b/],
  ['saddle-rails', /\b(saddle|rails?|seat)\b/],
  ['grip', /\b(grips?|bar tape|lock-?on)\b/],
  ['thru-axle', /\b(thru|through)[- ]?axle\b/],
  ['front-axle', /\bfront\b.*\b(axle|wheel|nuts?|skewer|quick release|drop ?outs?|hub)\b/],
  ['rear-axle', /\b(axle|wheel|track nuts?|hub nuts?|skewer|quick release|drop ?outs?|hub)\b/],
  ['mudguard', /\b(mud ?guards?|fenders?)\b/],
  ['rack', /\b(racks?|carrier|basket|bottle cage)\b/],
  ['bead', /\b(tyres?|tires?|bead|tubeless|sealant)\b|(?<!\b(head|down|top|seat|steerer) )\btube\b/],
  ['fork', /\bfork\b/],
];

/**
 * Which kind of joint a person means by its name.
 * @param name as typed, in any case
 * @returns the kind, `other` where no word of the trade is known in it, and the side where one is named
 * @example jointNamed('stem') //=> { kind: 'stem-steerer' }
 */
export function jointNamed(name: string): NamedJoint {
  const lower = name.toLowerCase();
  const [kind] = tradeNames.find(([, pattern]) => pattern.test(lower)) ?? ['other' as const];
  const left = /\b(left|non-?drive)\b/.test(lower);
  const right = /\b(right|drive side)\b/.test(lower) && !left;
  return { kind, ...(left ? { side: 'left' } : right ? { side: 'right' } : {}) };
}

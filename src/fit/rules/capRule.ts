import { askFor, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { traitOf } from '../faces/reading.ts';
import type { Judgement } from '../verdict.ts';

function capOnSteerer(cap: Face, steerer: Face): Judgement {
  const pulls = traitOf(cap, 'pulls');
  const material = traitOf(steerer, 'material');
  const inside = traitOf(steerer, 'inside');
  if (!pulls)
    return unknown('Not known yet: star nut, expander or thread under the cap.', [askFor(cap, 'pulls')]);
  if (pulls === 'expander')
    return { meets: 'yes', because: 'An expander holds in any steerer of its inside size.' };
  if (pulls === 'star-nut' && material === 'carbon')
    return { meets: 'no', because: 'A star nut driven into carbon splits it; an expander holds.' };
  if (!inside)
    return unknown('Not known yet: whether the steerer is threaded inside.', [askFor(steerer, 'inside')]);
  if (pulls === 'star-nut') {
    if (inside === 'threaded')
      return { meets: 'no', because: 'A star nut ruins the thread inside this steerer.' };
    return material
      ? { meets: 'yes', because: 'A star nut in a plain metal steerer.' }
      : unknown('The steerer material is not known yet.', [askFor(steerer, 'material')]);
  }
  return inside === 'plain'
    ? { meets: 'no', because: 'The cap screws into a thread this steerer does not have.' }
    : {
        meets: 'yes',
        because: 'Cap and steerer are both threaded.',
        notes: [
          'These threads follow no standard, M24 to M26 by 1 or 1.5: it has to go in by hand, all the way.',
        ],
      };
}

/** Top cap on the steerer: what may be pulled on to set the headset. */
export const capRule: Rule = {
  topic: 'cap-on-steerer',
  first: 'steerer-cap',
  second: 'steerer',
  risk: 'A headset that cannot be set knocks itself loose; a split steerer drops the handlebar.',
  source: 'carbon: page of a frame maker; threads inside unverified',
  known: 'seen',
  judge: capOnSteerer,
};

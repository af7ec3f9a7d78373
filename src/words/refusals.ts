import type { Refusal, Refused } from '../journal/commands.ts';

/** One sentence for each refusal: what is wrong, and what to do. */
const sentences: Record<Refusal, (about: string) => string> = {
  'no-such-bike': () => 'That bike is not in the logbook. Go back to the list and open it from there.',
  'no-such-part': () => 'That part is not in the logbook. Choose it again from the list.',
  'no-such-joint': () => 'That joint is not in the logbook. Choose it again on the bike.',
  'no-such-step': () => 'That step is no longer in the plan. Go back to the plan.',
  'no-such-wait': () => 'That timer is not in the logbook any more. Go back to the bike.',
  'no-such-tool': () => 'That tool is not in the logbook. Choose another.',
  'no-such-wheel': () => 'That wheel is not in the logbook, or was taken apart. Choose another.',
  'no-such-recheck': () => 'That re-check is not in the logbook any more. Go back to the list.',
  'no-such-defect': () => 'That problem is not in the logbook any more. Go back to the bike.',
  'no-such-entry': () => 'That entry cannot be found. Go back to the history.',
  'already-there': () => 'That is in the logbook already.',
  'name-missing': () => 'Enter a name.',
  'reason-missing': () => 'Enter a reason.',
  'words-missing': () => 'Write a word or two.',
  'same-place': (about) => `${about || 'It'} is already there.`,
  'label-taken': (about) => `That label is on ${about || 'another part'}. Choose a free one.`,
  'part-not-on-this-bike': (about) => `${about} is not on this bike. Put it on the bike first.`,
  'fastener-count': (about) => `The number of fasteners must be 1 to 72, not ${about}.`,
  'not-a-number': () => 'That is not a number. Type digits, with a comma or a point for the decimals.',
  'not-positive': () => 'Enter a number above 0.',
  'absurd-torque': (about) =>
    `${about} is not a plausible torque for this bolt. Check the number and the unit.`,
  'absurd-value': (about) => `${about} cannot be right. Check the number and the unit.`,
  malformed: (about) => `${about ? `“${about}”` : 'That'} cannot be read. Type it again.`,
  'too-long': () => 'That is too long. Shorten it.',
  'nothing-changes': () => 'Nothing has changed. Change a value first, or go back.',
  'already-applied': (about) =>
    `A torque is logged for ${about} already. To change it, correct the entry; to do it again, open the step again.`,
  'already-done': (about) => `${about} is done already.`,
  'already-skipped': (about) => `${about} is skipped already.`,
  'already-answered': (about) => `${about} is answered already.`,
  'already-closed': (about) => `Closed already: ${about}.`,
  'already-ended': (about) => `The timer for ${about} has ended already.`,
  'already-undone': () => 'That is struck out already.',
  'double-tap': () => 'Logged once. The second tap came too soon after the first.',
  'joint-apart': (about) => `${about} is taken apart. Put it together first.`,
  'not-a-torque-step': (about) => `${about} needs a torque value. Log the torque instead.`,
  'nothing-to-plan': () => 'Every joint of this bike is in the plan already.',
  'split-into-one': () => 'Give at least two names to split a step.',
  'out-of-order': (about) => about,
  'bolts-missing': (about) =>
    `Only ${about || 'some'} bolts counted. Go round all of them, then log the last pass.`,
  'in-the-future': () => 'That is in the future. Choose a time up to now.',
  'undo-too-late': () => 'Too late to undo. Correct it in History.',
  'cannot-be-corrected': () => 'This entry cannot be edited. Add a new one.',
  'others-build-on-it': () => 'Later entries build on this one, so it cannot be struck out.',
  'must-not-be-deferred': (about) => `Fix first: ${about}.`,
  'limit-missing': () => 'Give a limit: a date, a distance or a number of rides.',
  'check-incomplete': () => 'Answer every point of this group first.',
  'above-the-limit': (about) =>
    `${about}: above the limit of tyre or rim. Let air out, or confirm the figure.`,
  'bond-not-set': (about) => `${about} has not set, and this loads it. Wait, or give a reason to go on.`,
  'must-be-done': (about) => `Check this on every bike: ${about}.`,
  'is-fitted': (about) => `The bike has this part: ${about}. Check it, or take it off the bike first.`,
  'change-not-logged': (about) => `${about}: log the permanent change first, with what is left.`,
  'change-unmeasured': () => 'Enter the amount, e.g. 2 mm off, or the size before and after.',
  'cure-not-started': (about) => `${about}: choose the threadlocker you used, so that its cure is timed.`,
  'covers-missing': () => 'Say what this release covers.',
  'not-released': (about) => `${about} is not released. There is nothing to withdraw.`,
  'turning-breaks-the-bond': (about) =>
    `${about} has threadlocker in it. Turning it breaks the bond: look at the paint mark instead, or log that it moved.`,
  'ride-empty': () => 'Give a time or a distance.',
  'spokes-do-not-divide': (about) =>
    `${about} spokes cannot share this rim. Both sides have the same number; two to one has twice as many on one side.`,
  'crossing-impossible': (about) =>
    `${about} crossings cannot be laced with these spokes. Choose fewer crossings; an odd number of spokes a side is radial.`,
  'rim-smaller-than-hub': (about) => `${about} is smaller than the hub. Measure the rim again.`,
  'part-in-other-wheel': (about) => `That hub or rim is in the wheel ${about}. Take that wheel apart first.`,
  'readings-miscounted': (about) =>
    `${about} readings do not match the spokes of this wheel. Read the wheel again from spoke 1.`,
};

/** The sentence for a refusal, with what it speaks of. */
export function sentenceOf({ refused, about }: Refused): string {
  return sentences[refused](about ?? '');
}

import type { JointKind } from '../jointKinds.ts';
import { type BikeSide, handOf, threadNamed } from './threads.ts';

/** Which of two pieces of a joint sits on a side, by kind of joint. Common words of the trade. */
const pieces: Partial<Record<JointKind, Record<BikeSide, string>>> = {
  pedal: { drive: 'The right pedal', 'non-drive': 'The left pedal' },
  'bottom-bracket': { drive: 'The drive-side cup', 'non-drive': 'The left cup' },
  lockring: { drive: 'The lockring', 'non-drive': 'The left lockring' },
};

/** A fixed sprocket and its lockring sit on the drive side alone. */
const driveOnly: readonly JointKind[] = ['lockring', 'sprocket', 'freewheel'];

/**
 * What of a joint tightens anti-clockwise, to be said before it is turned: what was written down as left-handed, and what
 * the thread fixes by the side of the bike.
 * @returns one name for each such piece; empty where everything is right-handed as far as is known
 * Source: `standards/screws/threads.ts`, the hand of each thread.
 * @example leftHanded('pedal', [{ thread: '9/16-20', hand: 'right' }]) //=> ['The left pedal']
 */
export function leftHanded(
  kind: JointKind,
  fasteners: readonly { thread: string; hand: 'right' | 'left'; words?: string | undefined }[],
): string[] {
  const sides: readonly BikeSide[] = driveOnly.includes(kind) ? ['drive'] : ['drive', 'non-drive'];
  const named = fasteners.flatMap(({ thread, hand, words }) => {
    const row = threadNamed(thread);
    const fixed = row?.hand ? sides.filter((side) => handOf(row, side) === 'left') : [];
    if (fixed.length > 0) return fixed.map((side) => pieces[kind]?.[side] ?? `${row?.label ?? thread}`);
    return hand === 'left' ? [words?.trim() || `The ${thread} thread`] : [];
  });
  return [...new Set(named)];
}

import type { Act } from './acts.ts';
import { diceFor } from './dice.ts';
import { type Played, play } from './play.ts';
import { thrownActs } from './throws.ts';

/** A sequence that a seed throws. */
export async function playSeed(seed: number, length: number, lists = true): Promise<Played> {
  const dice = diceFor(seed);
  return play(
    ({ model, given, last, acts }) =>
      acts >= length ? [] : thrownActs({ model, given, last, acts, dice, lists }),
    { dice: diceFor(seed + 1) },
  );
}

/** A sequence that was written down. */
export function playActs(acts: readonly Act[], seed: number): Promise<Played> {
  let at = 0;
  return play(
    () => {
      const act = acts[at];
      at += 1;
      return act ? [act] : [];
    },
    { dice: diceFor(seed + 1) },
  );
}

/** What a mismatch is about, without the ids that differ from run to run. */
export const gist = (what: string): string => what.replaceAll(/[0-9a-f]{8}-[0-9a-f-]{27}|\d{6,}/g, '…');

const showsIt = (played: Played, what: string): boolean =>
  played.mismatches.some((mismatch) => gist(mismatch.what) === gist(what));

/**
 * A failing sequence without the acts that it fails without as well: pieces are left out, large ones first.
 * @returns the shortest found, played
 */
export async function shortened(
  failed: Played,
  seed: number,
  what = failed.mismatches[0]?.what ?? '',
): Promise<Played> {
  let best = failed;
  for (let size = Math.ceil(failed.acts.length / 2); size >= 1; ) {
    let shorter = false;
    for (let from = 0; from < best.acts.length; ) {
      const rest = [...best.acts.slice(0, from), ...best.acts.slice(from + size)];
      const played = await playActs(rest, seed);
      if (showsIt(played, what)) {
        best = played;
        shorter = true;
      } else from += size;
    }
    if (size === 1 && !shorter) break;
    size = size === 1 ? 1 : Math.floor(size / 2);
  }
  return best;
}

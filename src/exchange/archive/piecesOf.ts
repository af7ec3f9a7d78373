import type { Entry } from '../../journal/entries.ts';
import { PIECE_CHARS, PIECE_LINES } from './layout.ts';

/** Entries as lines, gathered into pieces that are small enough to be held and large enough to pack well. */
export async function* piecesOf(
  batches: AsyncIterable<readonly Entry[]>,
): AsyncGenerator<{ lines: string; count: number }> {
  let lines: string[] = [];
  let chars = 0;
  const piece = () => {
    const whole = { lines: `${lines.join('\n')}\n`, count: lines.length };
    lines = [];
    chars = 0;
    return whole;
  };
  for await (const batch of batches)
    for (const entry of batch) {
      const line = JSON.stringify(entry);
      lines.push(line);
      chars += line.length;
      if (chars >= PIECE_CHARS || lines.length >= PIECE_LINES) yield piece();
    }
  if (lines.length > 0) yield piece();
}

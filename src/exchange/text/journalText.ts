/** The journal as one text file, for share sheets that take no archive: JSON Lines, with lines that check the others. */
export const JOURNAL_TEXT = 'Pinchbolt journal';
/**
 * Version of the text, raised like that of an archive. What no version may change is the first line with `what` and
 * `format`, and the check line below it.
 */
export const TEXT_FORMAT = 2;

/** The first line: what the file is. */
export interface TextHead {
  what: typeof JOURNAL_TEXT;
  format: number;
  entryVersion: number;
  /** `schemaWords` of the app that wrote it; format 1 does not say. */
  schemaWords?: number;
  madeAtMs: number;
}

/**
 * A line after every few thousand entries, and at the end: how many entries stand above it, and the SHA-256 of the
 * check line before (its digits) together with the lines since. So no line can be changed, moved or cut off.
 */
export interface TextCheck {
  entriesAbove: number;
  sha256: string;
  end?: true;
}

/** Before the first check line. */
export const NO_CHECK = '0'.repeat(64);

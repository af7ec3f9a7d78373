import type { Photo } from '../../journal/commands.ts';
import type { Entry, Id } from '../../journal/entries.ts';
import type { CorrectionLine } from '../entries/journalCheck.ts';

/** A photo that a copy holds, without its bytes. */
export interface PhotoListed {
  photoId: Id;
  sha256: string;
  type: string;
  widthPx: number;
  heightPx: number;
  bytes: number;
}

/** A copy of a logbook that was read through once and found whole, and can now be read again piece by piece. */
export interface Copy {
  madeAtMs: number;
  entries: number;
  photos: readonly PhotoListed[];
  /** Corrections of entries that the copy does not hold: the logbook it goes into may. */
  astray: readonly CorrectionLine[];
  /** The entries as they were stored, in the order of the journal they come from. */
  readEntries(): AsyncIterable<readonly Entry[]>;
  readPhotos(): AsyncIterable<Photo>;
}

/** How far a copy has been written or read. */
export interface CopyProgress {
  entries: number;
  photos: number;
  /** Bytes of the file so far. */
  bytes: number;
}

/** What goes with every long piece of work on a copy. */
export interface Work {
  signal?: AbortSignal | undefined;
  onProgress?: ((progress: CopyProgress) => void) | undefined;
}

import type { Id } from '../journal/entries.ts';
import type { HeldMirror, MirroredPhoto } from './mirror.ts';
import type { Source } from './source.ts';

/**
 * Keeps a photo of the logbook in the mirror.
 * @returns its line, and whether its bytes were there before; undefined where it is not in the logbook or could not be
 *   kept now: the next comparison tries again
 */
export async function keepPhotoLine(
  held: HeldMirror,
  source: Source,
  photoId: Id,
): Promise<{ photo: MirroredPhoto; known: boolean } | undefined> {
  const photo = await source.photoUnder(photoId);
  try {
    return photo && (await held.keepPhoto(photo));
  } catch {
    // A photo takes room; where there is none left, the lines still go on.
    return undefined;
  }
}

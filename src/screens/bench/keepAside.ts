import type { Command } from '../../journal/commands.ts';
import type { Id } from '../../journal/entries.ts';
import type { Gathered } from './useStepDraft.ts';

/**
 * Note and photos by themselves, where the entry that is written with them has no room for them: a step that is
 * skipped or left hand-tight loses nothing that was gathered.
 * @returns the commands to carry out before it, in the same list
 */
export function keepAside(
  gathered: Gathered,
  about: { bikeId: Id; stepId: Id; jointId?: Id | undefined },
): Command[] {
  const { note, photoIds } = gathered.noteAndPhotos();
  if (note === undefined && photoIds === undefined) return [];
  const { bikeId, stepId, jointId } = about;
  return [
    {
      type: 'add-note',
      words: note ?? 'Photo',
      bikeId,
      stepId,
      ...(jointId ? { jointId } : {}),
      ...(photoIds ? { photoIds } : {}),
    },
  ];
}

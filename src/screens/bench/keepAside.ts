import type { Id } from '../../journal/entries.ts';
import type { useRun } from '../door.tsx';
import type { Gathered } from './useStepDraft.ts';

/**
 * Logs note and photos by themselves, where the entry that follows has no room for them: a step that is
 * skipped or left hand-tight loses nothing that was gathered.
 * @returns false when they could not be kept, and then nothing else should be written either
 */
export async function keepAside(
  run: ReturnType<typeof useRun>['run'],
  gathered: Gathered,
  about: { bikeId: Id; stepId: Id; jointId?: Id | undefined },
): Promise<boolean> {
  const { note, photoIds } = gathered.noteAndPhotos();
  if (note === undefined && photoIds === undefined) return true;
  const { bikeId, stepId, jointId } = about;
  const entries = await run(
    {
      type: 'add-note',
      words: note ?? 'Photo',
      bikeId,
      stepId,
      ...(jointId ? { jointId } : {}),
      ...(photoIds ? { photoIds } : {}),
    },
    { photos: gathered.photos },
  );
  // Kept once; a second try after a refusal must not keep them twice.
  if (entries) gathered.letGo();
  return entries !== undefined;
}

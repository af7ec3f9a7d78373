import type { Photo } from '../../logbook.ts';
import { emptyStepDraft, type StepDraft } from '../../practice/bench/stepDraft.ts';
import { useDraft } from '../draft.ts';
import { useNewPhotos } from '../useNewPhotos.ts';

export interface Gathered {
  draft: StepDraft;
  change(changed: Partial<StepDraft>): void;
  photos: Photo[];
  addPhoto(file: File): void;
  photoProblem: string | undefined;
  /** Note and photos as a command takes them. */
  noteAndPhotos(): { note?: string; photoIds?: string[] };
  /** After note and photos were logged by themselves; the count stays. */
  letGo(): void;
  /** After saving. */
  clear(): void;
}

/**
 * What is gathered at one step. Photos go into the store with the entry that logs the step; until then they are
 * kept as the count is.
 * @param stepId the step; another one starts anew, so the component is keyed by it
 * @param toolId the tool in hand at the step before
 */
export function useStepDraft(stepId: string, toolId: string | undefined): Gathered {
  const key = `bench:${stepId}`;
  const [draft, change, clearDraft] = useDraft<StepDraft>(key, {
    ...emptyStepDraft,
    ...(toolId ? { toolId } : {}),
  });
  const taken = useNewPhotos(key);
  const { photos } = taken;
  return {
    draft,
    change,
    photos,
    addPhoto: taken.add,
    photoProblem: taken.trouble,
    noteAndPhotos: () => ({
      ...(draft.note.trim() ? { note: draft.note.trim() } : {}),
      ...(photos.length > 0 ? { photoIds: photos.map(({ photoId }) => photoId) } : {}),
    }),
    letGo: () => {
      change({ note: '' });
      taken.clear();
    },
    clear: () => {
      clearDraft();
      taken.clear();
    },
  };
}

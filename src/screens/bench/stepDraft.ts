import type { BetweenKind } from '../../journal/entries.ts';
import type { Photo } from '../../logbook.ts';
import { type BoltCount, uncounted } from '../../practice/boltCount.ts';
import type { CureSurface } from '../../standards/screws/cureGrid.ts';
import type { LockerGrade } from '../../standards/screws/lockers.ts';
import { useDraft } from '../draft.ts';
import { useNewPhotos } from '../useNewPhotos.ts';

/** What is gathered at a step before it is logged. Mirrored, so that a killed app keeps the count. */
export interface StepDraft extends BoltCount {
  typed: string;
  unit?: string;
  toolId?: string;
  between?: BetweenKind;
  marked: boolean;
  note: string;
  grade?: LockerGrade;
  surface?: CureSurface;
  primer: boolean;
  temperatureC: number;
}

const ROOM_C = 20;
const empty: StepDraft = {
  ...uncounted,
  typed: '',
  marked: false,
  note: '',
  primer: false,
  temperatureC: ROOM_C,
};

export interface Gathered {
  draft: StepDraft;
  change(changed: Partial<StepDraft>): void;
  photos: Photo[];
  addPhoto(file: File): void;
  photoProblem: string | undefined;
  /** Note and photos as a command takes them. */
  said(): { note?: string; photoIds?: string[] };
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
    ...empty,
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
    said: () => ({
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

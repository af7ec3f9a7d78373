import { useEffect, useState } from 'preact/hooks';
import type { BetweenKind } from '../../journal/entries.ts';
import type { Photo } from '../../logbook.ts';
import { type PhotoResult, photoFromFile } from '../../sensing/photo.ts';
import type { CureSurface } from '../../standards/cureGrid.ts';
import type { LockerGrade } from '../../standards/lockers.ts';
import { useLogbook } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { type BoltCount, uncounted } from './boltCount.ts';

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

const photoProblems: Record<Extract<PhotoResult, { ok: false }>['reason'], string> = {
  'not-a-picture': 'That file is not a picture.',
  'too-large': 'That picture is too large for the phone. Take it anew.',
  'no-decoder': 'This browser cannot read that kind of picture. Take it with the camera.',
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
 * What is gathered at one step. Photos are held until the step is logged, and go into the store with it.
 * @param stepId the step; another one starts anew, so the component is keyed by it
 * @param toolId the tool in hand at the step before
 */
export function useStepDraft(stepId: string, toolId: string | undefined): Gathered {
  const logbook = useLogbook();
  const [draft, change, clearDraft] = useDraft<StepDraft>(`bench:${stepId}`, {
    ...empty,
    ...(toolId ? { toolId } : {}),
  });
  const [photos, setPhotos] = useState<Photo[]>([]);
  const [photoProblem, setProblem] = useState<string>();
  useEffect(() => setPhotos([]), [stepId]);
  const addPhoto = async (file: File) => {
    setProblem(undefined);
    const result = await photoFromFile(file);
    if (result.ok) setPhotos((old) => [...old, { photoId: logbook.newId(), ...result.photo }]);
    else setProblem(photoProblems[result.reason]);
  };
  return {
    draft,
    change,
    photos,
    addPhoto: (file) => void addPhoto(file),
    photoProblem,
    said: () => ({
      ...(draft.note.trim() ? { note: draft.note.trim() } : {}),
      ...(photos.length > 0 ? { photoIds: photos.map(({ photoId }) => photoId) } : {}),
    }),
    letGo: () => {
      change({ note: '' });
      setPhotos([]);
    },
    clear: () => {
      clearDraft();
      setPhotos([]);
    },
  };
}

import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import { PhotoFull } from '../../../controls/lists/PhotoFull.tsx';
import { PhotoStrip, type StripPhoto } from '../../../controls/lists/PhotoStrip.tsx';
import type { Id } from '../../../journal/entries.ts';
import { useRun } from '../../door.tsx';
import { useDraft } from '../../draft.ts';
import { useNewPhotos } from '../../useNewPhotos.ts';
import { SaveNotice } from './SaveNotice.tsx';

export interface NoteSheetProps {
  /** What the note is about; it is found again in the history of each. */
  about: { bikeId?: Id; jointId?: Id };
  name: string;
  onClose: () => void;
}

/** A remark with pictures, written down with the day; it is read again in the history. */
export function NoteSheet({ about, name, onClose }: NoteSheetProps) {
  const { run, save } = useRun();
  const key = `note:${about.jointId ?? about.bikeId}`;
  const [draft, change, clear] = useDraft(key, { words: '' });
  const { photos, trouble, add } = useNewPhotos(key);
  const [shown, setShown] = useState<number>();
  const keep = async () => {
    const photoIds = photos.map(({ photoId }) => photoId);
    const entries = await run(
      { type: 'add-note', words: draft.words, ...about, ...(photoIds.length > 0 ? { photoIds } : {}) },
      { photos, undo: 'Note logged' },
    );
    if (!entries) return;
    clear();
    onClose();
  };
  const strip: StripPhoto[] = photos.map((photo) => ({ id: photo.photoId, photo, alt: name }));
  return (
    <Sheet
      open
      title="Note or photo"
      onClose={onClose}
      actions={
        <Button kind="main" icon="pencil" disabled={save.is === 'saving'} onPress={keep}>
          Save
        </Button>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <TextField
          label={`About ${name}`}
          lines={4}
          value={draft.words}
          onInput={(words) => change({ words })}
          error={trouble}
          maxLength={2000}
        />
        <PhotoStrip photos={strip} onOpen={setShown} onAdd={add} />
      </div>
      <PhotoFull photos={strip} index={shown} onIndex={setShown} onClose={() => setShown(undefined)} />
    </Sheet>
  );
}

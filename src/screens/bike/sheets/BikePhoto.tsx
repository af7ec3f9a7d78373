import { useState } from 'preact/hooks';
import { Notice } from '../../../controls/frames/Notice.tsx';
import type { BikeRow } from '../../../journal/rows.ts';
import { photoFromFile } from '../../../sensing/photo.ts';
import { useLogbook, useRun } from '../../door.tsx';
import { Photos } from './Photos.tsx';
import { photoWords } from './photoWords.ts';
import { SaveNotice } from './SaveNotice.tsx';

/** The picture on the card. A new one takes its place; the old one stays in the history. */
export function BikePhoto({ bike }: { bike: BikeRow }) {
  const logbook = useLogbook();
  const { run, save } = useRun();
  const [trouble, setTrouble] = useState<string>();
  const add = async (file: File) => {
    const made = await photoFromFile(file);
    setTrouble(made.ok ? undefined : photoWords[made.reason]);
    if (!made.ok) return;
    const photoId = logbook.newId();
    await run(
      { type: 'describe-bike', bikeId: bike.bikeId, photoId },
      { photos: [{ photoId, ...made.photo }], undo: 'Photo of the bike' },
    );
  };
  return (
    <div class="bike-photo stack">
      <Photos
        photoIds={bike.photoId === undefined ? [] : [bike.photoId]}
        alt={bike.name}
        onAdd={add}
        addLabel="Picture"
      />
      {trouble && <Notice kind="error" title={trouble} />}
      <SaveNotice save={save} />
    </div>
  );
}

import { useState } from 'preact/hooks';
import { PhotoFull } from '../../../controls/lists/PhotoFull.tsx';
import { PhotoStrip } from '../../../controls/lists/PhotoStrip.tsx';
import { Tile } from '../../../controls/Tile.tsx';
import type { JointRow } from '../../../journal/rows.ts';
import { pickPicture } from '../../../sensing/pickPicture.ts';
import { StepNoteSheet } from '../../bench/frame/StepNoteSheet.tsx';
import type { Gathered } from '../../bench/useStepDraft.ts';
import { hrefOf } from '../../route.ts';

/** A photo and a note that go with the next mark, whatever it is. */
export function NextMarkExtras({ joint, gathered }: { joint: JointRow; gathered: Gathered }) {
  const { jointId, name } = joint;
  const { draft, change, photos, addPhoto, photoProblem } = gathered;
  const [noting, setNoting] = useState(false);
  const [shown, setShown] = useState<number>();
  const note = draft.note.trim();
  const prints = photos.map((photo, index) => ({ id: photo.photoId, photo, alt: `${name}, ${index + 1}` }));
  return (
    <>
      <div class="tiles">
        <Tile
          icon="camera"
          onPress={() => pickPicture(addPhoto)}
          value={photos.length > 0 ? `${photos.length} taken` : undefined}
        >
          Photo
        </Tile>
        <Tile icon="note" onPress={() => setNoting(true)} value={note || undefined}>
          Note
        </Tile>
        <Tile icon="lookup" href={hrefOf({ at: 'joint', jointId })}>
          Joint
        </Tile>
      </div>
      {(prints.length > 0 || note !== '') && <p class="far">Saved with the next entry.</p>}
      {photoProblem && (
        <p class="loud" role="alert">
          {photoProblem}
        </p>
      )}
      {prints.length > 0 && <PhotoStrip photos={prints} onOpen={setShown} />}
      <PhotoFull photos={prints} index={shown} onIndex={setShown} onClose={() => setShown(undefined)} />
      {noting && (
        <StepNoteSheet
          note={draft.note}
          onNote={(words) => change({ note: words })}
          onClose={() => setNoting(false)}
        />
      )}
    </>
  );
}

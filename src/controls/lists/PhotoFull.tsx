import './PhotoFull.css';
import { Button } from '../Button.tsx';
import { useModal } from '../frames/modal.ts';
import type { StripPhoto } from './PhotoStrip.tsx';
import { usePhotoUrl } from './photoUrl.ts';

export interface PhotoFullProps {
  photos: readonly StripPhoto[];
  /** Which one is shown; undefined keeps the dialog shut. */
  index: number | undefined;
  onIndex: (index: number) => void;
  onClose: () => void;
}

/** One photo over the whole screen, with its words; arrow keys turn to the neighbours. */
export function PhotoFull({ photos, index, onIndex, onClose }: PhotoFullProps) {
  const shown = index === undefined ? undefined : photos[index];
  const url = usePhotoUrl(shown?.photo === 'unreadable' ? undefined : shown?.photo);
  const dialog = useModal(shown !== undefined);
  if (!shown || index === undefined) return null;

  const turn = (by: number) => {
    if (photos[index + by]) onIndex(index + by);
  };
  return (
    <dialog
      class="full"
      ref={dialog}
      aria-label={`Photo ${index + 1} of ${photos.length}`}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onKeyDown={(event) => {
        if (event.key === 'ArrowRight') turn(1);
        if (event.key === 'ArrowLeft') turn(-1);
      }}
    >
      {url ? (
        <img src={url} alt={shown.alt} />
      ) : (
        <span>{shown.photo === 'unreadable' ? 'Cannot be read' : ''}</span>
      )}
      <div class="full-foot">
        <Button size="greasy" icon="cross" label="Close" onPress={onClose}>
          {''}
        </Button>
        <span class="full-text">{shown.alt}</span>
        {photos.length > 1 && (
          <>
            <Button
              size="greasy"
              icon="back"
              label="Previous photo"
              disabled={index === 0}
              onPress={() => turn(-1)}
            >
              {''}
            </Button>
            <Button
              size="greasy"
              icon="next"
              label="Next photo"
              disabled={index === photos.length - 1}
              onPress={() => turn(1)}
            >
              {''}
            </Button>
          </>
        )}
      </div>
    </dialog>
  );
}

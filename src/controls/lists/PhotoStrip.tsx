import './PhotoStrip.css';
import { useState } from 'preact/hooks';
import { pickPicture } from '../../sensing/pickPicture.ts';
import { Icon } from '../Icon.tsx';
import { type PhotoBytes, usePhotoUrl } from './photoUrl.ts';

export interface StripPhoto {
  id: string;
  /** Undefined while the bytes are still being read. */
  photo: PhotoBytes | 'unreadable' | undefined;
  /** What it shows, for screen readers. */
  alt: string;
}

export interface PhotoStripProps {
  photos: readonly StripPhoto[];
  onOpen: (index: number) => void;
  /** Told the file taken or chosen; without it nothing can be added. */
  onAdd?: ((file: File) => void) | undefined;
  addLabel?: string;
}

function Print({ photo, alt, onOpen }: Omit<StripPhoto, 'id'> & { onOpen: () => void }) {
  const url = usePhotoUrl(photo === 'unreadable' ? undefined : photo);
  const [broken, setBroken] = useState(false);
  if (photo === 'unreadable' || broken)
    return (
      <span class="photo photo-broken">
        <Icon name="warning" sizePx={28} label={`Photo: ${alt}`} />
        Cannot be read
      </span>
    );
  return (
    <button type="button" class="photo" onClick={onOpen} aria-label={`Photo: ${alt}`}>
      {url ? <img src={url} alt="" onError={() => setBroken(true)} /> : <span class="photo-blank" />}
    </button>
  );
}

/** Prints side by side, wrapping to the next line: nothing to swipe. The last place takes a new one. */
export function PhotoStrip({ photos, onOpen, onAdd, addLabel = 'Photo' }: PhotoStripProps) {
  return (
    <ul class="photos">
      {photos.map(({ id, photo, alt }, index) => (
        <li key={id}>
          <Print photo={photo} alt={alt} onOpen={() => onOpen(index)} />
        </li>
      ))}
      {onAdd && (
        <li>
          <button type="button" class="photo photo-add" onClick={() => pickPicture(onAdd)}>
            <Icon name="camera" sizePx={34} />
            {addLabel}
          </button>
        </li>
      )}
    </ul>
  );
}

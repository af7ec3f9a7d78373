import type { PhotoResult } from '../../../sensing/photo.ts';

/** Why a chosen file did not become a photo, and what to do. */
export const photoWords: Record<Extract<PhotoResult, { ok: false }>['reason'], string> = {
  'not-a-picture': 'That file is not a picture. Choose another.',
  'too-large': 'That picture is too heavy. Take one with fewer pixels.',
  'too-many-pixels':
    'That picture has too many pixels for a phone to open. Save a smaller copy and choose that.',
  'no-decoder': 'This browser cannot draw that kind of picture. Save it as JPEG first.',
};

import type { PhotoResult } from '../../../sensing/photo.ts';

/** Why a chosen file did not become a photo, and what to do. */
export const photoWords: Record<Extract<PhotoResult, { ok: false }>['reason'], string> = {
  'not-a-picture': 'That file is not a picture. Choose another.',
  'too-large': 'Photo too large. Use a smaller one.',
  'too-many-pixels':
    'That picture has too many pixels for a phone to open. Save a smaller copy and choose that.',
  'no-decoder': 'This browser cannot show that format. Use JPEG.',
};

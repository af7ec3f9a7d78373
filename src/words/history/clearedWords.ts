import { listWords } from '../phrases.ts';
import { type EntryField, fieldLabels } from './fieldLabels.ts';

/** The captions of emptied fields. @example clearedFields(['massG', 'serial']) //=> '“Mass” and “Serial number”' */
export const clearedFields = (cleared: readonly EntryField[]): string =>
  listWords(cleared.map((field) => `“${fieldLabels[field] ?? field}”`));

/**
 * What a description took away, as the end of its sentence.
 * @returns an empty string where nothing was taken away
 * @example clearedWords(['massG']) //=> ' Emptied, since it is not known: “Mass”.'
 */
export const clearedWords = (cleared: readonly EntryField[] | undefined): string =>
  cleared?.length ? ` Cleared, as not known: ${clearedFields(cleared)}.` : '';

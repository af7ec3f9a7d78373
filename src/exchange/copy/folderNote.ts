/** Under which name the folder for copies, and what was written to it, is noted beside the journal. */
export const FOLDER_NOTE = 'copy-folder';

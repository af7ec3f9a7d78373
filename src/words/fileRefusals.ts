const again = 'Use another copy, or copy the file again from where you keep it.';

/** One sentence for each reason why a file is not read in: what is wrong, and what to do. */
const sentences = {
  'not-a-copy': () => 'This is not a copy of a Pinchbolt logbook. Choose a file saved by this app.',
  'newer-format': () => 'This copy was made by a newer version of the app. Update the app, then try again.',
  'newer-entries': (about) =>
    `${about} was written by a newer version of the app. Update the app, then try again.`,
  'cut-short': () => `The end of the file is missing. ${again}`,
  damaged: (about) => `The file is damaged: ${about}. ${again}`,
  'passphrase-missing': () => 'This copy is locked. Enter its passphrase.',
  'passphrase-wrong': () => 'Wrong passphrase, or the file is damaged. Try again.',
  'lock-unknown': () => 'This copy is locked in a way this app cannot open. Update the app, then try again.',
  'foreign-file': (about) => `The copy contains a file that does not belong in it: ${about}. ${again}`,
  'too-large': (about) => `${about} is larger than a logbook can be. ${again}`,
  'line-not-json': (about) => `${about} cannot be read. ${again}`,
  'entry-wrong': (about) =>
    `${about} is not an entry this version knows. Update the app and try again, or use another copy.`,
  'entry-implausible': (about) => `${about} contains a figure that cannot be right. ${again}`,
  'zone-unknown': (about) =>
    `${about} has a time zone this browser does not know. Update the browser, then try again.`,
  'entry-twice': (about) => `${about} has the id of an earlier entry. ${again}`,
  'correction-astray': (about) => `${about} corrects something no entry has. ${again}`,
  'same-id-other-content': (about) =>
    `Entry ${about} is in both logbooks but differs. Nothing was added. ${again}`,
  'same-photo-other-picture': (about) =>
    `Photo ${about} is in both logbooks but differs. Nothing was added. ${again}`,
} satisfies Record<string, (about: string) => string>;

/** Why a file is not read in. */
export type FileRefusal = keyof typeof sentences;

export interface RefusedFile {
  refused: FileRefusal;
  /** What the sentence speaks of: a file, a line, a field. */
  about?: string;
}

/**
 * The sentence for a file that is not read in.
 * @example fileSentence({ refused: 'passphrase-missing' }) //=> 'This copy is locked. Enter its passphrase.'
 */
export const fileSentence = ({ refused, about }: RefusedFile): string => sentences[refused](about ?? 'It');

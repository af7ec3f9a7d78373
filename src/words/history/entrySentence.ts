import type { Entry, EntryOf, EntryType } from '../../journal/entries.ts';
import { countWords, listWords, remark } from '../phrases.ts';
import { fieldText } from './entryFields.ts';
import { fieldLabels } from './fieldLabels.ts';
import type { Names } from './names.ts';
import type { Sentences } from './sentences.ts';
import { sentencesOfBikes } from './sentencesOfBikes.ts';
import { sentencesOfJoints } from './sentencesOfJoints.ts';
import { sentencesOfParts } from './sentencesOfParts.ts';
import { sentencesOfWheels } from './sentencesOfWheels.ts';
import { sentencesOfWork } from './sentencesOfWork.ts';

function correctionWords({ reason, undo, becomes, zone }: EntryOf<'entry-corrected'>, names: Names): string {
  if (undo) return 'The previous entry was undone.';
  if (becomes === null) return `An earlier entry was struck out.${remark('Why', reason)}`;
  const now = Object.entries(becomes).map(([field, value]) => {
    const label = (fieldLabels as Record<string, string>)[field] ?? field;
    return `${label.toLowerCase()} ${fieldText(field, value, names, zone)}`;
  });
  return `An earlier entry was corrected; it now reads: ${listWords(now)}.${remark('Why', reason)}`;
}

/** Complete by type: a new type of entry does not compile until it has its sentence. */
const sentences: Sentences<EntryType> = {
  ...sentencesOfBikes,
  ...sentencesOfParts,
  ...sentencesOfJoints,
  ...sentencesOfWork,
  ...sentencesOfWheels,
  'entry-corrected': correctionWords,
  'settings-changed': () => 'Settings changed.',
  'demo-removed': ({ lines }) => `Demo removed, ${countWords(lines, 'entry', 'entries')}.`,
};

/** What is said of a line that this version of the app cannot read. It stays in the logbook as it is. */
const UNREADABLE = 'This entry was written by a newer version of the app. Update the app to read it.';

function sentenceFor(entry: Entry, names: Names): string {
  if (!Object.hasOwn(sentences, entry.type)) return UNREADABLE;
  try {
    return (sentences[entry.type] as (entry: Entry, names: Names) => string)(entry, names);
  } catch {
    // A kind that is known, in a shape that is not.
    return UNREADABLE;
  }
}

/**
 * An entry as one or a few plain sentences that a reader understands two years later: everything named in
 * full, quantities as they were typed, no private abbreviations. The date is not in it; it stands beside.
 * @param names how bikes, parts, joints and the like are called
 * @example entrySentence(rideEntry, names) //=> 'Magpie was ridden for the first time, 8 km in 30 minutes.'
 */
export function entrySentence(entry: Entry, names: Names): string {
  const sentence = sentenceFor(entry, names);
  return sentence.charAt(0).toLocaleUpperCase() + sentence.slice(1);
}

import {
  countWords,
  dayWords,
  listWords,
  numberWords,
  quantityWords,
  remark,
  spanInWords,
} from '../phrases.ts';
import { clearedWords } from './clearedWords.ts';
import { called, type Sentences } from './sentences.ts';
import { waitKindWords } from './tradeWords.ts';

interface Due {
  dueDays?: number;
  dueRides?: number;
  dueKm?: number;
}

/**
 * When a re-check falls due.
 * @example dueText({ dueRides: 1, dueDays: 30 }) //=> 'after 1 ride or 30 days, whichever comes first'
 */
export function dueText({ dueDays, dueRides, dueKm }: Due): string {
  const spans = [
    ...(dueRides === undefined ? [] : [dueRides === 0 ? 'none' : countWords(dueRides, 'ride')]),
    ...(dueKm === undefined ? [] : [`${numberWords(dueKm)} km`]),
    ...(dueDays === undefined ? [] : [countWords(dueDays, 'day')]),
  ];
  if (spans.length === 0) return 'with no limit set';
  if (spans[0] === 'none') return 'before the next ride';
  return `after ${spans.join(' or ')}${spans.length > 1 ? ', whichever comes first' : ''}`;
}

/** The list at the bench, waits, re-checks, tools and notes. */
export const sentencesOfWork: Sentences<
  | 'step-added'
  | 'step-described'
  | 'step-moved'
  | 'step-dropped'
  | 'step-skipped'
  | 'step-reopened'
  | 'step-opened'
  | 'step-done'
  | 'wait-started'
  | 'wait-ended'
  | 'wait-changed'
  | 'clock-moved'
  | 'tool-added'
  | 'tool-described'
  | 'tool-put-away'
  | 'tool-found-out'
  | 'recheck-set'
  | 'recheck-changed'
  | 'recheck-dropped'
  | 'recheck-answered'
  | 'note-added'
> = {
  'step-added': ({ bikeId, title, detail }, names) =>
    `A step was put on the list of ${called(names).bike(bikeId)}: ${title}.${remark('Detail', detail)}`,
  'step-described': ({ stepId, bikeId, title, detail }, names) =>
    `On the list of ${called(names).bike(bikeId)}, ${called(names).step(stepId)} was changed${title === undefined ? '' : `: ${title}`}.${remark('Detail', detail)}`,
  'step-moved': ({ stepId, bikeId }, names) =>
    `On the list of ${called(names).bike(bikeId)}, ${called(names).step(stepId)} was moved to another place.`,
  'step-dropped': ({ stepId, bikeId, why, splitInto }, names) =>
    `On the list of ${called(names).bike(bikeId)}, ${called(names).step(stepId)} was taken out${splitInto?.length ? ` and ${countWords(splitInto.length, 'step')} put in its place` : ''}.${remark('Why', why)}`,
  'step-skipped': ({ stepId, bikeId, why, jointId }, names) =>
    `On ${called(names).bike(bikeId)}, ${called(names).step(stepId)} was left undone for now${jointId ? `; it is about ${called(names).joint(jointId)}` : ''}.${remark('Why', why)}`,
  'step-reopened': ({ stepId, bikeId, why }, names) =>
    `On ${called(names).bike(bikeId)}, ${called(names).step(stepId)} counts as not done again.${remark('Why', why)}`,
  'step-opened': ({ stepId, bikeId }, names) =>
    `Work on ${called(names).bike(bikeId)} came to ${called(names).step(stepId)}.`,
  'step-done': ({ stepId, bikeId, measured, despite, note }, names) =>
    `On ${called(names).bike(bikeId)}, ${called(names).step(stepId)} was done${measured ? `; measured ${quantityWords(measured)}` : ''}.${remark('Went on though a bond had not set', despite)}${remark('Note', note)}`,
  'wait-started': ({ bikeId, jointId, kind, title, waitMs }, names) =>
    `On ${called(names).bike(bikeId)}${jointId ? `, ${called(names).joint(jointId)},` : ''} a wait of ${spanInWords(waitMs)} began, ${waitKindWords[kind]}: ${title}.`,
  'wait-ended': ({ waitId, bikeId, outcome, words }, names) => {
    const ended = {
      looked: 'was over and looked at',
      'cut-short': 'was cut short',
      'no-longer-needed': 'was no longer needed',
    }[outcome];
    return `On ${called(names).bike(bikeId)}, ${called(names).wait(waitId)} ${ended}.${remark('Seen', words)}`;
  },
  'wait-changed': ({ waitId, bikeId, waitMs, why }, names) =>
    `On ${called(names).bike(bikeId)}, ${called(names).wait(waitId)} was set to ${spanInWords(waitMs)} in all.${remark('Why', why)}`,
  'clock-moved': ({ bikeId, waitId, byMs }, names) =>
    `The phone’s clock was moved ${byMs < 0 ? 'back' : 'forward'} by ${spanInWords(Math.abs(byMs))} while ${called(names).wait(waitId)} ran on ${called(names).bike(bikeId)}; its end was moved with it.`,
  'tool-added': ({ name, minNm, maxNm, lastCheckMs, zone, note }) =>
    `The tool ${name} was added${maxNm === undefined ? '' : `, ${minNm === undefined ? 'up to' : `${numberWords(minNm)} to`} ${numberWords(maxNm)} N·m`}${lastCheckMs === undefined ? ', never checked' : `, last checked ${dayWords(lastCheckMs, zone)}`}.${remark('Note', note)}`,
  'tool-described': ({ toolId, name, lastCheckMs, droppedAtMs, zone, note, cleared }, names) => {
    const changes = [
      ...(name === undefined ? [] : [`it is called ${name}`]),
      ...(lastCheckMs === undefined ? [] : [`it was checked ${dayWords(lastCheckMs, zone)}`]),
      ...(droppedAtMs ? [`it was dropped ${dayWords(droppedAtMs, zone)}`] : []),
    ];
    return `What is known of the tool ${called(names).tool(toolId)} was changed${changes.length > 0 ? `: ${listWords(changes)}` : ''}.${remark('Note', note)}${clearedWords(cleared)}`;
  },
  'tool-put-away': ({ toolId, why }, names) =>
    `The tool ${called(names).tool(toolId)} was put away.${remark('Why', why)}`,
  'tool-found-out': ({ toolId, why }, names) =>
    `The tool ${called(names).tool(toolId)} was found to show wrong; the joints done with it since its last check are to be done again.${remark('Found', why)}`,
  'recheck-set': (entry, names) =>
    `A re-check on ${called(names).bike(entry.bikeId)} was set, due ${dueText(entry)}: ${entry.title}.${remark('What to do', entry.instruction)}`,
  'recheck-changed': (entry, names) =>
    `On ${called(names).bike(entry.bikeId)}, ${called(names).recheck(entry.recheckId)} now falls due ${dueText(entry)}.${remark('Why', entry.why)}`,
  'recheck-dropped': ({ recheckId, bikeId, why }, names) =>
    `On ${called(names).bike(bikeId)}, ${called(names).recheck(recheckId)} was dropped.${remark('Why', why)}`,
  'recheck-answered': ({ recheckId, bikeId, jointId, partId, outcome, words }, names) => {
    const name = called(names);
    const at = jointId ? ` at ${name.joint(jointId)}` : partId ? ` on ${name.part(partId)}` : '';
    const found = outcome === 'finding' ? 'something was found' : 'all was as it should be';
    return `On ${name.bike(bikeId)}, ${name.recheck(recheckId)} was done${at}: ${found}.${remark('Words', words)}`;
  },
  'note-added': ({ words, bikeId, partId, jointId, photoIds }, names) => {
    const name = called(names);
    const about = jointId
      ? name.joint(jointId)
      : partId
        ? name.part(partId)
        : bikeId
          ? name.bike(bikeId)
          : undefined;
    const shown = photoIds?.length ? `, with ${countWords(photoIds.length, 'photo')}` : '';
    return `Note${about ? ` about ${about}` : ''}${shown}.${remark('Words', words)}`;
  },
};

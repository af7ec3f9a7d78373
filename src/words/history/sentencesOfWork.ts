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
    `Step added on ${called(names).bike(bikeId)}: ${title}.${remark('Detail', detail)}`,
  'step-described': ({ stepId, bikeId, title, detail }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).step(stepId)} edited${title === undefined ? '' : `, now “${title}”`}.${remark('Detail', detail)}`,
  'step-moved': ({ stepId, bikeId }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).step(stepId)} moved in the plan.`,
  'step-dropped': ({ stepId, bikeId, why, splitInto }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).step(stepId)} removed${splitInto?.length ? `, split into ${countWords(splitInto.length, 'step')}` : ''}.${remark('Why', why)}`,
  'step-skipped': ({ stepId, bikeId, why, jointId }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).step(stepId)} skipped${jointId ? `, ${called(names).joint(jointId)}` : ''}.${remark('Why', why)}`,
  'step-reopened': ({ stepId, bikeId, why }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).step(stepId)} opened again.${remark('Why', why)}`,
  'step-opened': ({ stepId, bikeId }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).step(stepId)} started.`,
  'step-done': ({ stepId, bikeId, measured, despite, note }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).step(stepId)} done${measured ? `, measured ${quantityWords(measured)}` : ''}.${remark('Loaded before the bond had set', despite)}${remark('Note', note)}`,
  'wait-started': ({ bikeId, jointId, kind, title, waitMs }, names) =>
    `${called(names).bike(bikeId)}${jointId ? `, ${called(names).joint(jointId)}` : ''}: timer started for ${spanInWords(waitMs)}, ${waitKindWords[kind]}: ${title}.`,
  'wait-ended': ({ waitId, bikeId, outcome, words }, names) => {
    const ended = {
      looked: 'finished and checked',
      'cut-short': 'ended early',
      'no-longer-needed': 'ended, no longer needed',
    }[outcome];
    return `${called(names).bike(bikeId)}: ${called(names).wait(waitId)} ${ended}.${remark('Seen', words)}`;
  },
  'wait-changed': ({ waitId, bikeId, waitMs, why }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).wait(waitId)} set to ${spanInWords(waitMs)} in all.${remark('Why', why)}`,
  'clock-moved': ({ bikeId, waitId, byMs }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).wait(waitId)} shifted with the phone’s clock, which was set ${byMs < 0 ? 'back' : 'forward'} by ${spanInWords(Math.abs(byMs))}.`,
  'tool-added': ({ name, minNm, maxNm, lastCheckMs, zone, note }) =>
    `Tool added: ${name}${maxNm === undefined ? '' : `, ${minNm === undefined ? 'up to' : `${numberWords(minNm)} to`} ${numberWords(maxNm)} N·m`}${lastCheckMs === undefined ? ', never checked' : `, last checked ${dayWords(lastCheckMs, zone)}`}.${remark('Note', note)}`,
  'tool-described': ({ toolId, name, lastCheckMs, droppedAtMs, zone, note, cleared }, names) => {
    const changes = [
      ...(name === undefined ? [] : [`now called ${name}`]),
      ...(lastCheckMs === undefined ? [] : [`checked ${dayWords(lastCheckMs, zone)}`]),
      ...(droppedAtMs ? [`dropped ${dayWords(droppedAtMs, zone)}`] : []),
    ];
    return `${called(names).tool(toolId)} edited${changes.length > 0 ? `: ${listWords(changes)}` : ''}.${remark('Note', note)}${clearedWords(cleared)}`;
  },
  'tool-put-away': ({ toolId, why }, names) => `${called(names).tool(toolId)} archived.${remark('Why', why)}`,
  'tool-found-out': ({ toolId, why }, names) =>
    `${called(names).tool(toolId)} found out of calibration; the joints tightened with it since its last check need a re-check.${remark('Found', why)}`,
  'recheck-set': (entry, names) =>
    `Re-check set on ${called(names).bike(entry.bikeId)}, due ${dueText(entry)}: ${entry.title}.${remark('What to do', entry.instruction)}`,
  'recheck-changed': (entry, names) =>
    `${called(names).bike(entry.bikeId)}: ${called(names).recheck(entry.recheckId)} postponed, now due ${dueText(entry)}.${remark('Why', entry.why)}`,
  'recheck-dropped': ({ recheckId, bikeId, why }, names) =>
    `${called(names).bike(bikeId)}: ${called(names).recheck(recheckId)} removed.${remark('Why', why)}`,
  'recheck-answered': ({ recheckId, bikeId, jointId, partId, outcome, words }, names) => {
    const name = called(names);
    const at = jointId ? ` at ${name.joint(jointId)}` : partId ? ` on ${name.part(partId)}` : '';
    const found = outcome === 'finding' ? 'problem found' : 'OK';
    return `${name.bike(bikeId)}: ${name.recheck(recheckId)} done${at}: ${found}.${remark('Words', words)}`;
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

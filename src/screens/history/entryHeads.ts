import type { IconName } from '../../controls/Icon.tsx';
import type { EntryType } from '../../journal/entries.ts';

/** What work an entry is about; the filter of the history. */
export type EntryGroup = 'joints' | 'parts' | 'waits' | 'riding' | 'list' | 'notes';

export const groupLabels: Record<EntryGroup, string> = {
  joints: 'Joints and torques',
  parts: 'Parts',
  waits: 'Timers and re-checks',
  riding: 'Rides, checks, releases',
  list: 'Plan steps',
  notes: 'Notes, corrections, tools',
};

interface EntryTitle {
  word: string;
  icon: IconName;
  group: EntryGroup;
}

const head = (group: EntryGroup, icon: IconName, word: string): EntryTitle => ({ word, icon, group });

/** A word and a drawing for each type of entry, so that the eye finds its way down a page. */
export const entryHeads: Record<EntryType, EntryTitle> = {
  'bike-started': head('riding', 'bike', 'Bike created'),
  'bike-described': head('riding', 'bike', 'Bike edited'),
  'bike-put-away': head('riding', 'bike', 'Bike archived'),
  'bike-taken-out': head('riding', 'bike', 'Bike brought back'),
  'part-added': head('parts', 'part', 'New part'),
  'part-described': head('parts', 'part', 'Part edited'),
  'part-moved': head('parts', 'part', 'Part moved'),
  'part-changed': head('parts', 'saw', 'Permanent change'),
  'joint-made': head('joints', 'bolt', 'New joint'),
  'joint-described': head('joints', 'bolt', 'Joint edited'),
  'joint-taken-apart': head('joints', 'bolt', 'Taken apart'),
  'step-added': head('list', 'note', 'New step'),
  'step-described': head('list', 'note', 'Step edited'),
  'step-moved': head('list', 'note', 'Step moved'),
  'step-dropped': head('list', 'note', 'Step removed'),
  'step-skipped': head('list', 'ring', 'Step skipped'),
  'step-reopened': head('list', 'ring', 'Step opened again'),
  'step-opened': head('list', 'note', 'Step started'),
  'step-done': head('list', 'check', 'Step done'),
  'torque-applied': head('joints', 'spanner', 'Torque'),
  'hand-tightened': head('joints', 'handTight', 'Hand-tight'),
  'locker-applied': head('joints', 'drop', 'Threadlocker'),
  'wait-started': head('waits', 'hourglass', 'Timer started'),
  'wait-ended': head('waits', 'hourglass', 'Timer ended'),
  'wait-changed': head('waits', 'hourglass', 'Timer changed'),
  'clock-moved': head('waits', 'clock', 'Clock moved'),
  'seal-marked': head('joints', 'tyre', 'Tyre'),
  'wheel-made': head('parts', 'part', 'New wheel'),
  'wheel-described': head('parts', 'part', 'Wheel edited'),
  'wheel-read': head('joints', 'spanner', 'Wheel measured'),
  'wheel-taken-apart': head('parts', 'part', 'Wheel taken apart'),
  'tool-added': head('notes', 'settings', 'New tool'),
  'tool-described': head('notes', 'settings', 'Tool edited'),
  'tool-put-away': head('notes', 'settings', 'Tool archived'),
  'tool-found-out': head('notes', 'warning', 'Tool out of calibration'),
  'defect-found': head('riding', 'warning', 'Problem'),
  'defect-closed': head('riding', 'check', 'Problem fixed'),
  'ride-check-confirmed': head('riding', 'lookup', 'Pre-ride check'),
  'bike-released': head('riding', 'flag', 'Release'),
  'release-withdrawn': head('riding', 'stop', 'Release withdrawn'),
  'ride-logged': head('riding', 'bike', 'Ride'),
  'recheck-set': head('waits', 'bell', 'Re-check set'),
  'recheck-changed': head('waits', 'bell', 'Re-check postponed'),
  'recheck-dropped': head('waits', 'bell', 'Re-check removed'),
  'torque-found': head('joints', 'spanner', 'Torque re-checked'),
  'recheck-answered': head('waits', 'lookup', 'Re-check done'),
  'note-added': head('notes', 'note', 'Note'),
  'finding-accepted': head('riding', 'ruler', 'Fit accepted'),
  'finding-noted': head('riding', 'ruler', 'Fit noted'),
  'entry-corrected': head('notes', 'undo', 'Correction'),
  'demo-removed': head('notes', 'erase', 'Demo removed'),
  'settings-changed': head('notes', 'settings', 'Settings'),
};

/** A line that a newer version of the app has written. */
const unknownHead = head('notes', 'note', 'Entry of a newer version');

/** Whether this version knows the kind of an entry. @example isKnownKind('constructor') //=> false */
export const isKnownKind = (type: string): boolean => Object.hasOwn(entryHeads, type);

/**
 * The word and the drawing of an entry; a kind this version does not know has words too.
 * @example entryHead('bike-started').word //=> entryHeads['bike-started'].word
 */
export const entryHead = (type: string): EntryTitle =>
  isKnownKind(type) ? entryHeads[type as EntryType] : unknownHead;

import * as about from '../checks/about.ts';
import { amount, either, exactly, flag, maybe, reason, record, text } from '../checks/field.ts';
import type { EntryOf } from '../entries.ts';
import { FIRST_SETTINGS } from '../firstSettings.ts';
import { anId, fixed, grows, type Kind, perhapsId, remarkField } from './kind.ts';

export const noteAdded: Kind<'note-added'> = {
  fields: {
    ...{ noteId: anId, words: remarkField(text) },
    ...{ bikeId: perhapsId, partId: perhapsId, jointId: perhapsId, stepId: perhapsId },
    photoIds: remarkField(about.photoIds),
  },
  facts: [],
};

/** What a correction says is checked with the fields of the entry that it corrects. */
export const entryCorrected: Kind<'entry-corrected'> = {
  fields: {
    corrects: anId,
    reason: fixed(reason),
    undo: fixed(flag),
    becomes: fixed(
      either(
        exactly(null),
        record(
          () => undefined,
          () => undefined,
          60,
        ),
      ),
    ),
    bikeId: perhapsId,
    matters: fixed(maybe(flag)),
  },
  facts: [],
  stands: true,
};

export const settingsChanged: Kind<'settings-changed'> = {
  fields: { change: fixed(about.settings) },
  facts: [
    grows<EntryOf<'settings-changed'>, 'settings'>(
      'settings',
      () => 'app',
      (row, { change }) => ({ settings: { ...FIRST_SETTINGS, ...row?.settings, ...change } }),
    ),
  ],
  stands: true,
};

/** The demo's own lines were taken out; this one stands in their place. */
export const demoRemoved: Kind<'demo-removed'> = {
  fields: { lines: fixed(amount(0, 1e9)) },
  facts: [],
  stands: true,
};

import * as about from '../checks/about.ts';
import { amount, either, exactly, instant, maybe, name } from '../checks/field.ts';
import type { EntryOf, ToolAbout } from '../entries.ts';
import { checkToolRange } from '../guards.ts';
import { described, pick } from './described.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  type Field,
  fixed,
  itsNote,
  itsReason,
  type Kind,
} from './kind.ts';

/** A torque tool and how far it can be trusted. */
const tool = ({ toolId }: { toolId: string }) => toolId;

const MAY_BE_KNOWN = {
  minNm: correctable(maybe(about.toolNm)),
  maxNm: correctable(maybe(about.toolNm)),
  tolerancePercent: correctable(maybe(amount(0, 100))),
  lastCheckMs: correctable(maybe(instant)),
  checkBasis: correctable(maybe(about.checkBasis)),
  checkEveryDays: correctable(maybe(amount(0, 3660, { above: true }))),
  droppedAtMs: correctable(maybe(either(exactly(null), instant))),
  note: itsNote,
  toolClass: correctable(maybe(about.toolClass)),
  cyclesSinceCheck: correctable(maybe(amount(0, 10_000_000))),
  lever: correctable(about.lever),
} satisfies Record<Exclude<keyof ToolAbout, 'name'>, Field>;
const FIELDS = ['name', ...Object.keys(MAY_BE_KNOWN)] as (keyof ToolAbout)[];

export const toolAdded: Kind<'tool-added'> = {
  fields: { toolId: anId, name: correctable(name), ...MAY_BE_KNOWN },
  facts: [
    begins<EntryOf<'tool-added'>, 'tool'>('tool', tool, (entry) => ({
      ...(pick(entry as ToolAbout, FIELDS) as ToolAbout),
      group: 'tool',
      toolId: entry.toolId,
    })),
  ],
  guard: (_rows, entry) => checkToolRange(undefined, entry),
};

export const toolDescribed: Kind<'tool-described'> = {
  fields: {
    toolId: anId,
    cleared: fixed(maybe(about.fieldNames)),
    name: correctable(maybe(name)),
    ...MAY_BE_KNOWN,
  },
  facts: [
    changes<EntryOf<'tool-described'>, 'tool'>('tool', tool, (row, entry) =>
      described<ToolAbout, typeof row>(row, entry, FIELDS),
    ),
  ],
  guard: (rows, entry) => checkToolRange(rows.get('tool', entry.toolId), entry),
};

export const toolPutAway: Kind<'tool-put-away'> = {
  fields: { toolId: anId, why: itsReason },
  facts: [
    changes<EntryOf<'tool-put-away'>, 'tool'>('tool', tool, (row, { why }) => ({
      ...row,
      putAway: why,
      group: 'tool-away',
    })),
  ],
};

export const toolFoundOut: Kind<'tool-found-out'> = {
  fields: { toolId: anId, why: itsReason },
  facts: [
    changes<EntryOf<'tool-found-out'>, 'tool'>('tool', tool, (row, { why, happenedAtMs }) => ({
      ...row,
      foundOut: { atMs: happenedAtMs, why },
    })),
  ],
};

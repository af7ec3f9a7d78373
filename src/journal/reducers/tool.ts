import type { Entry, ToolAbout } from '../entries.ts';
import type { ToolRow } from '../rows.ts';
import { described, pick } from './described.ts';

const ABOUT: (keyof ToolAbout)[] = [
  'name',
  'minNm',
  'maxNm',
  'tolerancePercent',
  'lastCheckMs',
  'checkBasis',
  'checkEveryDays',
  'droppedAtMs',
  'note',
  'toolClass',
  'cyclesSinceCheck',
  'lever',
];

/** A torque tool and how far it can be trusted. */
export function reduceTool(row: ToolRow | undefined, entry: Entry): ToolRow | undefined {
  if (entry.type === 'tool-added') {
    return {
      ...(pick(entry as ToolAbout, ABOUT) as ToolAbout),
      key: `tool/${entry.toolId}`,
      is: 'tool',
      group: 'tool',
      toolId: entry.toolId,
      lastMs: entry.happenedAtMs,
    };
  }
  if (!row) return undefined;
  if (entry.type === 'tool-described') return described<ToolAbout, ToolRow>(row, entry, ABOUT);
  if (entry.type === 'tool-found-out')
    return { ...row, foundOut: { atMs: entry.happenedAtMs, why: entry.why } };
  if (entry.type === 'tool-put-away') return { ...row, putAway: entry.why, group: 'tool-away' };
  return row;
}

import type { CommandOf } from '../commands.ts';
import type { ToolAbout } from '../entries.ts';
import type { Rows } from '../fold.ts';
import { type Circumstances, positive, present, type Ruling, refuse, words } from './ruling.ts';

function checkTool(about: Partial<ToolAbout>): void {
  const { minNm, maxNm } = about;
  if (minNm !== undefined && !(minNm >= 0)) refuse('not-a-number');
  if (maxNm !== undefined) positive(maxNm, 1000);
  if (minNm !== undefined && maxNm !== undefined && minNm >= maxNm)
    refuse('absurd-value', `${minNm}–${maxNm}`);
  if (about.checkEveryDays !== undefined) positive(about.checkEveryDays, 3660);
}

export function addTool(_rows: Rows, command: CommandOf<'add-tool'>, now: Circumstances): Ruling {
  const { type: _type, happenedAtMs: _at, toolId = now.newId(), ...about } = command;
  checkTool(about);
  return [present({ type: 'tool-added', toolId, ...about, name: words(command.name, 'name-missing') })];
}

export function describeTool(rows: Rows, command: CommandOf<'describe-tool'>): Ruling {
  const { type: _type, happenedAtMs: _at, toolId, ...about } = command;
  if (!rows.get('tool', toolId)) refuse('no-such-tool');
  if (about.name !== undefined) words(about.name, 'name-missing');
  checkTool(about);
  return [present({ type: 'tool-described', toolId, ...about })];
}

export function putToolAway(rows: Rows, command: CommandOf<'put-tool-away'>): Ruling {
  if (!rows.get('tool', command.toolId)) refuse('no-such-tool');
  return [{ type: 'tool-put-away', toolId: command.toolId, why: words(command.why, 'reason-missing') }];
}

import type { CommandOf } from '../commands.ts';
import type { EntryBody } from '../entries.ts';
import type { Rows } from '../fold.ts';
import type { JointRow, ToolRow } from '../rows.ts';
import { instructionFor } from './rechecks.ts';
import { type Circumstances, clearing, freshId, present, type Ruling, refuse, words } from './ruling.ts';

export function addTool(rows: Rows, command: CommandOf<'add-tool'>, now: Circumstances): Ruling {
  const { type: _type, happenedAtMs: _at, toolId: given, ...about } = command;
  const toolId = freshId(rows, 'tool', given, now);
  return [present({ type: 'tool-added', toolId, ...about, name: words(command.name, 'name-missing') })];
}

export function describeTool(rows: Rows, command: CommandOf<'describe-tool'>): Ruling {
  const { type: _type, happenedAtMs: _at, toolId, ...about } = command;
  const tool = rows.get('tool', toolId) ?? refuse('no-such-tool');
  if (about.name !== undefined) words(about.name, 'name-missing');
  return [present({ type: 'tool-described', toolId, ...about, ...clearing(tool, about) })];
}

export function putToolAway(rows: Rows, command: CommandOf<'put-tool-away'>): Ruling {
  if (!rows.get('tool', command.toolId)) refuse('no-such-tool');
  return [{ type: 'tool-put-away', toolId: command.toolId, why: words(command.why, 'reason-missing') }];
}

/** Joints that got their last torque from this tool after it was last known to show right, on any bike in use. */
function doneWith(rows: Rows, { toolId, lastCheckMs = Number.NEGATIVE_INFINITY }: ToolRow): JointRow[] {
  return rows
    .group('bike', 'bike')
    .flatMap(({ bikeId }) => rows.group('joint', `joint@${bikeId}`))
    .filter(
      ({ state, applied }) =>
        state === 'torqued' && applied?.tool?.toolId === toolId && applied.atMs > lastCheckMs,
    );
}

/** The tool showed wrong: it is written down, and every joint it was the last on is to be done again, now. */
export function findToolOut(rows: Rows, command: CommandOf<'find-tool-out'>, now: Circumstances): Ruling {
  const tool = rows.get('tool', command.toolId) ?? refuse('no-such-tool');
  const why = words(command.why, 'reason-missing');
  if (tool.foundOut && tool.foundOut.atMs > (tool.lastCheckMs ?? 0)) refuse('nothing-changes');
  const rechecks = doneWith(rows, tool).map((joint): EntryBody => {
    const kind = joint.locked ? ('look-at-mark' as const) : ('retorque' as const);
    const { title, words: instruction } = instructionFor(rows, joint, kind);
    return {
      type: 'recheck-set',
      recheckId: now.newId(),
      bikeId: joint.bikeId,
      jointId: joint.jointId,
      kind,
      title: `${title}, with a tool in calibration`,
      instruction: `Tightened with ${tool.name}, which was found to show wrong: ${why}. ${instruction}`,
      dueRides: 0,
      dueAtMs: command.happenedAtMs ?? now.nowMs,
      turn: 0,
    };
  });
  return [{ type: 'tool-found-out', toolId: tool.toolId, why }, ...rechecks];
}

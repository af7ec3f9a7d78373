import { useMemo } from 'preact/hooks';
import type { Id } from '../../journal/entries.ts';
import type { JointRow, ToolRow } from '../../journal/rows.ts';
import { jointFactsOf } from '../../practice/joint/jointFactsOf.ts';
import { sayingIn } from '../../words/saying.ts';
import { jointWorkings } from '../../workings/joint/jointWorkings.ts';
import type { WorkingLine } from '../../workings/joint/line.ts';
import { useNow, useView } from '../door.tsx';

/** A tool's check does not run out within the hour. */
const HOUR_MS = 3_600_000;

export type JointLinesSeen =
  | { is: 'reading' | 'failed' | 'none' }
  | { is: 'there'; joint: JointRow; lines: WorkingLine[]; tools: ToolRow[]; tool: ToolRow | undefined };

/**
 * The figures of a joint, worked out anew whenever anything about it is written down.
 * @param toolId the tool in the hand; without it, the one it was tightened with
 */
export function useLines(jointId: Id, toolId?: Id): JointLinesSeen {
  const nowMs = useNow(HOUR_MS);
  const seen = useView('joint', { jointId });
  const view = seen.is === 'there' ? seen.value : undefined;
  const bikeParts = useView('parts', { at: view?.joint.bikeId ?? '' });
  const tools = useView('tools');
  const settings = useView('settings');
  const others = [bikeParts, tools, settings];
  const ready = view && bikeParts.is === 'there' && tools.is === 'there' && settings.is === 'there';
  const tool = ready
    ? tools.value.find((each) => each.toolId === (toolId ?? view.joint.applied?.tool?.toolId))
    : undefined;
  const lines = useMemo(
    () =>
      ready
        ? jointWorkings(
            jointFactsOf(view.joint, view.parts, bikeParts.value, tool, nowMs),
            sayingIn(settings.value.torqueUnit),
          )
        : [],
    [view, ready, bikeParts, tools, settings, tool, nowMs],
  );
  if (seen.is === 'failed' || others.some(({ is }) => is === 'failed')) return { is: 'failed' };
  if (seen.is === 'there' && !view) return { is: 'none' };
  if (!ready) return { is: 'reading' };
  return { is: 'there', joint: view.joint, lines, tools: tools.value, tool };
}

import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { ToolRow } from '../../../journal/rows.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { dayText } from '../../../words/dayText.ts';

export interface ToolChoiceSheetProps {
  tools: readonly ToolRow[];
  toolId: string | undefined;
  onTool: (toolId: string | undefined) => void;
  onClose: () => void;
}

const NONE = 'none';

/** What a tool is good for, in a line. */
function toolLine({ minNm, maxNm, lastCheckMs, droppedAtMs }: ToolRow): string {
  const range = maxNm === undefined ? [] : [`${numberText(minNm ?? 0)} to ${numberText(maxNm)} N·m`];
  const dropped = droppedAtMs && droppedAtMs > (lastCheckMs ?? 0);
  const checked = dropped
    ? 'dropped since its last check'
    : lastCheckMs === undefined
      ? 'never checked'
      : `checked ${dayText(lastCheckMs)}`;
  return [...range, checked].join(', ');
}

/** Whether a torque lies outside what a tool can show. */
export function outsideScale({ minNm, maxNm }: ToolRow, nm: number): boolean {
  return (maxNm !== undefined && nm > maxNm) || (minNm !== undefined && nm < minNm);
}

/** Which tool is in the hand. The one chosen stays chosen for the steps that follow. */
export function ToolChoiceSheet({ tools, toolId, onTool, onClose }: ToolChoiceSheetProps) {
  const usable = tools.filter(({ putAway }) => putAway === undefined);
  return (
    <Sheet
      open
      title="Tool in use"
      onClose={onClose}
      actions={
        <Button wide size="greasy" href="#/tools">
          All tools
        </Button>
      }
    >
      {usable.length === 0 ? (
        <Notice kind="empty" title="No tools yet">
          Add your torque wrench under “All tools”. Your bolt count stays.
        </Notice>
      ) : (
        <Choice
          label="It stays chosen for the next steps"
          value={toolId ?? NONE}
          onChoose={(chosen) => {
            onTool(chosen === NONE ? undefined : chosen);
            onClose();
          }}
          options={[
            ...usable.map((tool) => ({ value: tool.toolId, label: tool.name, hint: toolLine(tool) })),
            { value: NONE, label: 'None named', hint: 'By feel, or a tool not listed' },
          ]}
        />
      )}
    </Sheet>
  );
}

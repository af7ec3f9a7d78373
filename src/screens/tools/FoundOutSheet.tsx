import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { EntryOf } from '../../journal/entries.ts';
import type { ToolRow } from '../../journal/rows.ts';
import { AskSheet } from '../bike/sheets/AskSheet.tsx';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';

type SetRecheck = EntryOf<'recheck-set'>;

/** A tool that showed wrong: why, and then the joints it was the last on, each to be done again. */
export function FoundOutSheet({ tool, onClose }: { tool: ToolRow; onClose: () => void }) {
  const { run, save } = useRun();
  const [set, setSet] = useState<SetRecheck[]>();
  if (!set)
    return (
      <AskSheet
        draft={`tool-wrong:${tool.toolId}`}
        title={`Out of calibration: ${tool.name}`}
        label="How it was found out"
        offers={['Checked with a weight on a lever', 'Did not click', 'Calibration report']}
        act="Re-check its joints"
        save={save}
        onWords={async (why) => {
          const command = { type: 'find-tool-out', toolId: tool.toolId, why } as const;
          const entries = await run(command, { undo: `${tool.name} was out of calibration` });
          if (entries) setSet(entries.filter((entry) => entry.type === 'recheck-set'));
          return entries !== undefined;
        }}
        onClose={onClose}
      />
    );
  return (
    <Sheet
      open
      title={set.length === 1 ? 'One joint needs a re-check' : `${set.length} joints need a re-check`}
      onClose={onClose}
      actions={
        <Button wide icon="check" onPress={onClose}>
          Dismiss
        </Button>
      }
    >
      {set.length === 0 ? (
        <p>No joint got its last torque from it since its last good check.</p>
      ) : (
        set.map(({ recheckId, title, bikeId }) => (
          <ListRow
            key={recheckId}
            title={title}
            state="due"
            stateWord="Before the next ride"
            href={hrefOf({ at: 'rechecks', bikeId })}
          />
        ))
      )}
    </Sheet>
  );
}

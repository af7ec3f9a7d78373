import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Choice } from '../../controls/fields/Choice.tsx';
import { DateTimeField } from '../../controls/fields/DateTimeField.tsx';
import { NumberField } from '../../controls/fields/NumberField.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { toolLabels } from '../../drafts/meanwhileLabels.ts';
import {
  changedTool,
  draftOfTool,
  emptyTool,
  type ReadTool,
  readTool,
  type ToolField,
} from '../../drafts/toolDraft.ts';
import type { ToolRow } from '../../journal/rows.ts';
import { type TorqueUnit, unitsOf } from '../../mechanics/units.ts';
import { toolClasses } from '../../standards/screws/toolClasses.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useLogbook, useRun } from '../door.tsx';
import { useEdit } from '../draft.ts';
import { Meanwhile } from '../Meanwhile.tsx';

export interface ToolFormProps {
  /** Set when a tool is edited. */
  tool?: ToolRow | undefined;
  unit: TorqueUnit;
  onClose: () => void;
}

/** What is known of a torque tool: its scale, its class, and when it was last held against something better. */
export function ToolForm({ tool, unit, onClose }: ToolFormProps) {
  const logbook = useLogbook();
  const { run, save } = useRun();
  const { draft, change, clear, meanwhile } = useEdit(
    tool ? `tool:${tool.toolId}` : 'tool:new',
    tool ? draftOfTool(tool, unit) : emptyTool(unit),
  );
  const [trouble, setTrouble] = useState<Extract<ReadTool, { ok: false }>>();
  const wrong = (field: ToolField) => (trouble?.wrong === field ? trouble.sentence : undefined);
  const keep = async () => {
    const read = readTool(draft);
    setTrouble(read.ok ? undefined : read);
    if (!read.ok) return;
    const changed = tool && changedTool(tool, read.about);
    if (!changed || Object.keys(changed).length > 0) {
      const entries = await run(
        changed
          ? { type: 'describe-tool', toolId: tool.toolId, ...changed }
          : { type: 'add-tool', ...read.about },
        { undo: changed ? `${tool.name} changed` : `${read.about.name} added` },
      );
      if (!entries) return;
    }
    clear();
    onClose();
  };
  return (
    <Sheet
      open
      title={tool ? tool.name : 'Add a tool'}
      onClose={onClose}
      actions={
        <Button kind="main" icon="check" disabled={save.is === 'saving'} onPress={keep}>
          {tool ? 'Save' : 'Add it'}
        </Button>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <Meanwhile changed={meanwhile} labels={toolLabels} onTake={change} />
        <TextField label="Name" value={draft.name} onInput={(name) => change({ name })} maxLength={120} />
        <NumberField
          label="Scale from"
          typed={draft.min}
          unit={draft.unit}
          units={unitsOf.torque}
          onTyped={(min, chosen = draft.unit) => change({ min, unit: chosen })}
          error={wrong('min')}
        />
        <NumberField
          label="Scale to"
          hint="Not accurate in the lowest 20 % of its range (ISO 6789, unverified)."
          typed={draft.max}
          unit={draft.unit}
          onTyped={(max) => change({ max })}
          error={wrong('max')}
        />
        <SelectField
          label="Kind of tool"
          options={[
            { value: '', label: 'Not said' },
            ...toolClasses.map((row) => ({ value: row.toolClass, label: row.label })),
          ]}
          value={draft.toolClass}
          onChoose={(toolClass) => change({ toolClass })}
        />
        <NumberField
          label="Square drive to grip mark"
          hint="From the middle of the square to the mark on the grip. Only an extension needs it."
          typed={draft.lever}
          unit="mm"
          onTyped={(lever) => change({ lever })}
          error={wrong('lever')}
        />
        <NumberField
          label="Class, ± per cent"
          hint="As written on its certificate; 4 or 6 is usual."
          typed={draft.tolerance}
          onTyped={(tolerance) => change({ tolerance })}
          error={wrong('tolerance')}
        />
        <DateTimeField
          label="Last checked"
          kind="date"
          atMs={draft.lastCheckMs ?? undefined}
          latestMs={logbook.now()}
          onAt={(atMs) => change({ lastCheckMs: atMs ?? null })}
        />
        <Choice
          label="How checked"
          value={draft.checkBasis}
          onChoose={(checkBasis) => change({ checkBasis })}
          options={[
            { value: 'laboratory', label: 'A laboratory' },
            { value: 'bench-check', label: 'A weight on an arm', hint: 'Checked at the bench' },
            { value: 'unknown', label: 'Unknown' },
          ]}
        />
        <NumberField
          label="Check every, days"
          hint="Default: one year."
          typed={draft.everyDays}
          onTyped={(everyDays) => change({ everyDays })}
          error={wrong('everyDays')}
        />
        <NumberField
          label="Uses since its check"
          hint="Optional; check due after 5000."
          typed={draft.uses}
          onTyped={(uses) => change({ uses })}
          error={wrong('uses')}
        />
        <TextField
          label="Note"
          lines={2}
          value={draft.note}
          onInput={(note) => change({ note })}
          maxLength={500}
        />
      </div>
    </Sheet>
  );
}

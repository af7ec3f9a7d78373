import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { ToolRow } from '../../journal/rows.ts';
import type { TorqueUnit } from '../../mechanics/units.ts';
import { toolState } from '../../planning/toolState.ts';
import { dayText } from '../../words/dayText.ts';
import { toolStateWords } from '../../words/history/tradeWords.ts';
import { scaleText } from '../../words/scaleText.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { AskSheet } from '../bike/sheets/AskSheet.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useLogbook, useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { FoundOutSheet } from './FoundOutSheet.tsx';
import { ToolForm } from './ToolForm.tsx';

const bases = {
  laboratory: 'by a laboratory',
  'bench-check': 'at the bench',
  unknown: 'method unknown',
} as const;

export interface ToolSheetProps {
  tool: ToolRow;
  unit: TorqueUnit;
  onClose: () => void;
}

/** One tool: what is known of it, and what happens to tools. */
export function ToolSheet({ tool, unit, onClose }: ToolSheetProps) {
  const logbook = useLogbook();
  const { run, save, clear } = useRun();
  const [asks, setAsks] = useState<'edit' | 'away' | 'found-out'>();
  const {
    toolId,
    name,
    tolerancePercent,
    lastCheckMs,
    checkBasis = 'unknown',
    checkEveryDays = 365,
    note,
  } = tool;
  const nowMs = logbook.now();
  const state = toolState(tool, nowMs);
  if (asks === 'edit') return <ToolForm tool={tool} unit={unit} onClose={() => setAsks(undefined)} />;
  if (asks === 'away') {
    return (
      <AskSheet
        draft={`tool-away:${toolId}`}
        title={`Archive: ${name}`}
        label="Why"
        offers={['Broken', 'Lost', 'Given away']}
        act="Put it away"
        save={save}
        onWords={async (why) => {
          const entries = await run({ type: 'put-tool-away', toolId, why }, { undo: `${name} archived` });
          if (entries) onClose();
          return entries !== undefined;
        }}
        onClose={() => {
          clear();
          setAsks(undefined);
        }}
      />
    );
  }
  if (asks === 'found-out') return <FoundOutSheet tool={tool} onClose={() => setAsks(undefined)} />;
  const wrongSince = tool.foundOut && tool.foundOut.atMs > (lastCheckMs ?? 0) ? tool.foundOut : undefined;
  const dropped = () =>
    run({ type: 'describe-tool', toolId, droppedAtMs: nowMs }, { undo: `${name}: dropped today` });
  const checked = () =>
    run(
      { type: 'describe-tool', toolId, lastCheckMs: nowMs, checkBasis: 'bench-check', droppedAtMs: null },
      { undo: `${name}: checked today` },
    );
  return (
    <Sheet open title={name} onClose={onClose}>
      <div class="stack">
        <SaveNotice save={save} />
        <p>
          {scaleText(tool, unit)}
          {tolerancePercent !== undefined && `, ±${tolerancePercent} %`}
        </p>
        <p>
          <b>{sentenceCase(toolStateWords[state])}</b>
          {lastCheckMs !== undefined &&
            `. Last check ${dayText(lastCheckMs)}, ${bases[checkBasis]}; every ${checkEveryDays} days.`}
        </p>
        {note && <p>{note}</p>}
        {wrongSince && (
          <Notice kind="caution" title={`Found out of calibration on ${dayText(wrongSince.atMs)}`}>
            {wrongSince.why}
          </Notice>
        )}
        {state === 'dropped' && (
          <Notice kind="caution" title="It fell after its last check">
            It may read differently since. What it tightened before is not affected.
          </Notice>
        )}
        <Button wide icon="warning" under="Until it is checked again" onPress={dropped}>
          Dropped today
        </Button>
        <Button wide icon="scale" under="With a weight on an arm" onPress={checked}>
          Checked at the bench today
        </Button>
        {!wrongSince && (
          <Button wide icon="stop" under="Its joints get a re-check" onPress={() => setAsks('found-out')}>
            Out of calibration
          </Button>
        )}
        <Button wide icon="pencil" onPress={() => setAsks('edit')}>
          Edit
        </Button>
        <Button wide icon="clock" href={hrefOf({ at: 'history', place: `t:${toolId}` })}>
          What it tightened
        </Button>
        <Button wide icon="cross" onPress={() => setAsks('away')}>
          Put it away
        </Button>
      </div>
    </Sheet>
  );
}

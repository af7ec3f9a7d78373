import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import type { MarkState } from '../../controls/figures/Mark.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { RowList } from '../../controls/lists/RowList.tsx';
import type { Id, ToolSnapshot } from '../../journal/entries.ts';
import type { ToolRow } from '../../journal/rows.ts';
import type { TorqueUnit } from '../../mechanics/units.ts';
import { toolState } from '../../planning/toolState.ts';
import { dayText } from '../../words/dayText.ts';
import { toolStateWords } from '../../words/history/tradeWords.ts';
import { scaleText } from '../../words/scaleText.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { useLogbook, useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { ToolForm } from './ToolForm.tsx';
import { ToolSheet } from './ToolSheet.tsx';

const marks: Record<ToolSnapshot['state'], MarkState> = {
  checked: 'done',
  'check-overdue': 'due',
  'never-checked': 'open',
  dropped: 'held',
};

interface LineProps {
  tool: ToolRow;
  unit: TorqueUnit;
  nowMs: number;
  onPress: () => void;
}

function ToolLine({ tool, unit, nowMs, onPress }: LineProps) {
  const state = toolState(tool, nowMs);
  const on = tool.lastCheckMs === undefined || state === 'dropped' ? '' : ` ${dayText(tool.lastCheckMs)}`;
  return (
    <ListRow
      title={tool.name}
      detail={scaleText(tool, unit)}
      state={marks[state]}
      stateWord={state === 'checked' ? `Checked${on}` : sentenceCase(toolStateWords[state])}
      onPress={onPress}
    />
  );
}

/** The torque tools of the workshop. Each torque keeps the tool as it was that day. */
export function Tools() {
  const logbook = useLogbook();
  const seen = useView('tools');
  const settings = useView('settings');
  const [shown, setShown] = useState<'new' | Id>();
  const unit = settings.is === 'there' ? settings.value.torqueUnit : 'N.m';
  const tools = seen.is === 'there' ? seen.value : [];
  const inUse = tools.filter(({ putAway }) => putAway === undefined);
  const away = tools.filter(({ putAway }) => putAway !== undefined);
  const opened = tools.find(({ toolId }) => toolId === shown);
  return (
    <Screen
      title="Tools"
      back={hrefOf({ at: 'home' })}
      waits={<Waits />}
      actions={
        <Button kind="main" icon="plus" onPress={() => setShown('new')}>
          Add a tool
        </Button>
      }
    >
      {seen.is === 'failed' && (
        <Notice kind="error" title="The tools could not be read">
          Reload the page. What is recorded is safe.
        </Notice>
      )}
      {seen.is === 'there' && tools.length === 0 && (
        <Notice kind="empty" title="No tool yet">
          Add your torque tools, their range and last calibration. Not required to log a torque.
        </Notice>
      )}
      <RowList
        label="Tools"
        of={inUse}
        keyOf={({ toolId }) => toolId}
        draw={(tool) => (
          <ToolLine tool={tool} unit={unit} nowMs={logbook.now()} onPress={() => setShown(tool.toolId)} />
        )}
      />
      {away.length > 0 && (
        <Fold label="Archived" end={away.length}>
          {away.map(({ toolId, name, putAway }) => (
            <ListRow
              key={toolId}
              title={name}
              detail={putAway}
              href={hrefOf({ at: 'history', place: `t:${toolId}` })}
            />
          ))}
        </Fold>
      )}
      <Ruler label="Also here" />
      <ListRow
        icon="scale"
        title="Calculators"
        detail="Preload, clamp slip, curing, spokes, gears"
        href={hrefOf({ at: 'workings', jointId: 'all' })}
      />
      {shown === 'new' && <ToolForm unit={unit} onClose={() => setShown(undefined)} />}
      {opened && <ToolSheet tool={opened} unit={unit} onClose={() => setShown(undefined)} />}
    </Screen>
  );
}

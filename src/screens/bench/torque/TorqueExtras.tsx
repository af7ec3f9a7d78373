import { useState } from 'preact/hooks';
import { Tile } from '../../../controls/Tile.tsx';
import type { JointRow } from '../../../journal/rows.ts';
import { type TorqueUnit, type Typed, torqueNm } from '../../../mechanics/units.ts';
import { useLogbook } from '../../door.tsx';
import { FiguresSheet } from '../../workings/FiguresSheet.tsx';
import { LockerSheet } from '../locker/LockerSheet.tsx';
import type { StepProps } from '../stepProps.ts';
import type { Gathered } from '../useStepDraft.ts';
import { BetweenSheet, betweenWord } from './BetweenSheet.tsx';
import { Extras } from './Extras.tsx';
import { outsideScale, ToolChoiceSheet } from './ToolChoiceSheet.tsx';

export interface TorqueExtrasProps extends StepProps {
  joint: JointRow;
  gathered: Gathered;
  /** The most that is asked for. */
  nm: Typed<TorqueUnit> | undefined;
}

/** What goes with a torque: the tool, what is on the threads, the mark of paint. What is chosen stands on its tile. */
export function TorqueExtras(props: TorqueExtrasProps) {
  const { view, step, joint, settings, onTool, onLogged, gathered, nm } = props;
  const { draft, change } = gathered;
  const logbook = useLogbook();
  const [open, setOpen] = useState<'tool' | 'between' | 'locker' | 'figures'>();
  const close = () => setOpen(undefined);
  const tool = view.tools.find(({ toolId }) => toolId === draft.toolId);
  const outside = tool && nm ? outsideScale(tool, torqueNm(nm.value, nm.unit)) : false;
  const cure = view.waits.find(
    ({ waitId, endedAtMs }) => waitId === joint.locked?.waitId && endedAtMs === undefined,
  );
  const cured = (cure?.dueAtMs ?? 0) <= logbook.now();
  return (
    <>
      {outside && (
        <p class="loud" role="status">
          {tool?.name}: this torque is outside its range. Use another tool.
        </p>
      )}
      <Extras {...{ step, joint, onLogged, gathered }}>
        <Tile icon="spanner" onPress={() => setOpen('tool')} value={tool?.name} loud={outside}>
          Tool
        </Tile>
        <Tile
          icon="drop"
          onPress={() => setOpen('locker')}
          value={cure && (cured ? 'On, cured' : 'On, curing')}
        >
          {'Thread\u00adlocker'}
        </Tile>
        <Tile
          icon="file"
          onPress={() => setOpen('between')}
          value={draft.between && betweenWord(draft.between)}
        >
          On threads
        </Tile>
        <Tile icon="pencil" pressed={draft.marked} onPress={() => change({ marked: !draft.marked })}>
          Paint mark
        </Tile>
        <Tile icon="scale" onPress={() => setOpen('figures')}>
          Calculated
        </Tile>
      </Extras>
      {open === 'tool' && (
        <ToolChoiceSheet
          tools={view.tools}
          toolId={draft.toolId}
          onTool={(toolId) => {
            change({ toolId });
            onTool(toolId);
          }}
          onClose={close}
        />
      )}
      {open === 'between' && (
        <BetweenSheet between={draft.between} onBetween={(between) => change({ between })} onClose={close} />
      )}
      {open === 'figures' && <FiguresSheet jointId={joint.jointId} toolId={draft.toolId} onClose={close} />}
      {open === 'locker' && (
        <LockerSheet
          {...{ step, joint, gathered }}
          temperatureUnit={settings.temperatureUnit}
          onPut={() => {
            change({ between: 'threadlocker' });
            close();
          }}
          onClose={close}
        />
      )}
    </>
  );
}

import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { BigNumber } from '../../controls/figures/BigNumber.tsx';
import { Tile } from '../../controls/Tile.tsx';
import type { JointRow } from '../../journal/rows.ts';
import { unitLabel } from '../../mechanics/units.ts';
import { rulingTarget } from '../../planning/rulingTarget.ts';
import { pullToApplied } from '../../practice/rechecks/pullTo.ts';
import { targetFigureText } from '../../words/targetWords.ts';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { LeftHand } from '../bench/LeftHand.tsx';
import { useSteadyTap } from '../bench/steadyTap.ts';
import { TargetTorque } from '../bench/torque/TargetTorque.tsx';
import { ToolChoiceSheet } from '../bench/torque/ToolChoiceSheet.tsx';
import { useStepDraft } from '../bench/useStepDraft.ts';
import { useRun, useView } from '../door.tsx';
import { AppliedAndFound } from './AppliedAndFound.tsx';
import { Moved } from './Moved.tsx';
import { RecheckFrame } from './RecheckFrame.tsx';
import type { RecheckProps } from './recheckProps.ts';

/** A pull towards the target, or for want of one to what was applied: it held, or moved, at what torque and how far. */
export function TorqueCheck(props: RecheckProps & { joint: JointRow }) {
  const { recheck, joint, settings, toolId, onTool, onAnswered } = props;
  const { recheckId } = recheck;
  const { jointId, name } = joint;
  const [open, setOpen] = useState<'moved' | 'tool'>();
  const gathered = useStepDraft(`recheck-${recheckId}`, toolId);
  const { run, save } = useRun();
  const steady = useSteadyTap();
  const seen = useView('joint', { jointId });
  const parts = (seen.is === 'there' && seen.value?.parts) || [];
  const known = useView('tools');
  const tools = known.is === 'there' ? known.value : [];
  const ruling = rulingTarget(joint.targets);
  // Without a target the wrench is set to what was applied: then that is the figure to read from afar.
  const pulled = pullToApplied(joint);
  const tool = tools.find((one) => one.toolId === toolId);
  const held = steady(async () => {
    if (save.is === 'saving') return;
    const entries = await run(
      {
        type: 'find-torque',
        ...{ jointId, recheckId },
        outcome: 'held',
        way: 'tightening',
        ...(toolId ? { toolId } : {}),
        ...gathered.noteAndPhotos(),
      },
      { photos: gathered.photos, undo: `OK: ${name}` },
    );
    if (!entries) return;
    gathered.clear();
    onAnswered(entries);
  });
  if (open === 'moved') return <Moved {...props} gathered={gathered} onClose={() => setOpen(undefined)} />;
  return (
    <RecheckFrame
      {...props}
      figure={
        pulled ? (
          <BigNumber
            label="Applied"
            value={targetFigureText({ torque: pulled })}
            unit={unitLabel[pulled.unit]}
            source={ruling.ok ? 'What was applied, within the range.' : 'No target, no source.'}
          />
        ) : (
          <TargetTorque ruling={ruling} parts={parts} torqueUnit={settings.torqueUnit} />
        )
      }
      tiles={
        <Tile icon="spanner" onPress={() => setOpen('tool')} value={tool?.name}>
          Tool
        </Tile>
      }
      actions={
        <BenchActs
          save={save}
          main={
            <Button
              kind="main"
              size="greasy"
              icon="check"
              under={
                ruling.ok && !pulled
                  ? 'Reached target, no movement'
                  : 'What was applied came without any movement'
              }
              onPress={held}
            >
              OK
            </Button>
          }
        >
          <Button size="greasy" icon="warning" onPress={() => setOpen('moved')}>
            It moved
          </Button>
        </BenchActs>
      }
    >
      <LeftHand joint={joint} />
      <AppliedAndFound joint={joint} unit={settings.torqueUnit} />
      {open === 'tool' && (
        <ToolChoiceSheet tools={tools} toolId={toolId} onTool={onTool} onClose={() => setOpen(undefined)} />
      )}
    </RecheckFrame>
  );
}

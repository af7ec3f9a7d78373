import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Tile } from '../../controls/Tile.tsx';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { useSteadyTap } from '../bench/steadyTap.ts';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { WheelTile } from '../wheel/WheelTile.tsx';
import { RecheckFrame } from './RecheckFrame.tsx';
import { RecheckProblemSheet } from './RecheckProblemSheet.tsx';
import type { RecheckProps } from './recheckProps.ts';

const BY_HAND = 'Checked by hand; no figure is known';

/**
 * A re-check by hand, ear and eye: as it should be, or a finding in words.
 * @param props.byHand a bolt without a figure: it is checked by hand and logged as such
 */
export function LookCheck(props: RecheckProps & { byHand?: true }) {
  const { view, recheck, joint, settings, onAnswered, byHand } = props;
  const { recheckId, title, kind } = recheck;
  const [finding, setFinding] = useState(false);
  const { run, save } = useRun();
  const steady = useSteadyTap();
  const fine = steady(async () => {
    if (save.is === 'saving') return;
    const entries = await run(
      {
        ...{ type: 'answer-recheck', recheckId, outcome: 'as-it-should' },
        ...(byHand ? { words: BY_HAND } : {}),
      },
      { undo: byHand ? `Tight by hand: ${joint?.name ?? title}` : `OK: ${title}` },
    );
    if (entries) onAnswered(entries);
  });
  return (
    <RecheckFrame
      {...props}
      tiles={
        joint &&
        (kind === 'spokes' ? (
          <WheelTile bikeId={joint.bikeId} partIds={joint.partIds} />
        ) : byHand ? (
          <Tile icon="pencil" href={hrefOf({ at: 'edit-joint', jointId: joint.jointId })}>
            Add a target
          </Tile>
        ) : (
          kind === 'seal' && (
            <Tile icon="tyre" href={hrefOf({ at: 'seal', jointId: joint.jointId })}>
              Go to the seal
            </Tile>
          )
        ))
      }
      actions={
        <BenchActs
          save={save}
          main={
            <Button
              kind="main"
              size="greasy"
              icon="check"
              under={byHand && 'No figure is known; this is no torque'}
              onPress={fine}
            >
              {byHand ? 'Tight by hand' : 'OK'}
            </Button>
          }
        >
          <Button size="greasy" icon="warning" onPress={() => setFinding(true)}>
            Problem
          </Button>
        </BenchActs>
      }
    >
      {finding && (
        <RecheckProblemSheet
          {...{ recheck, joint }}
          joints={view.joints}
          unit={settings.distanceUnit}
          onAnswered={onAnswered}
          onClose={() => setFinding(false)}
        />
      )}
    </RecheckFrame>
  );
}

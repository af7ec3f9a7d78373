import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Acts } from '../bench/Acts.tsx';
import { useSteadyTap } from '../bench/steadyTap.ts';
import { Tile } from '../bench/Tile.tsx';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { FindingSheet } from './FindingSheet.tsx';
import { RecheckFrame } from './RecheckFrame.tsx';
import type { RecheckProps } from './recheckProps.ts';

/** A re-check by hand, ear and eye: as it should be, or a finding in words. */
export function LookCheck(props: RecheckProps) {
  const { view, recheck, joint, settings, onAnswered } = props;
  const { recheckId, title, kind } = recheck;
  const [finding, setFinding] = useState(false);
  const { run, save } = useRun();
  const steady = useSteadyTap();
  const fine = steady(async () => {
    if (save.is === 'saving') return;
    const entries = await run(
      { type: 'answer-recheck', recheckId, outcome: 'as-it-should' },
      { undo: `As it should be: ${title}` },
    );
    if (entries) onAnswered(entries);
  });
  return (
    <RecheckFrame
      {...props}
      tiles={
        kind === 'seal' &&
        joint && (
          <Tile icon="tyre" href={hrefOf({ at: 'seal', jointId: joint.jointId })}>
            Read it here
          </Tile>
        )
      }
      actions={
        <Acts
          save={save}
          main={
            <Button kind="main" size="greasy" icon="check" onPress={fine}>
              As it should be
            </Button>
          }
        >
          <Button size="greasy" icon="warning" onPress={() => setFinding(true)}>
            Finding
          </Button>
        </Acts>
      }
    >
      {finding && (
        <FindingSheet
          {...{ recheck, joint }}
          joints={view.joints}
          kmSoFar={view.rides?.km ?? 0}
          unit={settings.distanceUnit}
          onAnswered={onAnswered}
          onClose={() => setFinding(false)}
        />
      )}
    </RecheckFrame>
  );
}

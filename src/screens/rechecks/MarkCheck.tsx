import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { Icon } from '../../controls/Icon.tsx';
import { Tile } from '../../controls/Tile.tsx';
import type { Entry } from '../../journal/entries.ts';
import type { JointRow } from '../../journal/rows.ts';
import { keepsMoving, movedAgain } from '../../practice/rechecks/movedAdvice.ts';
import { pickPicture } from '../../sensing/pickPicture.ts';
import { dayText } from '../../words/dayText.ts';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { useSteadyTap } from '../bench/steadyTap.ts';
import { useStepDraft } from '../bench/useStepDraft.ts';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { AppliedAndFound } from './AppliedAndFound.tsx';
import { RecheckFrame } from './RecheckFrame.tsx';
import type { RecheckProps } from './recheckProps.ts';

/** A joint with threadlocker in it: the eye looks at the mark, the wrench stays away. */
export function MarkCheck(props: RecheckProps & { joint: JointRow }) {
  const { recheck, joint, settings, onAnswered } = props;
  const { recheckId } = recheck;
  const { jointId, name, locked, applied } = joint;
  const gathered = useStepDraft(`recheck-${recheckId}`, undefined);
  const [moved, setMoved] = useState<Entry[]>();
  const [asking, setAsking] = useState(false);
  const { run, save } = useRun();
  const steady = useSteadyTap();
  const tell = async (outcome: 'held' | 'turned') => {
    if (save.is === 'saving') return;
    const entries = await run(
      { type: 'find-torque', ...{ jointId, recheckId, outcome }, way: 'mark', ...gathered.noteAndPhotos() },
      { photos: gathered.photos, undo: `${outcome === 'held' ? 'OK' : 'It has turned'}: ${name}` },
    );
    if (!entries) return;
    gathered.clear();
    if (outcome === 'held') onAnswered(entries);
    else setMoved(entries);
  };
  return (
    <RecheckFrame
      {...props}
      tiles={
        <Tile
          icon="camera"
          onPress={() => pickPicture(gathered.addPhoto)}
          value={gathered.photos.length > 0 ? `${gathered.photos.length} taken` : undefined}
        >
          Photo
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
              under="The paint still lines up"
              onPress={steady(() => void tell('held'))}
            >
              OK
            </Button>
          }
        >
          <Button size="greasy" icon="warning" onPress={() => setAsking(true)}>
            It has turned
          </Button>
        </BenchActs>
      }
    >
      <p class="loud">
        <Icon name="lock" sizePx={24} />
        {locked ? `Do not turn it: threadlocker since ${dayText(locked.atMs)}.` : 'Do not turn it.'}
      </p>
      {applied && !applied.marked && (
        <p class="far">No paint mark is logged for it. Look for a gap, rust or a bright edge instead.</p>
      )}
      <AppliedAndFound joint={joint} unit={settings.torqueUnit} />
      {gathered.photoProblem && (
        <p class="loud" role="alert">
          {gathered.photoProblem}
        </p>
      )}
      {(asking || moved) && (
        <Sheet
          open
          title={moved ? 'Logged. Now redo the joint' : 'It has turned'}
          onClose={() => (moved ? onAnswered(moved) : setAsking(false))}
          actions={
            <BenchActs
              save={save}
              main={
                moved ? (
                  <Button kind="main" size="greasy" icon="bolt" href={hrefOf({ at: 'joint', jointId })}>
                    To the joint
                  </Button>
                ) : (
                  <Button kind="main" size="greasy" icon="pencil" onPress={() => void tell('turned')}>
                    Log that it has turned
                  </Button>
                )
              }
            />
          }
        >
          <div class="stack">
            {keepsMoving(moved ? joint.moved - 1 : joint.moved) && (
              <Notice kind="error" title="Not for the first time">
                {movedAgain}
              </Notice>
            )}
            <p class="far">
              The bond is broken. Take it out, strip and clean both threads, re-apply threadlocker, tighten to
              the target, mark it, and let it cure before the bike is ridden.
            </p>
            {moved && (
              <Button wide size="greasy" icon="next" onPress={() => onAnswered(moved)}>
                Go on, redo it later
              </Button>
            )}
          </div>
        </Sheet>
      )}
    </RecheckFrame>
  );
}

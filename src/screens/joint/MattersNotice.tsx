import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import type { JointRow } from '../../journal/rows.ts';
import { mattersOnBike } from '../../practice/release/mattersOnBike.ts';
import { mattersWords } from '../../words/mattersWords.ts';
import { useRun, useView } from '../door.tsx';

/** Says where a joint is written down as lesser while it is safety-critical on this bike, and offers to change that. */
export function MattersNotice({ joint }: { joint: JointRow }) {
  const bikeParts = useView('parts', { at: joint.bikeId });
  const { run, save } = useRun();
  if (joint.matters || joint.state === 'apart' || bikeParts.is !== 'there') return null;
  const { because } = mattersOnBike(joint, bikeParts.value);
  if (!because) return null;
  const raise = () =>
    void run(
      { type: 'describe-joint', jointId: joint.jointId, matters: true },
      { undo: `${joint.name}: safety-critical` },
    );
  return (
    <Notice kind="caution" title="Safety-critical on this bike">
      <p>{mattersWords[because]}</p>
      <Button icon="check" wide disabled={save.is === 'saving'} onPress={raise}>
        Mark it safety-critical
      </Button>
    </Notice>
  );
}

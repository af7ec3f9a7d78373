import { useState } from 'preact/hooks';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/Notice.tsx';
import { Screen } from '../controls/Screen.tsx';
import type { Id, JointAbout } from '../journal/entries.ts';
import type { JointRow, PartRow } from '../journal/rows.ts';
import { SaveNotice } from './bike/SaveNotice.tsx';
import { describedAnew } from './describedAnew.ts';
import { useLogbook, useRun, useView } from './door.tsx';
import { useDraft } from './draft.ts';
import { JointFields } from './joint/JointFields.tsx';
import { draftOf, emptyJoint, type JointTrouble, readJoint } from './joint/jointDraft.ts';
import { go, hrefOf, type Route } from './route.ts';
import { Waits } from './Waits.tsx';

interface FormProps {
  bikeId: Id;
  parts: PartRow[];
  /** Set when a joint is edited. */
  joint?: JointRow;
}

function Form({ bikeId, parts, joint }: FormProps) {
  const logbook = useLogbook();
  const settings = useView('settings', undefined);
  const { run, save } = useRun();
  const [draft, change, clear] = useDraft(
    // A draft begun before the joint last changed would bring old figures back.
    joint ? `joint:${joint.jointId}:${joint.lastMs}` : `joint:new:${bikeId}`,
    joint ? draftOf(joint) : emptyJoint,
  );
  const [trouble, setTrouble] = useState<JointTrouble>();
  const back: Route = joint ? { at: 'joint', jointId: joint.jointId } : { at: 'bike', bikeId };
  const keep = async () => {
    if (save.is === 'saving') return;
    const read = readJoint(draft);
    setTrouble(read.ok ? undefined : read.trouble);
    if (!read.ok) return;
    const jointId = joint?.jointId ?? logbook.newId();
    const changed = joint && describedAnew<JointAbout>(joint, read.about, ['note']);
    if (!changed || Object.keys(changed).length > 0) {
      const entries = await run(
        changed
          ? { type: 'describe-joint', jointId, ...changed }
          : { type: 'make-joint', jointId, bikeId, ...read.about },
        { undo: joint ? `${joint.name} changed` : `${read.about.name || 'Joint'} added` },
      );
      if (!entries) return;
    }
    clear();
    go({ at: 'joint', jointId }, true);
  };
  return (
    <Screen
      title={joint ? `Edit: ${joint.name}` : 'Add a joint'}
      back={hrefOf(back)}
      waits={<Waits />}
      actions={
        <>
          <Button kind="main" icon="check" disabled={save.is === 'saving'} onPress={keep}>
            {joint ? 'Keep the change' : 'Add the joint'}
          </Button>
          <Button kind="quiet" href={hrefOf(back)} onPress={clear}>
            Leave without keeping
          </Button>
        </>
      }
    >
      <div class="stack">
        {trouble && <Notice kind="error" title="Something is missing. It is marked below." />}
        <SaveNotice save={save} />
        <JointFields
          draft={draft}
          parts={parts}
          unit={settings.is === 'there' ? settings.value.torqueUnit : 'N.m'}
          trouble={trouble}
          change={change}
        />
      </div>
    </Screen>
  );
}

function Missing({ what, failed }: { what: string; failed: boolean }) {
  return (
    <Screen title="Joint" back={hrefOf({ at: 'home' })} waits={<Waits />}>
      <Notice kind="error" title={failed ? 'It could not be read' : `That ${what} is not in the logbook`}>
        Go back to the list and open it from there.
      </Notice>
    </Screen>
  );
}

/** A joint of a bike, written down for the first time. */
export function NewJoint({ bikeId }: { bikeId: Id }) {
  const seen = useView('bike', { bikeId });
  if (seen.is === 'reading') return null;
  if (seen.is === 'failed' || !seen.value) return <Missing what="bike" failed={seen.is === 'failed'} />;
  return <Form bikeId={bikeId} parts={seen.value.parts} />;
}

/** A joint that is known, with everything that is known of it. */
export function EditJoint({ jointId }: { jointId: Id }) {
  const seen = useView('joint', { jointId });
  const joint = seen.is === 'there' ? seen.value?.joint : undefined;
  const parts = useView('parts', { at: joint?.bikeId ?? '' });
  if (seen.is === 'reading' || (joint && parts.is === 'reading')) return null;
  if (!joint || parts.is !== 'there') return <Missing what="joint" failed={seen.is === 'failed'} />;
  return <Form bikeId={joint.bikeId} parts={parts.value} joint={joint} />;
}

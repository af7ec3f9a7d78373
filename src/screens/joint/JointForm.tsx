import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { changedJoint, draftOf, emptyJoint, type JointTrouble, readJoint } from '../../drafts/jointDraft.ts';
import { jointLabels } from '../../drafts/meanwhileLabels.ts';
import type { Id } from '../../journal/entries.ts';
import type { JointRow, PartRow } from '../../journal/rows.ts';
import { mattersOnBike } from '../../practice/release/mattersOnBike.ts';
import { Absent } from '../Absent.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { type Seen, useLogbook, useRun, useView } from '../door.tsx';
import { useEdit } from '../draft.ts';
import { Meanwhile } from '../Meanwhile.tsx';
import { go, hrefOf, type Route } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { JointFields } from './fields/JointFields.tsx';

interface FormProps {
  bikeId: Id;
  parts: PartRow[];
  /** Set when a joint is edited. */
  joint?: JointRow;
}

function Form({ bikeId, parts, joint }: FormProps) {
  const logbook = useLogbook();
  const settings = useView('settings');
  const { run, save } = useRun();
  const { draft, change, clear, meanwhile } = useEdit(
    joint ? `joint:${joint.jointId}` : `joint:new:${bikeId}`,
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
    const { matters } = mattersOnBike(read.about, parts);
    // A person may have judged a joint safety-critical: the form raises it and never lowers it.
    const about = matters && !joint?.matters ? { ...read.about, matters } : read.about;
    const changed = joint && changedJoint(joint, about);
    if (!changed || Object.keys(changed).length > 0) {
      const entries = await run(
        changed
          ? { type: 'describe-joint', jointId, ...changed }
          : { type: 'make-joint', jointId, bikeId, ...about },
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
            {joint ? 'Save' : 'Add the joint'}
          </Button>
          <Button href={hrefOf(back)} onPress={clear}>
            Discard
          </Button>
        </>
      }
    >
      <div class="stack">
        {trouble && <Notice kind="error" title="Something is missing. It is marked below." />}
        <SaveNotice save={save} />
        <Meanwhile changed={meanwhile} labels={jointLabels} onTake={change} />
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

function NothingToFill({ what, seen }: { what: 'bike' | 'joint'; seen: Seen<unknown>[] }) {
  return (
    <Screen title="Joint" back={hrefOf({ at: 'home' })} waits={<Waits />}>
      <Absent what={what} seen={seen} />
    </Screen>
  );
}

/** A joint of a bike, written down for the first time. */
export function NewJoint({ bikeId }: { bikeId: Id }) {
  const seen = useView('bike', { bikeId });
  if (seen.is !== 'there' || !seen.value) return <NothingToFill what="bike" seen={[seen]} />;
  return <Form bikeId={bikeId} parts={seen.value.parts} />;
}

/** A joint that is known, with everything that is known of it. */
export function EditJoint({ jointId }: { jointId: Id }) {
  const seen = useView('joint', { jointId });
  const joint = seen.is === 'there' ? seen.value?.joint : undefined;
  const parts = useView('parts', { at: joint?.bikeId ?? '' });
  if (!joint || parts.is !== 'there') return <NothingToFill what="joint" seen={[seen, parts]} />;
  return <Form bikeId={joint.bikeId} parts={parts.value} joint={joint} />;
}

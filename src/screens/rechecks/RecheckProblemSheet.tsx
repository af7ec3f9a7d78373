import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { PhotoFull } from '../../controls/lists/PhotoFull.tsx';
import { PhotoStrip } from '../../controls/lists/PhotoStrip.tsx';
import type { Entry } from '../../journal/entries.ts';
import type { JointRow, RecheckRow } from '../../journal/rows.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import { useStepDraft } from '../bench/useStepDraft.ts';
import { DefectSheet, type DefectSheetProps } from '../bike/sheets/DefectSheet.tsx';
import { useRun } from '../door.tsx';

export interface RecheckProblemSheetProps extends Pick<DefectSheetProps, 'joints' | 'unit'> {
  recheck: RecheckRow;
  joint: JointRow | undefined;
  onAnswered: (entries: Entry[]) => void;
  onClose: () => void;
}

/** What was found, in words and pictures; and whether the bike may be ridden with it. */
export function RecheckProblemSheet(props: RecheckProblemSheetProps) {
  const { recheck, joint, joints, unit, onAnswered, onClose } = props;
  const { recheckId, bikeId, title } = recheck;
  const gathered = useStepDraft(`recheck-${recheckId}`, undefined);
  const { draft, change, photos, addPhoto, photoProblem } = gathered;
  const [shown, setShown] = useState<number>();
  const [kept, setKept] = useState<{ entries: Entry[]; words: string }>();
  const { run, save } = useRun();
  const words = draft.note.trim();
  const prints = photos.map((photo, index) => ({ id: photo.photoId, photo, alt: `${title}, ${index + 1}` }));
  const keep = async () => {
    if (save.is === 'saving') return;
    const photoIds = photos.map(({ photoId }) => photoId);
    const entries = await run(
      {
        type: 'answer-recheck',
        ...{ recheckId, words },
        outcome: 'finding',
        ...(photoIds.length > 0 ? { photoIds } : {}),
      },
      { photos, undo: `Problem: ${title}` },
    );
    if (!entries) return;
    gathered.clear();
    setKept({ entries, words });
  };
  if (kept)
    return (
      <DefectSheet
        {...{ bikeId, joints, unit }}
        words={kept.words}
        {...(joint ? { jointId: joint.jointId } : {})}
        onClose={() => onAnswered(kept.entries)}
      />
    );
  return (
    <Sheet
      open
      title={`Problem: ${title}`}
      onClose={onClose}
      actions={
        <>
          <SaveLine save={save} />
          <Button
            kind="main"
            size="greasy"
            icon="warning"
            disabled={words === ''}
            under="Can it be ridden?"
            onPress={keep}
          >
            {words === '' ? 'Say what you found' : 'Log the problem'}
          </Button>
        </>
      }
    >
      <div class="stack">
        <TextField
          label="What you found"
          lines={3}
          value={draft.note}
          onInput={(note) => change({ note })}
          error={photoProblem}
          maxLength={1000}
        />
        <PhotoStrip photos={prints} onOpen={setShown} onAdd={addPhoto} />
      </div>
      <PhotoFull photos={prints} index={shown} onIndex={setShown} onClose={() => setShown(undefined)} />
    </Sheet>
  );
}

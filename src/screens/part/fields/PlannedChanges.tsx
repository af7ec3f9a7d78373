import { Button } from '../../../controls/Button.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import type { ChangeDraft } from '../../../drafts/changeDraft.ts';
import type { Id } from '../../../journal/entries.ts';
import { plannedChanges } from '../../../practice/part/plannedChange.ts';
import { useView } from '../../door.tsx';

export interface PlannedChangesProps {
  partId: Id;
  bikeId: Id;
  onTake: (figures: Partial<ChangeDraft>) => void;
}

/** What the fit check planned for this part; its figures go into the form at a press. */
export function PlannedChanges({ partId, bikeId, onTake }: PlannedChangesProps) {
  const seen = useView('bike', { bikeId });
  if (seen.is !== 'there' || !seen.value) return null;
  return (
    <>
      {plannedChanges(partId, seen.value).map(({ words, draft }) => (
        <Notice
          key={words}
          kind="note"
          title="Accepted in the fit check"
          action={<Button onPress={() => onTake(draft)}>Take these figures</Button>}
        >
          {words}. These are targets. Enter what you measured before and after.
        </Notice>
      ))}
    </>
  );
}

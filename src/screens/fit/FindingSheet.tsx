import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/Notice.tsx';
import { Sheet } from '../../controls/Sheet.tsx';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import type { Id } from '../../journal/entries.ts';
import { SaveNotice } from '../bike/SaveNotice.tsx';
import { useRun } from '../door.tsx';
import { Asks } from './Asks.tsx';
import { FaceFacts } from './FaceFacts.tsx';
import { knownWords, topicWords } from './fitWords.ts';

export interface FindingSheetProps {
  finding: Finding;
  bikeId: Id;
  parts: readonly PilePart[];
  noted: boolean;
  onClose: () => void;
}

/** One finding in full: the faces and their sizes, the rule behind it, and what can be done. */
export function FindingSheet({ finding, bikeId, parts, noted, onClose }: FindingSheetProps) {
  const { run, save } = useRun();
  const { findingId, outcome, because, risk, source, known, notes } = finding;
  const open = outcome === 'not-known' || outcome === 'does-not-fit' || outcome === 'one-way-only';
  const note = async () => {
    if (!open) return;
    const words = `${topicWords(finding.topic)}: ${because}`;
    if (await run({ type: 'note-finding', bikeId, findingId, words, outcome }, { undo: 'Noted as open' }))
      onClose();
  };
  return (
    <Sheet
      open
      title={topicWords(finding.topic)}
      onClose={onClose}
      actions={
        open && !noted ? (
          <Button icon="note" onPress={note} disabled={save.is === 'saving'}>
            Note it for the release
          </Button>
        ) : undefined
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <p class="fit-said">{because}</p>
        <FaceFacts finding={finding} parts={parts} />
        <Asks finding={finding} parts={parts} />
        {notes.map((words) => (
          <p key={words}>{words}</p>
        ))}
        {risk && outcome !== 'fits' && (
          <Notice kind="caution" title="What can go wrong">
            {risk}
          </Notice>
        )}
        <p class="small">
          {source}; {knownWords[known]}.
        </p>
      </div>
    </Sheet>
  );
}

import { useRef, useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import type { CopyProgress } from '../../../exchange/copy/copy.ts';
import { writeJournalText } from '../../../exchange/text/writeJournalText.ts';
import { copyCounts, copyName } from '../../../words/copyWords.ts';
import { reasonOf } from '../../../words/reasonOf.ts';
import { useLogbook } from '../../door.tsx';
import { useSafety } from '../../safety.tsx';
import { copyContent } from './copyContent.ts';
import { canShare, download, share } from './keepFile.ts';
import { saveArchive } from './saveArchive.ts';

type Saving =
  | { is: 'idle' }
  | { is: 'running'; done: CopyProgress }
  | { is: 'saved'; counts: string; text?: File }
  | { is: 'failed'; why: string };

const nothing: CopyProgress = { entries: 0, photos: 0, bytes: 0 };

/** Saves the whole logbook as one file, or the journal as a text that every share sheet takes. */
export function SaveCopy() {
  const logbook = useLogbook();
  const safety = useSafety();
  const [passphrase, setPassphrase] = useState('');
  const [saving, setSaving] = useState<Saving>({ is: 'idle' });
  const stop = useRef<AbortController | undefined>(undefined);
  const work = async (
    save: (work: { signal: AbortSignal; onProgress(done: CopyProgress): void }) => Promise<Saving>,
  ) => {
    const controller = new AbortController();
    stop.current = controller;
    setSaving({ is: 'running', done: nothing });
    const onProgress = (done: CopyProgress) => setSaving({ is: 'running', done });
    try {
      setSaving(await save({ signal: controller.signal, onProgress }));
    } catch (thrown) {
      if (controller.signal.aborted) setSaving({ is: 'idle' });
      else setSaving({ is: 'failed', why: reasonOf(thrown) });
    }
  };
  const saveAll = () =>
    work(async (how) => {
      const saved = (await safety.safeguards()).savedCopy(logbook.now());
      const content = copyContent(logbook);
      const entries = saved.passing(content.entries);
      const written = await saveArchive({ ...content, entries }, { ...how, passphrase });
      if (!written) return { is: 'idle' };
      saved.note();
      return { is: 'saved', counts: copyCounts(written) };
    });
  const makeText = () =>
    work(async (how) => {
      const pieces: Blob[] = [];
      const stream = new WritableStream<Uint8Array<ArrayBuffer>>({
        write: (piece) => void pieces.push(new Blob([piece])),
      });
      const saved = (await safety.safeguards()).savedCopy(logbook.now());
      const content = { entries: saved.passing(logbook.copies.entries()), madeAtMs: logbook.now() };
      const written = await writeJournalText(content, stream, how);
      const text = new File(pieces, copyName(logbook.now(), 'txt'), { type: 'text/plain' });
      // The share sheet opens on a tap of its own: the one that began this is used up by now.
      if (!canShare(text)) download(text);
      saved.note();
      return { is: 'saved', counts: copyCounts(written), ...(canShare(text) ? { text } : {}) };
    });
  if (saving.is === 'running')
    return (
      <Notice
        kind="note"
        title={`Saving: ${copyCounts(saving.done)}`}
        action={<Button onPress={() => stop.current?.abort()}>Cancel</Button>}
      >
        You can go on working meanwhile.
      </Notice>
    );
  const text = saving.is === 'saved' ? saving.text : undefined;
  return (
    <>
      {saving.is === 'saved' && (
        <Notice
          kind="note"
          title={`Copied: ${saving.counts}`}
          action={
            text && (
              <Button icon="share" onPress={() => void share(text)}>
                Share
              </Button>
            )
          }
        >
          Keep it off this phone.
        </Notice>
      )}
      {saving.is === 'failed' && (
        <Notice kind="error" title="The copy was not saved">
          {`${saving.why} Try again, or choose another place.`}
        </Notice>
      )}
      <TextField
        label="Passphrase"
        hint="Optional. If you lose it, the copy cannot be opened."
        value={passphrase}
        onInput={setPassphrase}
      />
      <Button wide icon="save" under="Everything, photos included" onPress={() => void saveAll()}>
        Save a copy
      </Button>
      <Button wide icon="share" under="Without photos, not locked" onPress={() => void makeText()}>
        Share the log as text
      </Button>
    </>
  );
}

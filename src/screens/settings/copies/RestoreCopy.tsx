import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import type { Copy, CopyProgress } from '../../../exchange/copy/copy.ts';
import type { WouldAdd } from '../../../exchange/copy/dryRun.ts';
import { addCopy, readCopy } from '../../../exchange/copy/restore.ts';
import { copyCounts, wouldAddWords } from '../../../words/copyWords.ts';
import { fileSentence, type RefusedFile } from '../../../words/fileRefusals.ts';
import { reasonOf } from '../../../words/reasonOf.ts';
import { useLogbook } from '../../door.tsx';
import { type FileFromOutside, takeFilesFromOutside } from './fromOutside.ts';

type Restoring =
  | { is: 'idle' }
  | { is: 'running'; title: string }
  | { is: 'locked'; file: Blob; refused: RefusedFile }
  | { is: 'ready'; copy: Copy; would: WouldAdd }
  | { is: 'added'; entries: number }
  | { is: 'refused'; sentence: string };

/** Reads a copy, says what it would add, and adds it when that is wanted. */
export function RestoreCopy() {
  const { copies } = useLogbook();
  const [state, setState] = useState<Restoring>({ is: 'idle' });
  const [passphrase, setPassphrase] = useState('');
  const stop = useRef<AbortController | undefined>(undefined);
  const chosen = useRef<HTMLInputElement>(null);
  const outside = useRef<FileFromOutside | undefined>(undefined);
  const top = useRef<HTMLDivElement>(null);

  /** A file from outside need not be kept any longer. */
  const settled = () => {
    void outside.current?.done().catch(() => {});
    outside.current = undefined;
  };
  const work = async (
    title: string,
    step: (signal: AbortSignal, tell: (title: string) => void) => Promise<Restoring>,
  ) => {
    const controller = new AbortController();
    stop.current = controller;
    setState({ is: 'running', title });
    try {
      setState(await step(controller.signal, (now) => setState({ is: 'running', title: now })));
    } catch (thrown) {
      if (controller.signal.aborted) return setState({ is: 'idle' });
      settled();
      setState({ is: 'refused', sentence: `Not read: ${reasonOf(thrown)}` });
    }
  };
  const look = (file: Blob) =>
    work('Checking the copy', async (signal, tell) => {
      const onProgress = (done: CopyProgress) => tell(`Checked: ${copyCounts(done)}`);
      const read = await readCopy(file, copies, { passphrase, signal, onProgress });
      if (!('refused' in read)) return { is: 'ready', ...read };
      if (read.refused === 'passphrase-missing' || read.refused === 'passphrase-wrong')
        return { is: 'locked', file, refused: read };
      settled();
      return { is: 'refused', sentence: fileSentence(read) };
    });
  const add = (copy: Copy) =>
    work('Adding', async (signal, tell) => {
      const onProgress = (share: number) => tell(`Adding: ${Math.round(share * 100)} %`);
      const added = await addCopy(copy, copies, { signal, onProgress });
      settled();
      return 'refused' in added
        ? { is: 'refused', sentence: fileSentence(added) }
        : { is: 'added', entries: added.entries };
    });
  const take = useRef((_incoming: FileFromOutside) => {});
  take.current = (incoming) => {
    // What is being checked or added goes on; the file can be opened once more.
    if (state.is === 'running') return;
    outside.current = incoming;
    top.current?.scrollIntoView();
    void look(incoming.file);
  };
  useEffect(() => takeFilesFromOutside((incoming) => take.current(incoming)), []);
  const cancel = (
    <Button
      onPress={() => {
        stop.current?.abort();
        settled();
        setState({ is: 'idle' });
      }}
    >
      Cancel
    </Button>
  );
  const shown = () => {
    switch (state.is) {
      case 'running':
        return (
          <Notice kind="note" title={state.title} action={cancel}>
            Nothing is added until the whole copy is checked.
          </Notice>
        );
      case 'locked':
        return (
          <Notice kind="caution" title={fileSentence(state.refused)} action={cancel}>
            <TextField label="Passphrase of the copy" value={passphrase} onInput={setPassphrase} />
            <Button icon="lock" onPress={() => void look(state.file)}>
              Open
            </Button>
          </Notice>
        );
      case 'ready':
        return (
          <Notice
            kind="note"
            title={wouldAddWords(state.would)}
            action={
              <>
                {state.would.newEntries + state.would.newPhotos > 0 && (
                  <Button icon="plus" onPress={() => void add(state.copy)}>
                    Add to this logbook
                  </Button>
                )}
                {cancel}
              </>
            }
          >
            What is already here stays as it is.
          </Notice>
        );
      default:
        return (
          <>
            {state.is === 'added' && (
              <Notice kind="note" title={copyCounts({ entries: state.entries }, 'added')} />
            )}
            {state.is === 'refused' && (
              <Notice kind="error" title={state.sentence}>
                Nothing was added.
              </Notice>
            )}
            <input
              ref={chosen}
              type="file"
              hidden
              aria-label="Copy to restore"
              onChange={(event) => {
                const file = event.currentTarget.files?.[0];
                event.currentTarget.value = '';
                if (file) void look(file);
              }}
            />
            <Button
              wide
              icon="open"
              under="Checked first, then you decide"
              onPress={() => chosen.current?.click()}
            >
              Restore from a copy
            </Button>
          </>
        );
    }
  };
  return (
    <div class="stack" ref={top}>
      {shown()}
    </div>
  );
}

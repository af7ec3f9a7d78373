import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import type { CopyHeld } from '../../mirror/secondCopy.ts';
import { heldWords } from '../../words/checkWords.ts';
import { countedWords } from '../../words/phrases.ts';
import { reasonOf } from '../../words/reasonOf.ts';
import { useLogbook } from '../door.tsx';
import { useSafety } from '../safety.tsx';

type Doing = { is: 'idle' } | { is: 'running'; title: string } | { is: 'failed'; title: string; why: string };

/** What the second copy holds, read once; it needs nothing of the store. */
function useHeld(): CopyHeld | 'looking' | 'none' {
  const safety = useSafety();
  const [held, setHeld] = useState<CopyHeld | 'looking' | 'none'>('looking');
  useEffect(() => {
    const look = async () => (await safety.safeguards()).copy.read();
    look().then(
      (found) => setHeld(found && found.entries.length > 0 ? found : 'none'),
      () => setHeld('none'),
    );
  }, [safety]);
  return held;
}

/** Where the store does not open: save what the second copy holds, then fill a new store from it. */
export function WayOut() {
  const logbook = useLogbook();
  const safety = useSafety();
  const held = useHeld();
  const [doing, setDoing] = useState<Doing>({ is: 'idle' });
  const [saved, setSaved] = useState<string>();
  const attempt = async (title: string, failed: string, work: () => Promise<void>) => {
    setDoing({ is: 'running', title });
    try {
      await work();
      setDoing({ is: 'idle' });
    } catch (thrown) {
      setDoing({ is: 'failed', title: failed, why: reasonOf(thrown) });
    }
  };
  if (held === 'looking') return <p role="status">Looking for the second copy…</p>;
  if (held === 'none')
    return (
      <Notice kind="caution" title="There is no second copy on this phone">
        <p>
          Try <a href="/rescue.html">the rescue page</a>: it saves what can still be read. With a copy saved
          elsewhere you can clear the site data in the browser and restore from that copy.
        </p>
      </Notice>
    );
  const save = () =>
    attempt('Saving', 'The copy was not saved', async () => {
      const { ofSecondCopy, saveArchive } = await import('../settings/SettingsPage.tsx');
      const written = await saveArchive(ofSecondCopy(held, logbook.now()));
      if (written) setSaved(countedWords(written));
    });
  const beginAnew = () =>
    attempt('Restoring the second copy', 'Not done', async () => {
      const { copy } = await safety.safeguards();
      // The screens come back by themselves once the store is open.
      await copy.beginAnew((share) =>
        setDoing({ is: 'running', title: `Restoring the second copy: ${Math.round(share * 100)} %` }),
      );
    });
  const { entries, photos } = held;
  const { title, text } = heldWords({ ...held, entries: entries.length, photos: photos.length });
  const busy = doing.is === 'running';
  return (
    <div class="stack">
      <Notice kind="note" title={title}>
        {text}
      </Notice>
      {busy && <Notice kind="note" title={doing.title} />}
      {doing.is === 'failed' && (
        <Notice kind="error" title={doing.title}>
          {`Try again. (${doing.why})`}
        </Notice>
      )}
      {saved !== undefined && (
        <Notice kind="note" title={`Saved: ${saved}`}>
          Keep the file until the logbook is back.
        </Notice>
      )}
      <Button
        wide
        icon="save"
        kind={saved === undefined ? 'main' : undefined}
        disabled={busy}
        onPress={() => void save()}
      >
        Save the second copy
      </Button>
      {saved !== undefined && (
        <Button
          wide
          kind="main"
          icon="open"
          under="Deletes the data that does not open, then restores"
          disabled={busy}
          onPress={() => void beginAnew()}
        >
          Start again from the second copy
        </Button>
      )}
    </div>
  );
}

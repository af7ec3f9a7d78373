import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { HoldButton } from '../../controls/HoldButton.tsx';
import type { LogbookMark } from '../../mirror/mark.ts';
import { lostWords } from '../../words/checkWords.ts';
import { countedWords } from '../../words/phrases.ts';
import { reasonOf } from '../../words/reasonOf.ts';
import { hrefOf } from '../route.ts';
import { useSafety } from '../safety.tsx';

type CopyFinds = { entries: number; photos: number; unreadable: number };

/** Stands where a logbook was and none is found: what happened, and the ways back. */
export function Lost({ mark, onNew }: { mark: LogbookMark; onNew(): void }) {
  const safety = useSafety();
  const [found, setFound] = useState<CopyFinds | 'none' | 'looking'>('looking');
  const [doing, setDoing] = useState<string>();
  const [failed, setFailed] = useState<string>();
  const look = async () => {
    const compared = await (await safety.safeguards()).copy.compare();
    if (!compared) return setFound('none');
    const { missing, missingPhotos, unreadable } = compared;
    setFound(
      missing.length > 0 ? { entries: missing.length, photos: missingPhotos.length, unreadable } : 'none',
    );
  };
  useEffect(() => {
    look().catch((thrown) => {
      setFailed(`The second copy could not be read. (${String(thrown?.message ?? thrown)})`);
      setFound('none');
    });
  }, []);
  const restore = async () => {
    setFailed(undefined);
    setDoing('Restoring');
    try {
      const { copy } = await safety.safeguards();
      // The first screen shows the bikes as soon as they are there.
      await copy.restore((share) => setDoing(`Restoring: ${Math.round(share * 100)} %`));
    } catch (thrown) {
      setFailed(`Not restored, nothing was changed. (${reasonOf(thrown)})`);
    }
    setDoing(undefined);
  };
  const beginNew = async () => {
    await (await safety.safeguards()).copy.startOver();
    onNew();
  };
  const copied = typeof found === 'object' ? found : undefined;
  return (
    <div class="stack">
      <Notice kind="error" title="The logbook is missing on this phone">
        {lostWords(mark)}
      </Notice>
      {found === 'looking' && <p role="status">Looking for the second copy…</p>}
      {copied && (
        <Notice
          kind="note"
          title={doing ?? `The second copy holds ${countedWords(copied)}`}
          action={
            <Button kind="main" icon="open" disabled={doing !== undefined} onPress={() => void restore()}>
              Restore the logbook
            </Button>
          }
        >
          {copied.unreadable > 0
            ? `${copied.unreadable} of its lines could not be read; the others are intact.`
            : 'Every line of it was read and is intact.'}
        </Notice>
      )}
      {found === 'none' && (
        <Notice kind="caution" title="There is no second copy on this phone">
          Restore from a copy that you saved.
        </Notice>
      )}
      {failed && <Notice kind="error" title={failed} />}
      <Button wide icon="open" under="In the settings, under Copies" href={hrefOf({ at: 'settings' })}>
        Open a saved copy
      </Button>
      <HoldButton
        kind="plain"
        icon="plus"
        explain={copied ? 'Press and hold. This deletes the second copy as well.' : 'Press and hold'}
        onHeld={() => void beginNew()}
      >
        Start a new logbook
      </HoldButton>
    </div>
  );
}

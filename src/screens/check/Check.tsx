import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { HoldButton } from '../../controls/HoldButton.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { type Flaw, flawsOf } from '../../words/checkWords.ts';
import { countedWords, countWords } from '../../words/phrases.ts';
import { reasonOf } from '../../words/reasonOf.ts';
import { useLogbook } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { useCopyState, useSafety } from '../safety.tsx';
import { WayOut } from './WayOut.tsx';

type Checking =
  | { is: 'idle' }
  | { is: 'running'; title: string }
  | { is: 'checked'; entries: number; photos: number; flaws: Flaw[]; newer: number }
  | { is: 'failed'; title: string; why: string; unread?: true };

/**
 * Looks whether the logbook holds together, says what does not, and mends what can be mended.
 * @param props.wayOut whether the way out of a store that cannot be read is offered here as well
 */
export function CheckLogbook({ wayOut = false }: { wayOut?: boolean }) {
  const logbook = useLogbook();
  const safety = useSafety();
  const copy = useCopyState();
  const [state, setState] = useState<Checking>({ is: 'idle' });
  const [done, setDone] = useState<string>();

  const check = async () => {
    setState({ is: 'running', title: 'Checking' });
    try {
      const store = await logbook.check();
      const compared = await (await safety.safeguards()).copy.compare();
      const { entries, photos, newer } = store;
      setState({ is: 'checked', entries, photos, newer, flaws: flawsOf(store, compared) });
    } catch (thrown) {
      setState({
        is: 'failed',
        title: 'The stored data could not be read',
        why: reasonOf(thrown),
        unread: true,
      });
    }
  };
  const attempt = async (title: string, work: (tell: (share: number) => void) => Promise<string>) => {
    setDone(undefined);
    setState({ is: 'running', title });
    try {
      setDone(
        await work((share) => setState({ is: 'running', title: `${title}: ${Math.round(share * 100)} %` })),
      );
      await check();
    } catch (thrown) {
      setState({ is: 'failed', title: 'That did not work; nothing was changed', why: reasonOf(thrown) });
    }
  };
  const sortAnew = () =>
    attempt('Rebuilding the lists', async (tell) => {
      await logbook.sortAnew(tell);
      return 'Lists rebuilt';
    });
  const bringBack = () =>
    attempt('Bringing back', async (tell) => {
      const { photosLost, ...back } = await (await safety.safeguards()).copy.restore(tell);
      const lost = photosLost > 0 ? `; damaged there too: ${countWords(photosLost, 'photo')}` : '';
      return `${countedWords(back)} brought back${lost}`;
    });
  const keepAsItIs = () =>
    attempt('Copying', async () => {
      await (await safety.safeguards()).copy.startOver();
      return 'The second copy was made again from the logbook';
    });

  const flaws = state.is === 'checked' ? state.flaws : [];
  const fromCopy = flaws.some(({ by }) => by === 'second copy') && copy?.is === 'level';
  return (
    <div class="stack">
      {done && <Notice kind="note" title={done} />}
      {state.is === 'running' && <Notice kind="note" title={state.title} />}
      {state.is === 'failed' && (
        <Notice kind="error" title={state.title}>
          {`Reload the page and try again; otherwise restore from a copy. (${state.why})`}
        </Notice>
      )}
      {state.is === 'failed' && state.unread && wayOut && <WayOut />}
      {state.is === 'checked' && flaws.length === 0 && (
        <Notice kind="note" title={`Nothing wrong: ${countedWords(state)}`}>
          {copy?.is === 'level'
            ? 'Every line is there, the lists agree with the journal, and the second copy holds the same.'
            : 'Every line is there and the lists agree with the journal. There is no second copy to compare with.'}
        </Notice>
      )}
      {flaws.length > 0 && (
        <Notice
          kind="caution"
          title="Something is wrong"
          action={
            fromCopy && (
              <Button icon="open" onPress={() => void bringBack()}>
                Restore from the second copy
              </Button>
            )
          }
        >
          <ul>
            {flaws.map(({ words }) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </Notice>
      )}
      {fromCopy && (
        <HoldButton
          kind="plain"
          icon="cross"
          explain="Press and hold. What only the second copy has is deleted."
          onHeld={() => void keepAsItIs()}
        >
          Keep the logbook as it is now
        </HoldButton>
      )}
      {state.is === 'checked' && state.newer > 0 && (
        <p>{`${countedWords({ entries: state.newer, photos: 0 })} of a newer version: kept, not shown. Update the app.`}</p>
      )}
      {copy && <ListRow icon="save" title={copy.title} detail={copy.detail} />}
      <Button wide icon="lookup" disabled={state.is === 'running'} onPress={() => void check()}>
        {state.is === 'checked' ? 'Check again' : 'Check now'}
      </Button>
      <Button
        wide
        icon="tally"
        under="From the journal, which stays as it is"
        disabled={state.is === 'running'}
        onPress={() => void sortAnew()}
      >
        Rebuild the lists
      </Button>
    </div>
  );
}

export { LookForNewer } from './LookForNewer.tsx';
export { Lost } from './Lost.tsx';
export { Unopened } from './Unopened.tsx';

/** The check as a screen of its own. */
export function Check() {
  return (
    <Screen title="Check the logbook" back={hrefOf({ at: 'settings' })}>
      <CheckLogbook wayOut />
      <Ruler />
      <p>
        If nothing here helps, open <a href="/rescue.html">the rescue page</a>: it saves the logbook as a
        file.
      </p>
    </Screen>
  );
}

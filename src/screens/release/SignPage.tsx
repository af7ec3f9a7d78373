import './release.css';
import { useContext, useEffect } from 'preact/hooks';
import { Choice } from '../../controls/fields/Choice.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { HoldButton } from '../../controls/HoldButton.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import type { CommandOf } from '../../journal/commands.ts';
import type { Id, OpenItem } from '../../journal/entries.ts';
import { stopsStatement } from '../../planning/stopsStatement.ts';
import { inReadingOrder } from '../../practice/release/openOrder.ts';
import { cautions } from '../../standards/checks/releaseRules.ts';
import { statementWords } from '../../words/statements.ts';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { UndoSlot, useRun } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { useFirstWrong } from '../firstWrong.ts';
import { Waits } from '../Waits.tsx';
import { OpenList } from './OpenList.tsx';
import { PublishedFigures } from './PublishedFigures.tsx';

type Statement = CommandOf<'release-bike'>['statement'];

interface SignDraft {
  statement?: Statement;
  covers: string;
  by?: string;
  restrictions: string;
}

export interface SignPageProps {
  bikeId: Id;
  bikeName: string;
  open: readonly OpenItem[];
  ridden: boolean;
  doer: string;
  onSigned: () => void;
  onBack: () => void;
}

/** The release itself: what is open, word for word, what it covers, and who puts the name to it. */
export function SignPage({ bikeId, bikeName, open, ridden, doer, onSigned, onBack }: SignPageProps) {
  const [draft, change, clear] = useDraft<SignDraft>(`release:${bikeId}`, { covers: '', restrictions: '' });
  const { run, save } = useRun();
  const offerUndo = useContext(UndoSlot);
  const { statement, covers, restrictions } = draft;
  const by = draft.by ?? doer;
  const items = inReadingOrder(open);
  const stops = (item: OpenItem) => item.blocks || stopsStatement(item, statement);
  const blocking = items.filter(stops);
  const others = items.filter((item) => !stops(item));
  const stopped = save.is === 'refused' && save.refused === 'must-not-be-deferred';
  const form = useFirstWrong<HTMLDivElement>(save);
  useEffect(() => {
    // What stops it is a list at the top; the person who held the button is at the bottom.
    if (stopped) scrollTo(0, 0);
  }, [stopped, save]);
  const sign = async () => {
    if (!statement || save.is === 'saving') return;
    const done = await run({
      type: 'release-bike',
      ...{ bikeId, statement, covers, by },
      ...(restrictions.trim() ? { restrictions: restrictions.trim() } : {}),
    });
    if (!done) return;
    clear();
    // What the signature stands on is corrected from now on, not undone.
    offerUndo(undefined);
    onSigned();
  };
  const rides = statement !== undefined && statement !== 'not-to-ride';
  const explain = !statement
    ? 'Choose a statement first'
    : rides && blocking.length > 0
      ? `${blocking.length} open ${blocking.length === 1 ? 'item stops' : 'items stop'} it`
      : `Press and hold: ${statementWords[statement].toLowerCase()}`;
  return (
    <Screen
      title={`Release ${bikeName}`}
      route="sign"
      back={onBack}
      waits={<Waits />}
      actions={
        <BenchActs
          save={stopped ? { is: 'idle' } : save}
          main={
            <HoldButton
              kind={statement === 'not-to-ride' ? 'plain' : 'main'}
              icon={statement === 'not-to-ride' ? 'stop' : 'check'}
              disabled={!statement || save.is === 'saving'}
              explain={explain}
              onHeld={() => void sign()}
            >
              Sign it
            </HoldButton>
          }
        />
      }
    >
      <div class="stack" ref={form}>
        {stopped && (
          <Notice kind="error" title="Not signed. Fix these first:">
            <ul class="release-list">
              {blocking.map(({ words }) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </Notice>
        )}
        {blocking.length > 0 && (
          <>
            <Ruler label="Must fix before riding" end={<b>{blocking.length}</b>} />
            <OpenList label="Must fix before riding" bikeId={bikeId} items={blocking} />
          </>
        )}
        {others.length > 0 ? (
          <Fold label="Also open, signed with it" end={others.length} open>
            <OpenList label="Also open" bikeId={bikeId} items={others} />
          </Fold>
        ) : (
          blocking.length === 0 && <p>Nothing is open in the logbook.</p>
        )}
        <Notice kind="caution" title="Before you sign">
          {cautions.release}
        </Notice>
        <Choice<Statement>
          label="Statement"
          value={statement}
          onChoose={(chosen) => change({ statement: chosen })}
          options={[
            {
              value: 'first-ride',
              label: statementWords['first-ride'],
              icon: 'flag',
              hint: ridden ? 'Short, slow, near home, then look again.' : 'The one for a bike just built.',
            },
            { value: 'ride', label: statementWords.ride, icon: 'bike' },
            { value: 'not-to-ride', label: statementWords['not-to-ride'], icon: 'stop' },
          ]}
        />
        <TextField
          label="What it covers"
          hint="Only the work you did."
          lines={2}
          value={covers}
          onInput={(words) => change({ covers: words })}
          error={save.is === 'refused' && save.refused === 'covers-missing' ? save.sentence : undefined}
          maxLength={400}
        />
        <TextField
          label="Signed by"
          value={by}
          onInput={(name) => change({ by: name })}
          error={save.is === 'refused' && save.refused === 'name-missing' ? 'Enter your name.' : undefined}
          maxLength={120}
        />
        <TextField
          label="Only under these conditions"
          hint="Optional, e.g. no luggage, flat roads, max 20 km/h."
          value={restrictions}
          onInput={(words) => change({ restrictions: words })}
          maxLength={300}
        />
        <PublishedFigures />
      </div>
    </Screen>
  );
}

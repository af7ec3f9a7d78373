import './sheet.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { DateTimeField } from '../../controls/fields/DateTimeField.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { sheetText } from '../../documents/sheetLine.ts';
import type { Id } from '../../journal/entries.ts';
import { Absent } from '../Absent.tsx';
import { useLogbook, useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { Paper } from './Paper.tsx';
import { saveText } from './saveText.ts';
import { useSheet } from './useSheet.ts';

const MINUTE_MS = 60_000;

/** The bike as it was at an instant, for paper or for its next owner: joints, figures, parts, releases. */
export function BuildSheet({ bikeId }: { bikeId: Id }) {
  const logbook = useLogbook();
  // Until the end of this minute, so that what was logged a moment ago is on it.
  const [atMs, setAtMs] = useState(() => Math.ceil(logbook.now() / MINUTE_MS) * MINUTE_MS);
  const seen = useSheet(bikeId, atMs);
  const bikes = useView('bikes');
  const lines = seen.is === 'there' ? seen.value : [];
  const [first] = lines;
  const title = first?.is === 'title' ? first.text : 'As built';
  if (bikes.is === 'there' && !bikes.value.some((bike) => bike.bikeId === bikeId))
    return (
      <Screen title={title} back={hrefOf({ at: 'home' })} waits={<Waits />}>
        <Absent what="bike" seen={[bikes]} />
      </Screen>
    );
  return (
    <Screen
      title={title}
      route={`sheet ${bikeId}`}
      back={hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
      actions={
        <>
          <Button kind="main" icon="printer" disabled={lines.length === 0} onPress={() => print()}>
            Print
          </Button>
          <Button icon="save" disabled={lines.length === 0} onPress={() => saveText(title, sheetText(lines))}>
            Save as text
          </Button>
        </>
      }
    >
      <div class="paper-ask">
        <DateTimeField
          label="Show the bike as of"
          atMs={atMs}
          onAt={(at) => {
            if (at !== undefined) setAtMs(at);
          }}
        />
      </div>
      {seen.is === 'failed' && (
        <Notice kind="error" title="The sheet could not be made">
          Reload the page and try again. What is recorded is safe.
        </Notice>
      )}
      {seen.is === 'there' && lines.length === 0 && (
        <Notice kind="empty" title="No bike yet at that time">
          It was created later. Choose a later day.
        </Notice>
      )}
      {lines.length > 0 && <Paper lines={lines.slice(1)} />}
    </Screen>
  );
}

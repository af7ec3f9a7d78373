import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { useLogbook, useRun } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { go, hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { SaveNotice } from './sheets/SaveNotice.tsx';

/** A bike begins with a name; everything else is added as it comes. */
export function NewBike() {
  const logbook = useLogbook();
  const [draft, change, clear] = useDraft('bike:new', { name: '', about: '' });
  const { run, save } = useRun();
  const nameless = save.is === 'refused' && save.refused === 'name-missing';
  const start = async () => {
    if (save.is === 'saving') return;
    const bikeId = logbook.newId();
    const entries = await run(
      { type: 'start-bike', bikeId, name: draft.name, about: draft.about },
      { undo: `${draft.name.trim()} started` },
    );
    if (!entries) return;
    clear();
    go({ at: 'bike', bikeId }, true);
  };
  return (
    <Screen
      title="New bike"
      back={hrefOf({ at: 'home' })}
      waits={<Waits />}
      actions={
        <>
          <Button kind="main" icon="plus" disabled={save.is === 'saving'} onPress={start}>
            Add bike
          </Button>
          <Button href={hrefOf({ at: 'home' })} onPress={clear}>
            Discard
          </Button>
        </>
      }
    >
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void start();
        }}
      >
        {!nameless && <SaveNotice save={save} />}
        <TextField
          label="Name"
          value={draft.name}
          onInput={(name) => change({ name })}
          error={nameless ? 'Enter a name.' : undefined}
          maxLength={120}
          required
        />
        <TextField
          label="Notes"
          hint="Frame, purpose, decisions so far."
          lines={4}
          value={draft.about}
          onInput={(about) => change({ about })}
          maxLength={2000}
        />
      </form>
    </Screen>
  );
}

import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { keepPhoneName, readPhoneName } from '../../sensing/thisPhone.ts';

/** What this phone is called, so that in a log of several phones each entry says where it was written. */
export function PhoneNameForm() {
  const [kept, setKept] = useState(() => readPhoneName() ?? '');
  const [typed, setTyped] = useState(kept);
  const [failed, setFailed] = useState(false);
  const same = typed.trim() === kept;
  const keep = () => {
    try {
      keepPhoneName(typed);
      setKept(typed.trim());
      setFailed(false);
    } catch {
      setFailed(true);
    }
  };
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        if (!same) keep();
      }}
    >
      <TextField
        label="Name of this phone"
        hint="Shown in the history once logs of two phones are merged."
        value={typed}
        onInput={setTyped}
        maxLength={40}
      />
      {failed && <Notice kind="error" title="The browser did not keep the name" />}
      <Button submit wide icon="check" disabled={same}>
        {same && kept ? 'Saved' : 'Save the name'}
      </Button>
    </form>
  );
}

import { useEffect } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { useEdit } from '../draft.ts';
import type { ChangeProps } from './UnitsSection.tsx';

/** Who does the work: the name stands under releases and on the build sheet. */
export function DoerSection({ settings, change }: ChangeProps) {
  const { draft, change: type, clear } = useEdit('doer', { doer: settings.doer });
  const { doer } = draft;
  const kept = doer.trim() === settings.doer;
  useEffect(() => {
    if (kept) clear();
  }, [kept, clear]);
  return (
    <>
      <Ruler label="Your name" />
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          if (!kept) change({ doer: doer.trim() });
        }}
      >
        <TextField
          label="Name"
          hint="Used on releases and the build sheet."
          value={doer}
          onInput={(typed) => type({ doer: typed })}
          maxLength={120}
        />
        <Button submit wide icon="check" disabled={kept}>
          {kept && doer ? 'Kept' : 'Save the name'}
        </Button>
      </form>
    </>
  );
}

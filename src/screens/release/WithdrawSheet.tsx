import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { HoldButton } from '../../controls/HoldButton.tsx';
import type { Id } from '../../journal/entries.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useRun } from '../door.tsx';

const reasons = ['A doubt about the work', 'Crashed', 'Lent or sold', 'Something works loose'] as const;

/** Takes a release back before anything else does, with the reason. */
export function WithdrawSheet({ bikeId, onClose }: { bikeId: Id; onClose: () => void }) {
  const { run, save } = useRun();
  const [why, setWhy] = useState('');
  const withdraw = async () => {
    if (await run({ type: 'withdraw-release', bikeId, why: why.trim() })) onClose();
  };
  return (
    <Sheet
      open
      title="Withdraw the release"
      onClose={onClose}
      actions={
        <HoldButton
          kind="plain"
          icon="cross"
          disabled={why.trim() === '' || save.is === 'saving'}
          explain={why.trim() === '' ? 'Give a reason first' : 'Press and hold'}
          onHeld={() => void withdraw()}
        >
          Withdraw it
        </HoldButton>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <TextField label="Why" value={why} onInput={setWhy} maxLength={300} />
        {reasons.map((reason) => (
          <Button key={reason} wide onPress={() => setWhy(reason)}>
            {reason}
          </Button>
        ))}
      </div>
    </Sheet>
  );
}

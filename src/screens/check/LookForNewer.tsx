import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import type { Beside } from '../App.tsx';

const looked = {
  yes: 'A newer version is being loaded. It is offered here when it is ready.',
  no: 'There is no newer version on the server now. Try again later; what is recorded is safe.',
  failed: 'The server could not be reached. Try again with a connection; what is recorded is safe.',
} as const;

/** For a page of an older version: takes up the newer one, or looks for it. */
export function LookForNewer({ beside }: { beside: Beside }) {
  const [found, setFound] = useState<keyof typeof looked>();
  const { lookForUpdate, update } = beside;
  const look = () =>
    lookForUpdate?.().then(
      (newer) => setFound(newer ? 'yes' : 'no'),
      () => setFound('failed'),
    );
  return (
    <>
      {update ? (
        <Button wide kind="main" onPress={update.takeOver}>
          Use the newer version now
        </Button>
      ) : (
        lookForUpdate && (
          <Button wide onPress={look}>
            Look for a newer version
          </Button>
        )
      )}
      {found && <p role="status">{looked[found]}</p>}
    </>
  );
}

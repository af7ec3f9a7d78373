import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { useLogbook } from '../door.tsx';
import { CheckLogbook } from './Check.tsx';
import { WayOut } from './WayOut.tsx';

/** What can be done about a store that does not open: try again, save and refill it, or look what is wrong. */
export function Unopened() {
  const logbook = useLogbook();
  const [checking, setChecking] = useState(false);
  return (
    <div class="stack">
      <Button wide onPress={() => void logbook.openAgain()}>
        Try again
      </Button>
      <WayOut />
      {checking ? (
        <CheckLogbook />
      ) : (
        <Button wide icon="lookup" onPress={() => setChecking(true)}>
          Check the logbook
        </Button>
      )}
    </div>
  );
}

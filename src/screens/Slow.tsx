import { useEffect, useState } from 'preact/hooks';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/frames/Notice.tsx';

/** Longer than a slow phone takes to open a large logbook. */
const SLOW_MS = 4000;

/** Stands where something is being read: a moment's patience first, and after that what can be done. */
export function Slow() {
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), SLOW_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!slow) return <p role="status">One moment…</p>;
  return (
    <Notice
      kind="caution"
      title="The logbook is not answering yet"
      action={
        <>
          <Button onPress={() => location.reload()}>Reload</Button>
          <Button href="#/check">Check the logbook</Button>
        </>
      }
    >
      Close the other pages of this app, then reload. If it still does not answer, restart the browser. What
      is recorded is safe.
    </Notice>
  );
}

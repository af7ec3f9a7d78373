import { Button } from '../../../controls/Button.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import type { PartRow } from '../../../journal/rows.ts';
import { facesBefore } from '../../../practice/part/facesBefore.ts';
import { useView } from '../../door.tsx';
import { hrefOf } from '../../route.ts';

/** As far back as one looks for the last change and what was measured since. */
const LINES = 200;

/** After a change the faces still hold the old sizes, and the fit check goes by them until a hand measures. */
export function MeasureAnew({ part }: { part: PartRow }) {
  const { partId, faces = [], changes } = part;
  const history = useView('history', { place: `p:${partId}`, limit: LINES });
  const last = changes.at(-1);
  if (history.is !== 'there' || !last || !facesBefore(faces, last.after, history.value.lines)) return null;
  return (
    <Notice
      kind="caution"
      title="Measured before the last change"
      action={<Button href={hrefOf({ at: 'edit-part', partId })}>Re-measure it</Button>}
    >
      The fit check still uses the old sizes. Re-measure what you changed.
    </Notice>
  );
}

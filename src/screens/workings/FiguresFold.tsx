import { Button } from '../../controls/Button.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import type { Id } from '../../journal/entries.ts';
import { hrefOf } from '../route.ts';
import { LaterLines } from './LaterLines.tsx';

/** The figures of a joint folded away on its page; nothing is worked out before it is opened. */
export function FiguresFold({ jointId }: { jointId: Id }) {
  return (
    <Fold label="Calculated">
      <LaterLines jointId={jointId} />
      <Button icon="ruler" wide href={hrefOf({ at: 'workings', jointId })}>
        All figures, and what is missing
      </Button>
    </Fold>
  );
}

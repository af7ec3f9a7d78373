import { Button } from '../../controls/Button.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { Id } from '../../journal/entries.ts';
import { hrefOf } from '../route.ts';
import { LaterLines } from './LaterLines.tsx';

export interface FiguresSheetProps {
  jointId: Id;
  toolId: Id | undefined;
  onClose: () => void;
}

/** The figures of the joint under the wrench, laid over the step; the step stays as it is. */
export function FiguresSheet({ jointId, toolId, onClose }: FiguresSheetProps) {
  return (
    <Sheet
      open
      title="Calculated"
      onClose={onClose}
      actions={
        <Button wide size="greasy" icon="ruler" href={hrefOf({ at: 'workings', jointId })}>
          What is missing
        </Button>
      }
    >
      <LaterLines jointId={jointId} toolId={toolId} />
    </Sheet>
  );
}

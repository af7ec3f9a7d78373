import { Button } from '../../../controls/Button.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import { hrefOf } from '../../route.ts';
import { useCopyState } from '../../safety.tsx';
import { FolderCopy } from './FolderCopy.tsx';
import { HandOverBike } from './HandOverBike.tsx';
import { RestoreCopy } from './RestoreCopy.tsx';
import { SaveCopy } from './SaveCopy.tsx';

/** The logbook as a file, off this phone and back; and its second copy on the phone itself. */
export function CopySection() {
  const second = useCopyState();
  return (
    <>
      <Ruler label="Copies" />
      {second && (
        <ListRow
          icon={second.is === 'level' ? 'check' : 'cross'}
          title={second.title}
          detail={second.detail}
        />
      )}
      <div class="settings-demo stack">
        <SaveCopy />
        <FolderCopy />
        <RestoreCopy />
        <HandOverBike />
        <Button wide icon="lookup" href={hrefOf({ at: 'check' })}>
          Check the logbook
        </Button>
      </div>
    </>
  );
}

import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { RestoreCopy } from './RestoreCopy.tsx';
import { SaveCopy } from './SaveCopy.tsx';

/** The logbook as a file: off this phone, and back. */
export function CopySection() {
  return (
    <>
      <Ruler label="Copies" />
      <div class="settings-demo stack">
        <SaveCopy />
        <RestoreCopy />
      </div>
    </>
  );
}

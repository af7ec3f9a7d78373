import { Notice } from '../../../controls/frames/Notice.tsx';
import type { SaveState } from '../../door.tsx';

/** Why something was not written, beside what was typed for it; nothing while all is well. */
export function SaveNotice({ save }: { save: SaveState }) {
  return save.is === 'refused' || save.is === 'not-saved' ? (
    <Notice kind="error" title={save.sentence} />
  ) : null;
}

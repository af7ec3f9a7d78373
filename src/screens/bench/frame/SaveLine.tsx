import './saveLine.css';
import { Icon } from '../../../controls/Icon.tsx';
import type { SaveState } from '../../door.tsx';

/** What became of the last tap, beside the button that was tapped. */
export function SaveLine({ save }: { save: SaveState }) {
  if (save.is === 'refused' || save.is === 'not-saved')
    return (
      <p class="save-line loud" role="alert">
        <Icon name="stop" sizePx={24} />
        {save.sentence}
      </p>
    );
  const words = save.is === 'saving' ? 'Saving…' : save.is === 'saved' ? 'Saved' : '';
  return (
    <p class={words ? 'save-line' : 'unseen'} role="status">
      {save.is === 'saved' && <Icon name="check" sizePx={24} />}
      {words}
    </p>
  );
}

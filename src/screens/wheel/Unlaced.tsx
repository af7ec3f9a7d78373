import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen, type ScreenProps } from '../../controls/frames/Screen.tsx';
import { Waits } from '../Waits.tsx';

/** Instead of a page that goes from spoke to spoke, where they cannot be laced. */
export function Unlaced({ title, back }: Pick<ScreenProps, 'title' | 'back'>) {
  return (
    <Screen title={title} back={back} waits={<Waits />}>
      <Notice kind="error" title="These spokes cannot be laced">
        Check spokes, crossings and the spacing of the rim holes.
      </Notice>
    </Screen>
  );
}

import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import type { Demo } from './useDemo.ts';

/** Says that the demo is in the logbook, or on its way, and takes it out in one tap. */
export function DemoNotice({ state, remove }: Demo) {
  if (state.is === 'loading') {
    return (
      <Notice kind="note" title="Loading the demo">
        Two bikes and seven months of entries.
      </Notice>
    );
  }
  const failed = state.is === 'failed';
  return (
    <Notice
      kind={failed ? 'error' : 'note'}
      title={failed ? state.sentence : 'Demo bikes loaded'}
      action={
        <Button icon="cross" onPress={remove} disabled={state.is === 'removing'}>
          Remove the demo
        </Button>
      }
    >
      Made-up bikes, parts and figures. Removing them does not touch your own. What you add yourself is stored
      on this phone only; no server has a copy.
    </Notice>
  );
}

import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/Notice.tsx';
import { useDemo } from './useDemo.ts';

/** Says that the demo is in the logbook, and takes it out in one tap. */
export function DemoNotice() {
  const { demo, remove } = useDemo();
  return (
    <Notice
      kind={demo.is === 'failed' ? 'error' : 'note'}
      title={demo.is === 'failed' ? demo.sentence : 'The demo is in the logbook'}
      action={
        <Button icon="cross" onPress={remove} disabled={demo.is === 'removing'}>
          Remove the demo
        </Button>
      }
    >
      Its bikes, parts and figures are invented. Nothing of yours goes with them.
    </Notice>
  );
}

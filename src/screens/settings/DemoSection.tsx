import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { useView } from '../door.tsx';
import { DemoNotice } from '../home/DemoNotice.tsx';
import { useDemo } from '../home/useDemo.ts';

/** The invented bikes, in and out again. */
export function DemoSection() {
  const bikes = useView('bikes');
  const demo = useDemo();
  if (bikes.is !== 'there') return null;
  const there = bikes.value.some((bike) => bike.demo);
  return (
    <>
      <Ruler label="Demo" />
      <div class="settings-demo stack">
        {there || demo.state.is === 'loading' ? (
          <DemoNotice {...demo} />
        ) : (
          <>
            {demo.state.is === 'failed' && <Notice kind="error" title={demo.state.sentence} />}
            <Button wide icon="lookup" under="Two made-up bikes" onPress={demo.load}>
              Look at the demo
            </Button>
          </>
        )}
      </div>
    </>
  );
}

import './wheel.css';
import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Facts } from '../../controls/lists/Facts.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import type { Views } from '../../logbook.ts';
import { pictureFigures } from '../../practice/wheel/pictureFigures.ts';
import { drillingWords, wheelCautions } from '../../words/wheel/wheelWords.ts';
import { Absent } from '../Absent.tsx';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { LacingPicture } from './LacingPicture.tsx';
import { SpokeLengths } from './SpokeLengths.tsx';
import { TensionSection } from './TensionSection.tsx';
import { TruingSection } from './TruingSection.tsx';
import { WheelActs } from './WheelActs.tsx';

type WheelView = NonNullable<Views['wheel']['gives']>;

function KnownWheel({ wheel, parts, bike }: WheelView) {
  const { wheelId, name, position, drilling, note, apart } = wheel;
  const wheels = useView('wheels');
  const figures = pictureFigures(wheel);
  const all = new Set(figures?.layout.map(({ spoke }) => spoke));
  const names = wheels.is === 'there' ? wheels.value.map((one) => one.name) : [name];
  return (
    <Screen
      title={name}
      route={`wheel ${wheelId}`}
      back={bike ? hrefOf({ at: 'bike', bikeId: bike.bikeId }) : hrefOf({ at: 'shelf' })}
      waits={<Waits />}
      actions={
        apart === undefined && (
          <>
            <Button kind="main" icon="wheel" href={hrefOf({ at: 'lace-wheel', wheelId })}>
              Lace it
            </Button>
            <Button icon="scale" href={hrefOf({ at: 'read-wheel', wheelId })}>
              Read it
            </Button>
          </>
        )
      }
    >
      <div class="sections">
        {apart !== undefined && (
          <Notice kind="caution" title="Taken apart">
            {apart}
          </Notice>
        )}
        <section>
          <Facts
            of={[
              ['Place', position === undefined ? '' : position === 'front' ? 'Front' : 'Rear'],
              ['On', bike?.name],
              ['Made of', parts.map((part) => part.name).join(', ') || 'No parts chosen'],
              ['Rim holes', drilling === 'even' ? '' : drillingWords[drilling]],
              ['Note', note],
            ]}
          />
          {figures && <LacingPicture figures={figures} seenFrom="drive" laced={all} />}
        </section>
        <section>
          <Ruler label="Spoke lengths" />
          <SpokeLengths wheel={wheel} parts={parts} />
        </section>
        <TensionSection wheel={wheel} />
        <TruingSection wheel={wheel} />
        <Fold label="Before you build or ride it">
          <ul class="wheel-list lower">
            {wheelCautions.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </Fold>
        {apart === undefined && <WheelActs wheel={wheel} names={names} />}
      </div>
    </Screen>
  );
}

/** One wheel: its spokes, its lacing, its tension, and how true it ran. */
export function Wheel({ wheelId }: { wheelId: string }) {
  const seen = useView('wheel', { wheelId });
  if (seen.is === 'there' && seen.value) return <KnownWheel {...seen.value} />;
  return (
    <Screen title="Wheel" back={hrefOf({ at: 'home' })} waits={<Waits />}>
      <Absent what="wheel" seen={[seen]} />
    </Screen>
  );
}

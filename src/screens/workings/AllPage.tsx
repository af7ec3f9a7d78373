import './workings.css';
import { useState } from 'preact/hooks';
import { ListRow } from '../../controls/ListRow.tsx';
import { Ruler } from '../../controls/Ruler.tsx';
import { Screen } from '../../controls/Screen.tsx';
import { reckonings } from '../../fit/reckoning/reckonings.ts';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { ReckoningForm } from './ReckoningForm.tsx';

const groups = [...new Set(reckonings.map(({ group }) => group))];

/** Every working, each with its own little form. Nothing here is written down; it is a slip of paper. */
export function AllPage() {
  const [shown, setShown] = useState<string>();
  const reckoning = reckonings.find(({ id }) => id === shown);
  if (reckoning)
    return <ReckoningForm key={reckoning.id} reckoning={reckoning} onBack={() => setShown(undefined)} />;
  return (
    <Screen title="Workings" route="workings all" back={hrefOf({ at: 'tools' })} waits={<Waits />}>
      <p>For figures without a joint. Nothing typed here enters the logbook.</p>
      {groups.map((group) => (
        <section key={group}>
          <Ruler label={group} />
          <ul class="working-rows">
            {reckonings
              .filter((each) => each.group === group)
              .map(({ id, label, about }) => (
                <li key={id}>
                  <ListRow title={label} detail={about} onPress={() => setShown(id)} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </Screen>
  );
}

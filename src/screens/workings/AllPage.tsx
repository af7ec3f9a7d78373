import './workings.css';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { reckonings } from '../../workings/reckonings/reckonings.ts';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { ReckoningForm } from './ReckoningForm.tsx';

/** The address of the list, and in front of a working's own id the address of its form. */
const LIST = 'all';
const ONE = `${LIST}:`;

const groups = [...new Set(reckonings.map(({ group }) => group))];
const list = hrefOf({ at: 'workings', jointId: LIST });

/** Whether an address names the list or one of its forms instead of a joint. @example isListed('all:preload') //=> true */
export const isListed = (id: string): boolean => id === LIST || id.startsWith(ONE);

/** Every working, each with its own little form. Nothing here is written down; it is a slip of paper. */
export function AllPage({ id }: { id: string }) {
  const reckoning = reckonings.find((each) => `${ONE}${each.id}` === id);
  if (reckoning) return <ReckoningForm reckoning={reckoning} back={list} />;
  return (
    <Screen title="Calculators" back={hrefOf({ at: 'tools' })} waits={<Waits />}>
      {id !== LIST && (
        <Notice kind="error" title="There is no such calculator">
          Choose one from the list.
        </Notice>
      )}
      <p>For figures without a joint. Nothing typed here enters the logbook.</p>
      {groups.map((group) => (
        <section key={group} class="working-group">
          <Ruler label={group} />
          <ul class="working-rows">
            {reckonings
              .filter((each) => each.group === group)
              .map((each) => (
                <li key={each.id}>
                  <ListRow
                    title={each.label}
                    detail={each.about}
                    href={hrefOf({ at: 'workings', jointId: `${ONE}${each.id}` })}
                  />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </Screen>
  );
}

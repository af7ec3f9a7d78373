import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Id } from '../../journal/entries.ts';
import type { JointRow } from '../../journal/rows.ts';
import { asksOf, type MissingInput, type MissingKey } from '../../workings/joint/line.ts';
import { hrefOf, type Route } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { MeasuresForm } from './MeasuresForm.tsx';
import { useLines } from './useLines.ts';
import { WorkingRow } from './WorkingRow.tsx';

/** Where something is written down that the form below does not ask for. */
function placeFor(key: MissingKey, { jointId, bikeId, partIds }: JointRow): Route | undefined {
  if (key === 'torque' || key === 'thread') return { at: 'edit-joint', jointId };
  if (key === 'applied' || key === 'temperature') return { at: 'bench', bikeId };
  if (key === 'tool' || key === 'tool-range' || key === 'lever') return { at: 'tools' };
  const [partId] = partIds;
  if (key === 'tube' || key === 'rotor' || key === 'native-rotor')
    return partId === undefined ? { at: 'bike', bikeId } : { at: 'part', partId };
  return undefined;
}

function AskedInputs({ asks, joint }: { asks: MissingInput[]; joint: JointRow }) {
  return (
    <ul class="working-rows">
      {asks.map(({ key, what, whereToMeasure }) => {
        const place = placeFor(key, joint);
        return (
          <li key={key}>
            <ListRow icon="ruler" title={what} detail={whereToMeasure} href={place && hrefOf(place)} />
          </li>
        );
      })}
    </ul>
  );
}

/** All figures of one joint, what would make them surer, and the place to write that down. */
export function JointPage({ jointId }: { jointId: Id }) {
  const [toolId, setToolId] = useState<Id>();
  const seen = useLines(jointId, toolId);
  const title = seen.is === 'there' ? seen.joint.name : 'Figures';
  const asks = seen.is === 'there' ? asksOf(seen.lines) : [];
  return (
    <Screen
      title={title}
      route={`workings ${jointId}`}
      back={hrefOf({ at: 'joint', jointId })}
      waits={<Waits />}
    >
      {seen.is === 'reading' && <p role="status">One moment…</p>}
      {seen.is === 'failed' && (
        <Notice kind="error" title="The figures could not be read">
          Go back and open it again. What is recorded is safe.
        </Notice>
      )}
      {seen.is === 'none' && (
        <Notice kind="error" title="That joint is not in the logbook">
          Go back to the list and open it from there.
        </Notice>
      )}
      {seen.is === 'there' && (
        <>
          {seen.tools.length > 0 && seen.joint.fasteners.length > 0 && (
            <SelectField
              label="Tool in use"
              options={seen.tools.map((tool) => ({ value: tool.toolId, label: tool.name }))}
              value={seen.tool?.toolId}
              unchosen="None chosen"
              onChoose={setToolId}
            />
          )}
          <Ruler label="Figures of this joint" />
          {seen.lines.length === 0 && (
            <Notice kind="empty" title="No bolts here">
              A joint without bolts and without a torque has nothing to work out.
            </Notice>
          )}
          <ul class="working-rows">
            {seen.lines.map((line) => (
              <li key={line.id}>
                <WorkingRow line={line} />
              </li>
            ))}
          </ul>
          {asks.length > 0 && (
            <>
              <Ruler label="Not logged yet" end={<b>{asks.length}</b>} />
              <AskedInputs asks={asks} joint={seen.joint} />
            </>
          )}
          {seen.joint.fasteners.length > 0 && (
            <Fold label="Enter measurements">
              <MeasuresForm joint={seen.joint} />
            </Fold>
          )}
          <p class="working-end">
            <Button icon="scale" wide href={hrefOf({ at: 'workings', jointId: 'all' })}>
              Calculators
            </Button>
          </p>
        </>
      )}
    </Screen>
  );
}

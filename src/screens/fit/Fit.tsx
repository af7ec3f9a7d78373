import { Absent } from '../Absent.tsx';
import './fit.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Toggle } from '../../controls/fields/Toggle.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import type { Finding } from '../../fit/finding.ts';
import { bridgingKinds } from '../../fit/partKinds.ts';
import { pileOf } from '../../fit/pileOf.ts';
import type { Id } from '../../journal/entries.ts';
import type { PartRow } from '../../journal/rows.ts';
import type { Views } from '../../logbook.ts';
import type { Situation } from '../../practice/pile/acceptCommands.ts';
import { findingGroups, findingRowOf } from '../../practice/pile/findingGroups.ts';
import { useLogbook, useView } from '../door.tsx';
import { useAllParts } from '../part/allParts.ts';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { Faceless } from './Faceless.tsx';
import { FindingSheet } from './FindingSheet.tsx';
import { Findings } from './Findings.tsx';
import { FitPicture } from './FitPicture.tsx';
import { Sets } from './Sets.tsx';
import { Summary } from './Summary.tsx';
import { usePileCheck } from './usePileCheck.ts';
import { WholeBike } from './whole/WholeBike.tsx';

type Card = NonNullable<Views['bike']['gives']>;

const bridging: readonly string[] = bridgingKinds;

/** Changes when one of the parts does. */
const findingKey = (parts: readonly PartRow[]): string =>
  parts.map(({ partId, lastMs }) => `${partId}@${lastMs}`).join();

interface PileProps {
  card: Card;
  shelf: readonly PartRow[];
  /** The finding to begin with. */
  findingId: string | undefined;
}

function Pile({ card, shelf: onShelf, findingId }: PileProps) {
  const { bikeId } = card.bike;
  // Bike and shelf are read one after the other: for a moment a part that moved is in both.
  const shelf = onShelf.filter(({ partId }) => !card.parts.some((part) => part.partId === partId));
  const [withShelf, setWithShelf] = useState(false);
  const [chosenFinding, setOpened] = useState<Finding | 'none'>();
  // What goes between others counts from the shelf in any case: it is what a bridge is made of.
  const chosen = [...card.parts, ...shelf.filter(({ kind }) => withShelf || bridging.includes(kind))];
  const key = findingKey(chosen);
  const parts = pileOf(chosen);
  const onBike = pileOf(card.parts);
  const check = usePileCheck(parts, key);
  const all = useAllParts();
  const { newId } = useLogbook();
  const situation: Situation = {
    bikeId,
    parts: chosen,
    joints: card.joints,
    steps: card.steps,
    labels: (all ?? chosen).map(({ label }) => label),
    newId,
  };
  const groups = check && findingGroups(check, card.findings);
  const asked = groups?.flatMap(({ findings }) => findings).find((one) => one.findingId === findingId);
  const opened = chosenFinding === undefined ? asked : chosenFinding === 'none' ? undefined : chosenFinding;
  return (
    <>
      {card.parts.length === 0 && (
        <Notice
          kind="empty"
          title="No parts on this bike"
          action={<Button href={hrefOf({ at: 'new-part', place: `bike:${bikeId}` })}>Add a part</Button>}
        >
          Begin with the frame. Each part is checked against the others.
        </Notice>
      )}
      {groups && card.parts.length > 0 && (
        <FitPicture
          {...{ groups, parts, onBike }}
          rows={card.findings}
          joints={card.joints}
          onOpen={setOpened}
        />
      )}
      {groups && <Summary groups={groups} />}
      <Toggle
        label="Include shelf parts"
        hint={
          shelf.length === 0
            ? 'The shelf is empty.'
            : shelf.length === 1
              ? 'One part is there.'
              : `${shelf.length} parts are there.`
        }
        on={withShelf}
        disabled={shelf.length === 0}
        onToggle={setWithShelf}
      />
      {groups && (
        <Findings
          groups={groups}
          parts={parts}
          rows={card.findings}
          joints={card.joints}
          onOpen={setOpened}
        />
      )}
      <Faceless parts={onBike} />
      {check && card.parts.length > 0 && (
        <WholeBike bikeId={bikeId} parts={onBike} check={check} onOpen={setOpened} />
      )}
      {check && card.parts.length > 0 && (
        <Fold label="Complete builds" end="with the shelf">
          <Sets
            bikeId={bikeId}
            parts={pileOf([...card.parts, ...shelf])}
            onBike={new Set(onBike.map(({ partId }) => partId))}
            pileKey={findingKey([...card.parts, ...shelf])}
          />
        </Fold>
      )}
      {!check && <p role="status">Checking every part against every other…</p>}
      {opened && (
        <FindingSheet
          finding={opened}
          parts={parts}
          row={findingRowOf(card.findings, opened)}
          situation={situation}
          onClose={() => setOpened('none')}
        />
      )}
    </>
  );
}

/** The question before the first bolt: do these parts make a bike, and what goes between them? */
export function Fit({ bikeId, findingId }: { bikeId: Id; findingId?: string }) {
  const seen = useView('bike', { bikeId });
  const shelf = useView('parts', { at: 'shelf' });
  const card = seen.is === 'there' ? seen.value : undefined;
  return (
    <Screen
      title={card ? `Fit check: ${card.bike.name}` : 'Fit check'}
      route={`fit ${bikeId}`}
      back={hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
    >
      {card && shelf.is === 'there' ? (
        <Pile card={card} shelf={shelf.value} findingId={findingId} />
      ) : (
        <Absent what="bike" seen={[seen, shelf]} />
      )}
    </Screen>
  );
}

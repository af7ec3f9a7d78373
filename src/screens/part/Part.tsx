import { Absent } from '../Absent.tsx';
import './part.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Mark } from '../../controls/figures/Mark.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Facts } from '../../controls/lists/Facts.tsx';
import { RowList } from '../../controls/lists/RowList.tsx';
import type { BikeRow, JointRow, PartRow } from '../../journal/rows.ts';
import { numberText } from '../../mechanics/numberText.ts';
import { nextLabel } from '../../practice/part/nextLabel.ts';
import { partLike } from '../../practice/part/partLike.ts';
import { kindWords } from '../../words/history/sentencesOfParts.ts';
import { originWords, placeWords } from '../../words/history/tradeWords.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { Photos } from '../bike/sheets/Photos.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useLogbook, useRun, useView } from '../door.tsx';
import { JointLine } from '../joint/JointLine.tsx';
import { go, hrefOf, type Route } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { useAllParts } from './allParts.ts';
import { Cut } from './Cut.tsx';
import { FacesSeen } from './fields/FacesSeen.tsx';
import { MeasureAnew } from './fields/MeasureAnew.tsx';
import { WhereItWas } from './fields/WhereItWas.tsx';
import { MovePart } from './MovePart.tsx';

function Identity({ part }: { part: PartRow }) {
  const {
    kind,
    serial,
    origin,
    originWords: words,
    condition,
    unknown,
    kmBefore,
    massG,
    note,
    position,
  } = part;
  const before =
    kmBefore === 'unknown' ? 'unknown' : kmBefore === undefined ? '' : `${numberText(kmBefore)} km`;
  return (
    <Facts
      of={[
        ['Kind', `${kindWords(kind)}${position ? `, ${position}` : ''}`],
        ['Serial', serial?.trim()],
        ['From', `${originWords[origin]}${words?.trim() ? `, ${words.trim()}` : ''}`],
        ['Condition', condition?.trim()],
        ['Not known', unknown?.trim()],
        ['Ridden before', before],
        ['Mass', massG === undefined ? '' : `${numberText(massG)} g`],
        ['Note', note?.trim()],
      ]}
    />
  );
}

function Whereabouts({
  part,
  bike,
  onMove,
}: {
  part: PartRow;
  bike: BikeRow | undefined;
  onMove: () => void;
}) {
  const { place } = part;
  const here = sentenceCase(
    placeWords(place, { bike: () => bike?.name, part: () => undefined, joint: () => undefined }),
  );
  const state =
    place.on === 'quarantine' ? 'held' : place.on === 'scrapped' || place.on === 'sold' ? 'noted' : undefined;
  return (
    <div class="part-place">
      {state ? <Mark state={state} word={here} /> : <strong>{here}</strong>}
      <Button onPress={onMove}>{place.on === 'bike' ? 'Take it off' : 'Move it'}</Button>
    </div>
  );
}

interface PartView {
  part: PartRow;
  bike: BikeRow | undefined;
  joints: JointRow[];
}

function KnownPart({ part, bike, joints }: PartView) {
  const [moving, setMoving] = useState(false);
  const { partId, place, photoIds = [], changes } = part;
  const logbook = useLogbook();
  const all = useAllParts();
  const { run, save } = useRun();
  const another = async () => {
    if (!all || save.is === 'saving') return;
    const copyId = logbook.newId();
    const about = partLike(part, part.label === '' ? '' : nextLabel(all.map(({ label }) => label)));
    const to = place.on === 'bike' ? place : ({ on: 'shelf' } as const);
    const command = { type: 'add-part', partId: copyId, place: to, ...about } as const;
    if (await run(command, { undo: `${about.name} added` })) go({ at: 'part', partId: copyId });
  };
  const back: Route = place.on === 'bike' ? { at: 'bike', bikeId: place.bikeId } : { at: 'shelf' };
  return (
    <Screen
      title={part.name}
      route={`part ${partId}`}
      back={hrefOf(back)}
      waits={<Waits />}
      actions={
        <>
          <Button icon="pencil" href={hrefOf({ at: 'edit-part', partId })}>
            Edit
          </Button>
          <Button icon="saw" href={hrefOf({ at: 'change-part', partId })}>
            Cut or bend
          </Button>
          <Button icon="plus" disabled={!all} onPress={() => void another()}>
            Another like it
          </Button>
        </>
      }
    >
      <div class="sections">
        <SaveNotice save={save} />
        {part.label && <p class="part-label">{part.label}</p>}
        <Whereabouts part={part} bike={bike} onMove={() => setMoving(true)} />
        {photoIds.length > 0 && <Photos photoIds={photoIds} alt={part.name} />}
        {changes.length > 0 && (
          <section>
            <Ruler label="Permanent changes" end={<b>{changes.length}</b>} />
            <MeasureAnew part={part} />
            {changes.toReversed().map((change) => (
              <Cut key={change.entryId} change={change} />
            ))}
          </section>
        )}
        <section>
          <Ruler label="Details" />
          <Identity part={part} />
        </section>
        {joints.length > 0 && (
          <section>
            <Ruler label="Joints it is in" end={joints.length} />
            <RowList
              label="Joints it is in"
              of={joints}
              keyOf={({ jointId }) => jointId}
              draw={(joint) => <JointLine joint={joint} />}
            />
          </section>
        )}
        <FacesSeen part={part} />
        <WhereItWas part={part} />
      </div>
      {moving && <MovePart part={part} joints={joints} onClose={() => setMoving(false)} />}
    </Screen>
  );
}

/** One physical thing: who it is, where it is, what was cut, what it is joined to, where it has been. */
export function Part({ partId }: { partId: string }) {
  const seen = useView('part', { partId });
  if (seen.is === 'there' && seen.value) return <KnownPart {...seen.value} />;
  return (
    <Screen title="Part" back={hrefOf({ at: 'shelf' })} waits={<Waits />}>
      <Absent what="part" seen={[seen]} />
    </Screen>
  );
}

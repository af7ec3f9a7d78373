import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Facts } from '../../controls/lists/Facts.tsx';
import { Filters } from '../../controls/lists/Filters.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { PilePart } from '../../fit/pile.ts';
import type { CompleteSet } from '../../fit/sets/completeSets.ts';
import { suitWords } from '../../practice/pile/missingParts.ts';
import { takeSet } from '../../practice/pile/takeSet.ts';
import { topicWords, wayWords } from '../../words/fitWords.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { buyWords, costWords, slotWords, unjudgedBrakes } from '../../words/setWords.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { useSets } from './useSets.ts';

export interface SetsProps {
  bikeId: string;
  /** Parts of the bike and of the shelf. */
  parts: readonly PilePart[];
  /** Parts that are on the bike: kept where nothing speaks against it. */
  onBike: ReadonlySet<string>;
  pileKey: string;
}

type OneSetProps = Pick<SetsProps, 'bikeId' | 'parts' | 'onBike'> & { set: CompleteSet };

function OneSet({ set, bikeId, parts, onBike }: OneSetProps) {
  const { run, save } = useRun();
  const commands = takeSet(set, { bikeId, parts, onBike });
  const taken = commands.filter(({ type }) => type === 'move-part').length;
  const between = set.check.findings.filter(({ bridges }) => bridges.length > 0);
  return (
    <>
      <Facts
        of={[
          ...set.filled.map(
            ({ slot, parts: own }) =>
              [
                slotWords(slot),
                own
                  .map(({ partId, name }) => (onBike.has(partId) ? name : `${name}, from the shelf`))
                  .join(' + '),
              ] as const,
          ),
          ...set.missing.map((slot) => [slotWords(slot), <b key={slot}>none</b>] as const),
          ...unjudgedBrakes(set).map(
            (end) => [`Brake, ${end}`, 'no disc mount: not checked here, check it yourself'] as const,
          ),
        ]}
      />
      {between.map((finding) => (
        <ListRow
          key={finding.findingId}
          icon={finding.outcome === 'one-way-only' ? 'file' : 'shim'}
          title={topicWords(finding.topic)}
          detail={wayWords(finding)}
        />
      ))}
      <SaveNotice save={save} />
      {taken > 0 && (
        <div class="buttons">
          <Button
            icon="shelf"
            onPress={() => run(commands, { undo: 'Taken from the shelf' })}
            disabled={save.is === 'saving'}
          >
            {taken === 1 ? 'Take its part from the shelf' : `Take its ${taken} parts from the shelf`}
          </Button>
        </div>
      )}
    </>
  );
}

/** Whole bikes that can be made of this frame with what is at hand, the least trouble first. */
export function Sets({ bikeId, parts, onBike, pileKey }: SetsProps) {
  const [tie, setTie] = useState<'adjusted' | 'mass'>('adjusted');
  const [frame, ...more] = parts.filter(({ kind, partId }) => kind === 'frame' && onBike.has(partId));
  const shelf = parts
    .filter(({ kind }) => kind !== 'frame')
    .map((part) => (onBike.has(part.partId) ? { ...part, adjusted: true } : part));
  const found = useSets(frame, shelf, { tie, key: pileKey });
  if (!frame || more.length > 0)
    return (
      <p class="lead">
        {frame
          ? 'Two frames are on this bike; put one back on the shelf.'
          : 'Add a frame to this bike: every set begins with it.'}
      </p>
    );
  if (!found) return <p role="status">Trying every part in every place…</p>;
  const [best] = found.sets;
  const bare = found.sets.every(({ filled }) => filled.length === 0);
  return (
    <div class="fit-sets">
      <Filters
        label="Prefer"
        tabs={[
          { value: 'adjusted', label: 'What is on the bike' },
          { value: 'mass', label: 'The lightest' },
        ]}
        on={[tie]}
        onToggle={setTie}
      />
      {(!best || bare) && (
        <Notice kind="empty" title="No complete build possible">
          {best
            ? 'Nothing at hand suits this frame, or no part has sizes yet.'
            : 'Whatever is chosen, something does not fit. The findings above say what.'}
        </Notice>
      )}
      {!bare &&
        found.sets.map((set, at) => (
          <Fold
            key={set.filled.map(({ parts: own }) => own.map(({ partId }) => partId).join()).join()}
            label={at === 0 ? 'Best set' : `Set ${at + 1}`}
            end={costWords(set)}
          >
            <OneSet set={set} bikeId={bikeId} parts={parts} onBike={onBike} />
          </Fold>
        ))}
      {!bare && found.toBuy.length + found.pieces.length > 0 && (
        <section>
          <h3 class="caption lead">You must buy</h3>
          {found.toBuy.map((place) => (
            <ListRow
              key={place.slot}
              icon="plus"
              title={buyWords(place)}
              detail={suitWords(place.wanted, parts).map((words) => (
                <span class="fit-fact" key={words}>
                  {words}
                </span>
              ))}
              href={hrefOf({ at: 'new-part', place: `bike:${bikeId}` })}
            />
          ))}
          {found.pieces.map(({ id, label, caution }, at) => (
            <ListRow key={`${id} ${at}`} icon="shim" title={sentenceCase(label)} detail={caution} />
          ))}
        </section>
      )}
    </div>
  );
}

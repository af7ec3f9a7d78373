import type { Origin } from '../../journal/entries.ts';
import { partNamed } from '../../practice/log/partNamed.ts';
import { useView } from '../door.tsx';
import type { LineFieldsProps } from './LineFields.tsx';
import { Picks } from './Picks.tsx';

const plain: readonly { value: Origin; words: string }[] = [
  { value: 'bought-new', words: 'New' },
  { value: 'bought-used', words: 'Used' },
  { value: 'found', words: 'Found' },
  { value: 'made', words: 'Made' },
];

/** Parts of the bike a part comes off that it may be: the one in the logbook is moved, not made a second time. */
function Which({ draft, change }: Pick<LineFieldsProps, 'draft' | 'change'>) {
  const { fromBikeId, fromPartId, where } = draft;
  const parts = useView('parts', { at: fromBikeId });
  const { kind, position } = partNamed(where);
  const like = (parts.is === 'there' ? parts.value : []).filter(
    (part) =>
      part.kind === kind && kind !== 'other' && (!position || (part.position ?? position) === position),
  );
  if (where === '' || like.length === 0) return null;
  return (
    <div class="log-group">
      <span class="field-label">In the logbook there</span>
      <Picks
        label="In the logbook there"
        options={[
          ...like.map(({ partId, name }) => ({ value: partId, words: `Move ${name}` })),
          { value: '', words: 'Another one' },
        ]}
        chosen={fromPartId}
        onChoose={(partId) => change({ fromPartId: partId })}
      />
    </div>
  );
}

/** Where a part comes from; off another bike asks which. */
export function OriginFields({ draft, change }: LineFieldsProps) {
  const bikes = useView('bikes');
  const { origin, fromBikeId, bikeId } = draft;
  const others = (bikes.is === 'there' ? bikes.value : []).filter((bike) => bike.bikeId !== bikeId);
  const off = origin === 'off-a-bike';
  return (
    <>
      <div class="log-group">
        <span class="field-label">Where from</span>
        <Picks
          label="Where from"
          all
          options={[
            ...plain,
            ...others.map((bike) => ({ value: `off ${bike.bikeId}`, words: `Off ${bike.name}` })),
          ]}
          chosen={off ? `off ${fromBikeId}` : origin}
          onChoose={(value) => {
            const from = others.find((bike) => value === `off ${bike.bikeId}`);
            if (from) change({ origin: 'off-a-bike', fromBikeId: from.bikeId, fromPartId: '' });
            else change({ origin: value as Origin, fromBikeId: '', fromPartId: '' });
          }}
        />
      </div>
      {off && <Which draft={draft} change={change} />}
    </>
  );
}

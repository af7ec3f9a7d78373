import { Absent } from '../Absent.tsx';
import './part.css';
import { useState } from 'preact/hooks';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { HoldButton } from '../../controls/HoldButton.tsx';
import { type ChangeDraft, emptyChange, readChange } from '../../drafts/changeDraft.ts';
import type { Command } from '../../journal/commands.ts';
import type { PartRow } from '../../journal/rows.ts';
import { cautions } from '../../standards/checks/releaseRules.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useRun, useView } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { go, hrefOf } from '../route.ts';
import { useNewPhotos } from '../useNewPhotos.ts';
import { Waits } from '../Waits.tsx';
import { ChangeFields } from './fields/ChangeFields.tsx';
import { NewPhotos } from './fields/NewPhotos.tsx';
import { PlannedChanges } from './fields/PlannedChanges.tsx';

function Changing({ part, stepId }: { part: PartRow; stepId: string | undefined }) {
  const { partId, name, place } = part;
  const key = `change:${partId}`;
  // Come from a step of the bench, it is that step.
  const bench = stepId && place.on === 'bike' ? ({ at: 'bench', bikeId: place.bikeId } as const) : undefined;
  const [draft, change, clear] = useDraft<ChangeDraft>(key, emptyChange);
  const settings = useView('settings');
  const taken = useNewPhotos(key);
  const { run, save } = useRun();
  const [tried, setTried] = useState(false);
  const unit = draft.unit || (settings.is === 'there' ? settings.value.lengthUnit : 'mm');
  const read = readChange(
    draft,
    unit,
    taken.photos.map(({ photoId }) => photoId),
  );
  const sign = async () => {
    setTried(true);
    if (!read.ok || save.is === 'saving') return;
    const changing: Command = { type: 'change-part', partId, ...read.change };
    const commands: Command[] = stepId ? [changing, { type: 'finish-step', stepId }] : [changing];
    const entries = await run(commands, { photos: taken.photos });
    if (!entries) return;
    clear();
    go(bench ?? { at: 'part', partId }, true);
  };
  return (
    <Screen
      title={`Permanent change: ${name}`}
      route={`change-part ${partId}`}
      back={hrefOf(bench ?? { at: 'part', partId })}
      waits={<Waits />}
      actions={
        <HoldButton onHeld={sign} disabled={save.is === 'saving'} explain="Hold to save: permanent">
          Save the change
        </HoldButton>
      }
    >
      <div class="stack">
        <Notice kind="caution" title="This cannot be undone">
          {cautions['one-way-change']}
        </Notice>
        {tried && !read.ok && (
          <Notice kind="error" title="Not signed yet">
            Something is missing; it is marked in red below. What you typed is kept.
          </Notice>
        )}
        <SaveNotice save={save} />
        {place.on === 'bike' && draft.cut === '' && (
          <PlannedChanges partId={partId} bikeId={place.bikeId} onTake={change} />
        )}
        <ChangeFields
          draft={draft}
          unit={unit}
          trouble={tried && !read.ok ? read.trouble : {}}
          onBike={place.on === 'bike'}
          change={change}
        />
        <NewPhotos taken={taken} alt={`${name}, changed`} />
      </div>
    </Screen>
  );
}

/** A file, saw, drill, braze or cold-set, written down with its figures and signed. */
export function ChangePart({ partId, stepId }: { partId: string; stepId?: string }) {
  const seen = useView('part', { partId });
  if (seen.is === 'there' && seen.value) return <Changing part={seen.value.part} stepId={stepId} />;
  return (
    <Screen title="Part" back={hrefOf({ at: 'shelf' })} waits={<Waits />}>
      <Absent what="part" seen={[seen]} />
    </Screen>
  );
}

import { Absent } from '../Absent.tsx';
import './part.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { partLabels } from '../../drafts/meanwhileLabels.ts';
import {
  aboutOfDraft,
  changedAbout,
  draftOfPart,
  emptyPart,
  type PartDraft,
  saidAbout,
  troubleOf,
} from '../../drafts/partDraft.ts';
import type { Place } from '../../journal/entries.ts';
import type { PartRow } from '../../journal/rows.ts';
import { nextLabel } from '../../practice/part/nextLabel.ts';
import { Photos } from '../bike/sheets/Photos.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useLogbook, useRun, useView } from '../door.tsx';
import { useDraft, useEdit } from '../draft.ts';
import { useFirstWrong } from '../firstWrong.ts';
import { Meanwhile } from '../Meanwhile.tsx';
import { go, hrefOf, type Route } from '../route.ts';
import { useNewPhotos } from '../useNewPhotos.ts';
import { Waits } from '../Waits.tsx';
import { useAllParts } from './allParts.ts';
import { Faces } from './Faces.tsx';
import { NewPhotos } from './fields/NewPhotos.tsx';
import { PartFields } from './fields/PartFields.tsx';

const METRIC = { lengthUnit: 'mm', pressureUnit: 'bar' } as const;

interface Form {
  draft: PartDraft;
  change(changed: Partial<PartDraft>): void;
  clear(): void;
}

/** What both forms share: the draft, the free label, what keeps it from being saved, the photos. */
function usePartForm(key: string, { draft, change, clear }: Form, partId?: string) {
  const parts = useAllParts();
  const settings = useView('settings');
  const [tried, setTried] = useState(false);
  const label = draft.label ?? nextLabel((parts ?? []).map((part) => part.label));
  const holder = useView('label-holder', { label, partId });
  const taken = holder.is === 'there' ? holder.value : undefined;
  const trouble = troubleOf(draft, taken?.name);
  // A form that was not tried yet is not red for being empty; a taken label is said at once.
  const shown = tried ? trouble : { label: trouble.label };
  const chosen = settings.is === 'there' ? settings.value : METRIC;
  const blocked = Object.keys(trouble).length > 0;
  const [tries, setTries] = useState(0);
  const place = useFirstWrong<HTMLFormElement>(tries);
  const attempt = () => {
    setTried(true);
    setTries((count) => count + 1);
  };
  return {
    attempt,
    place,
    draft,
    change,
    clear,
    label,
    shown,
    blocked,
    setTried,
    chosen,
    photos: useNewPhotos(key),
  };
}

const placeOf = (place: string): Place =>
  place.startsWith('bike:') ? { on: 'bike', bikeId: place.slice('bike:'.length) } : { on: 'shelf' };

/** A part that is new to the logbook: ten seconds for name and kind, as long as one likes for the rest. */
export function NewPart({ place }: { place: string }) {
  const logbook = useLogbook();
  const key = `part:new:${place}`;
  const [draft, change, clear] = useDraft(key, emptyPart);
  const form = usePartForm(key, { draft, change, clear });
  const { run, save } = useRun();
  const [added, setAdded] = useState<string>();
  const at = placeOf(place);
  const back: Route = at.on === 'bike' ? { at: 'bike', bikeId: at.bikeId } : { at: 'shelf' };
  const add = async (then: 'open' | 'next') => {
    form.attempt();
    if (form.blocked || save.is === 'saving') return;
    const partId = logbook.newId();
    const { photos } = form.photos;
    const about = saidAbout(
      aboutOfDraft(
        form.draft,
        form.label,
        photos.map(({ photoId }) => photoId),
      ),
    );
    const entries = await run(
      { type: 'add-part', partId, place: at, ...about },
      { photos, undo: `${about.name} added` },
    );
    if (!entries) return;
    form.photos.clear();
    form.setTried(false);
    form.change({ ...emptyPart, label: undefined });
    form.clear();
    if (then === 'open') go({ at: 'part', partId }, true);
    else {
      setAdded(`${about.name} added. The next one:`);
      scrollTo(0, 0);
    }
  };
  const bike = useView('bike', { bikeId: at.on === 'bike' ? at.bikeId : '' });
  const bikeName = bike.is === 'there' ? bike.value?.bike.name : undefined;
  return (
    <Screen
      title={at.on === 'shelf' ? 'A part for the shelf' : `A part for ${bikeName ?? 'the bike'}`}
      route={`new-part ${place}`}
      back={hrefOf(back)}
      waits={<Waits />}
      actions={
        <>
          <Button kind="main" icon="check" disabled={save.is === 'saving'} onPress={() => add('open')}>
            Add it
          </Button>
          <Button disabled={save.is === 'saving'} onPress={() => add('next')}>
            Add it, then another
          </Button>
        </>
      }
    >
      <form
        class="stack part-form"
        ref={form.place}
        onSubmit={(event) => {
          event.preventDefault();
          void add('open');
        }}
      >
        {added && (
          <p role="status" class="part-added">
            {added}
          </p>
        )}
        <SaveNotice save={save} />
        <PartFields draft={form.draft} label={form.label} trouble={form.shown} change={form.change} />
        <NewPhotos taken={form.photos} alt={form.draft.name.trim() || 'The part'} />
        <Faces
          kind={form.draft.kind}
          faces={form.draft.faces}
          chosen={form.chosen}
          error={form.shown.faces}
          onFaces={(faces) => form.change({ faces })}
        />
        <button type="submit" class="unseen" tabIndex={-1} aria-hidden="true" />
      </form>
    </Screen>
  );
}

function Editing({ part, faceId }: { part: PartRow; faceId: string | undefined }) {
  const { partId } = part;
  const key = `part:${partId}`;
  const edit = useEdit(key, draftOfPart(part));
  const form = usePartForm(key, edit, partId);
  const { run, save } = useRun();
  const keep = async () => {
    form.attempt();
    if (form.blocked || save.is === 'saving') return;
    const { photos } = form.photos;
    const photoIds = [...(part.photoIds ?? []), ...photos.map(({ photoId }) => photoId)];
    const changed = changedAbout(part, aboutOfDraft(form.draft, form.label, photoIds));
    if (Object.keys(changed).length > 0) {
      const entries = await run(
        { type: 'describe-part', partId, ...changed },
        { photos, undo: `${part.name} updated` },
      );
      if (!entries) return;
    }
    form.clear();
    // Asked for by a finding, it goes back to it.
    if (faceId === undefined) go({ at: 'part', partId }, true);
    else history.back();
  };
  return (
    <Screen
      title={part.name}
      route={`edit-part ${partId}`}
      back={faceId === undefined ? hrefOf({ at: 'part', partId }) : () => history.back()}
      waits={<Waits />}
      actions={
        <Button kind="main" icon="check" disabled={save.is === 'saving'} onPress={keep}>
          Save
        </Button>
      }
    >
      <form
        class="stack part-form"
        ref={form.place}
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <SaveNotice save={save} />
        <Meanwhile changed={edit.meanwhile} labels={partLabels} onTake={edit.change} />
        <PartFields draft={form.draft} label={form.label} trouble={form.shown} change={form.change} />
        {(part.photoIds ?? []).length > 0 && <Photos photoIds={part.photoIds ?? []} alt={part.name} />}
        <NewPhotos taken={form.photos} alt={part.name} />
        <Faces
          kind={form.draft.kind}
          faces={form.draft.faces}
          chosen={form.chosen}
          asked={faceId}
          error={form.shown.faces}
          onFaces={(faces) => form.change({ faces })}
        />
      </form>
    </Screen>
  );
}

/** What is known of a part, written anew. What it said before stays in the history. */
export function EditPart({ partId, faceId }: { partId: string; faceId?: string }) {
  const seen = useView('part', { partId });
  if (seen.is === 'there' && seen.value) return <Editing part={seen.value.part} faceId={faceId} />;
  return (
    <Screen title="Part" back={hrefOf({ at: 'shelf' })} waits={<Waits />}>
      <Absent what="part" seen={[seen]} />
    </Screen>
  );
}

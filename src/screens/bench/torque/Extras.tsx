import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { PhotoFull } from '../../../controls/lists/PhotoFull.tsx';
import { PhotoStrip } from '../../../controls/lists/PhotoStrip.tsx';
import { Tile } from '../../../controls/Tile.tsx';
import { pickPicture } from '../../../sensing/pickPicture.ts';
import { useRun } from '../../door.tsx';
import { hrefOf } from '../../route.ts';
import { WheelTile } from '../../wheel/WheelTile.tsx';
import { ReasonSheet, skipReasons } from '../frame/ReasonSheet.tsx';
import { StepNoteSheet } from '../frame/StepNoteSheet.tsx';
import { keepAside } from '../keepAside.ts';
import type { StepProps } from '../stepProps.ts';
import type { Gathered } from '../useStepDraft.ts';

export interface ExtrasProps extends Pick<StepProps, 'step' | 'joint' | 'onLogged'> {
  gathered: Gathered;
  /** Tiles of this kind of step alone; they come first. */
  children?: ComponentChildren;
}

/** What can go with any step: a photo, a note, a reason to skip it, a look at the joint. */
export function Extras({ step, joint, onLogged, gathered, children }: ExtrasProps) {
  const { draft, change, photos, addPhoto, photoProblem } = gathered;
  const [open, setOpen] = useState<'note' | 'skip'>();
  const [shown, setShown] = useState<number>();
  const { run, save } = useRun();
  const prints = photos.map((photo, index) => ({
    id: photo.photoId,
    photo,
    alt: `${step.title}, ${index + 1}`,
  }));
  const skip = async (why: string) => {
    if (save.is === 'saving') return false;
    const { bikeId, stepId, jointId } = step;
    const commands = [
      ...keepAside(gathered, { bikeId, stepId, jointId }),
      { type: 'skip-step', stepId, why } as const,
    ];
    const entries = await run(commands, { photos, undo: `Skipped: ${step.title}` });
    if (!entries) return false;
    gathered.clear();
    onLogged(entries);
    return true;
  };
  return (
    <>
      <div class="tiles">
        {children}
        {joint?.kind === 'spokes' && <WheelTile bikeId={joint.bikeId} partIds={joint.partIds} />}
        <Tile
          icon="camera"
          onPress={() => pickPicture(addPhoto)}
          value={photos.length > 0 ? `${photos.length} taken` : undefined}
        >
          Photo
        </Tile>
        <Tile icon="note" onPress={() => setOpen('note')} value={draft.note.trim() || undefined}>
          Note
        </Tile>
        <Tile icon="flag" onPress={() => setOpen('skip')}>
          Skip
        </Tile>
        {joint && (
          <Tile icon="lookup" href={hrefOf({ at: 'joint', jointId: joint.jointId })}>
            Joint
          </Tile>
        )}
      </div>
      {photoProblem && (
        <p class="loud" role="alert">
          {photoProblem}
        </p>
      )}
      {photos.length > 0 && <PhotoStrip photos={prints} onOpen={setShown} />}
      <PhotoFull photos={prints} index={shown} onIndex={setShown} onClose={() => setShown(undefined)} />
      {open === 'note' && (
        <StepNoteSheet
          note={draft.note}
          onNote={(note) => change({ note })}
          onClose={() => setOpen(undefined)}
        />
      )}
      {open === 'skip' && (
        <ReasonSheet
          about={`skip:${step.stepId}`}
          title={`Skip: ${step.title}`}
          presets={skipReasons}
          act="Skip for this reason"
          save={save}
          onReason={skip}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

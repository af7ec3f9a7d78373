import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { Worktop } from '../../controls/frames/Worktop.tsx';
import { PhotoFull } from '../../controls/lists/PhotoFull.tsx';
import { PhotoStrip } from '../../controls/lists/PhotoStrip.tsx';
import { Tile } from '../../controls/Tile.tsx';
import type { JointRow } from '../../journal/rows.ts';
import { type AngleUnit, type TorqueUnit, type Typed, unitLabel, unitsOf } from '../../mechanics/units.ts';
import { nearDiscBrake } from '../../planning/lockerWait.ts';
import { rulingTarget } from '../../planning/rulingTarget.ts';
import { lockerOn } from '../../practice/bench/lockerCommand.ts';
import { keepsMoving, movedAdvice, movedAgain } from '../../practice/rechecks/movedAdvice.ts';
import { pickPicture } from '../../sensing/pickPicture.ts';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { StepNoteSheet } from '../bench/frame/StepNoteSheet.tsx';
import { LockerForm } from '../bench/locker/LockerForm.tsx';
import { NumberPad } from '../bench/torque/NumberPad.tsx';
import type { Gathered } from '../bench/useStepDraft.ts';
import { useRun } from '../door.tsx';
import { Waits } from '../Waits.tsx';
import { AppliedAndFound } from './AppliedAndFound.tsx';
import type { RecheckProps } from './recheckProps.ts';

type Pad = 'at' | 'to' | 'by';
type Torque = Typed<TorqueUnit>;

export interface MovedProps extends RecheckProps {
  joint: JointRow;
  gathered: Gathered;
  onClose: () => void;
}

/** On a button the figure keeps its unit beside it, wherever the line breaks. */
const torqueText = (torque: Torque | undefined) => torque && `${torque.typed}\u00a0${unitLabel[torque.unit]}`;

/** It moved on the way to the target: at what torque, how far, and what it was brought to. */
export function Moved(props: MovedProps) {
  const { recheck, joint, settings, toolId, gathered, onAnswered, onClose } = props;
  const { jointId, name } = joint;
  const [pad, setPad] = useState<Pad | 'note' | 'locker' | undefined>('at');
  const [typing, setTyping] = useState<{ typed: string; unit: TorqueUnit }>();
  const [degrees, setDegrees] = useState('');
  const [notRead, setNotRead] = useState(false);
  const [movedAt, setMovedAt] = useState<Torque>();
  const [broughtTo, setBroughtTo] = useState<Torque>();
  const [turned, setTurned] = useState<Typed<AngleUnit>>();
  const [shown, setShown] = useState<number>();
  const { run, save } = useRun();
  const ruling = rulingTarget(joint.targets);
  const ends = ruling.ok ? [ruling.target.torque, ...(ruling.target.upTo ? [ruling.target.upTo] : [])] : [];
  const unit = joint.applied?.applied.unit ?? ends[0]?.unit ?? settings.torqueUnit;
  const advice = movedAt && movedAdvice(joint.applied?.applied, movedAt, joint.moved);
  const locker = lockerOn(gathered.draft, joint);
  const prints = gathered.photos.map((photo, index) => ({
    id: photo.photoId,
    photo,
    alt: `${name}, ${index + 1}`,
  }));
  const log = async () => {
    if ((!movedAt && !notRead) || save.is === 'saving') return;
    const entries = await run(
      {
        type: 'find-torque',
        ...{ jointId, recheckId: recheck.recheckId },
        ...(movedAt ? { movedAt } : {}),
        outcome: 'moved',
        way: 'tightening',
        ...(turned ? { turnedDeg: turned.value } : {}),
        ...(broughtTo ? { broughtTo } : {}),
        ...(broughtTo && locker ? { between: 'threadlocker' as const, locker } : {}),
        ...(toolId ? { toolId } : {}),
        ...gathered.noteAndPhotos(),
      },
      {
        photos: gathered.photos,
        undo: movedAt ? `Moved at ${torqueText(movedAt)}: ${name}` : `Moved: ${name}`,
      },
    );
    if (!entries) return;
    gathered.clear();
    onAnswered(entries);
  };
  if (pad === 'at' || pad === 'to') {
    const set = pad === 'at' ? setMovedAt : setBroughtTo;
    return (
      <NumberPad<TorqueUnit>
        key={pad}
        title={name}
        label={pad === 'at' ? 'Moved at' : 'Brought to'}
        typed={typing?.typed ?? ''}
        unit={typing?.unit ?? unit}
        units={unitsOf.torque}
        onTyped={(typed, typedUnit) => setTyping({ typed, unit: typedUnit })}
        save={{ is: 'idle' }}
        act="Take"
        onLog={(torque) => {
          set(torque);
          setTyping({ typed: '', unit: torque.unit });
          setPad(undefined);
        }}
        onClose={() => (pad === 'at' && !movedAt && !notRead ? onClose() : setPad(undefined))}
      >
        {pad === 'at' && (
          // A click wrench says that a torque is reached, not at which a bolt gave.
          <Button
            size="greasy"
            onPress={() => {
              setMovedAt(undefined);
              setNotRead(true);
              setPad(undefined);
            }}
          >
            Moved, torque not read
          </Button>
        )}
      </NumberPad>
    );
  }
  if (pad === 'by')
    return (
      <NumberPad<AngleUnit>
        key={pad}
        title={name}
        label="Turned by"
        typed={degrees}
        unit="deg"
        units={['deg']}
        onTyped={setDegrees}
        save={{ is: 'idle' }}
        act="Take"
        onLog={(angle) => {
          setTurned(angle);
          setPad(undefined);
        }}
        onClose={() => setPad(undefined)}
      />
    );
  const single = ends.length === 1 ? ends[0] : undefined;
  return (
    <Screen
      title={name}
      route={`moved ${recheck.recheckId}`}
      back={onClose}
      waits={<Waits />}
      actions={
        <BenchActs
          save={save}
          main={
            <Button
              kind="main"
              size="greasy"
              icon="pencil"
              disabled={!movedAt && !notRead}
              under={broughtTo ? `and brought to ${torqueText(broughtTo)}` : 'and left as it is'}
              onPress={log}
            >
              {movedAt || !notRead
                ? `Log: moved at ${torqueText(movedAt) ?? '…'}`
                : 'Log: moved, torque not read'}
            </Button>
          }
        />
      }
    >
      <Worktop>
        {keepsMoving(joint.moved) && (
          <Notice kind="error" title={joint.moved === 1 ? 'The second time it moved' : 'It keeps moving'}>
            {movedAgain}
          </Notice>
        )}
        <AppliedAndFound joint={joint} unit={settings.torqueUnit} />
        {advice && <p class="far">{advice}</p>}
        <div class="tiles">
          <Tile icon="warning" onPress={() => setPad('at')} value={torqueText(movedAt)}>
            Moved at
          </Tile>
          <Tile icon="spanner" onPress={() => setPad('to')} value={torqueText(broughtTo)}>
            Brought to
          </Tile>
          {broughtTo && (
            <Tile
              icon="drop"
              onPress={() => setPad('locker')}
              value={locker ? 'Fresh, cure starts' : 'None applied'}
            >
              {'Thread\u00adlocker'}
            </Tile>
          )}
          <Tile icon="undo" onPress={() => setPad('by')} value={turned && `${turned.typed}°`}>
            Turned by
          </Tile>
          <Tile
            icon="camera"
            onPress={() => pickPicture(gathered.addPhoto)}
            value={prints.length > 0 ? `${prints.length} taken` : undefined}
          >
            Photo
          </Tile>
          <Tile icon="note" onPress={() => setPad('note')} value={gathered.draft.note.trim() || undefined}>
            Note
          </Tile>
        </div>
        {single && !broughtTo && (
          <Button wide size="greasy" icon="spanner" onPress={() => setBroughtTo(single)}>
            {`Brought to the target, ${torqueText(single)}`}
          </Button>
        )}
        {gathered.photoProblem && (
          <p class="loud" role="alert">
            {gathered.photoProblem}
          </p>
        )}
        {prints.length > 0 && <PhotoStrip photos={prints} onOpen={setShown} />}
      </Worktop>
      <PhotoFull photos={prints} index={shown} onIndex={setShown} onClose={() => setShown(undefined)} />
      {pad === 'locker' && (
        <Sheet
          open
          title={`Threadlocker: ${name}`}
          onClose={() => setPad(undefined)}
          actions={
            <Button
              kind="main"
              size="greasy"
              icon="drop"
              disabled={!locker}
              under={locker ? undefined : 'Choose grade and surface first'}
              onPress={() => setPad(undefined)}
            >
              Take
            </Button>
          }
        >
          <LockerForm
            draft={gathered.draft}
            change={gathered.change}
            nearDiscBrake={nearDiscBrake(joint)}
            screwed
            temperatureUnit={settings.temperatureUnit}
          />
        </Sheet>
      )}
      {pad === 'note' && (
        <StepNoteSheet
          note={gathered.draft.note}
          onNote={(note) => gathered.change({ note })}
          onClose={() => setPad(undefined)}
        />
      )}
    </Screen>
  );
}

import './seal.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Countdown } from '../../controls/Countdown.tsx';
import { Icon } from '../../controls/Icon.tsx';
import { Notice } from '../../controls/Notice.tsx';
import { PhotoFull } from '../../controls/PhotoFull.tsx';
import { PhotoStrip } from '../../controls/PhotoStrip.tsx';
import { Ruler } from '../../controls/Ruler.tsx';
import { Screen } from '../../controls/Screen.tsx';
import { StepCard } from '../../controls/StepCard.tsx';
import type { Reading, SealMark, Settings } from '../../journal/entries.ts';
import type { Views } from '../../logbook.ts';
import { cautions } from '../../standards/releaseRules.ts';
import { Awake } from '../bench/Awake.tsx';
import { NoteSheet } from '../bench/NoteSheet.tsx';
import { SaveLine } from '../bench/SaveLine.tsx';
import { useSteadyTap } from '../bench/steadyTap.ts';
import { useStepDraft } from '../bench/stepDraft.ts';
import { Tile } from '../bench/Tile.tsx';
import { useNow, useRun } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { Ceiling } from './Ceiling.tsx';
import { LookAgainSheet } from './LookAgainSheet.tsx';
import { LIE_MS } from './lookAgain.ts';
import { ReadingPad } from './ReadingPad.tsx';
import { SealantPad } from './SealantPad.tsx';
import { SealMarks } from './SealMarks.tsx';
import { SealTiles } from './SealTiles.tsx';
import { type Seated, SeatedSheet } from './SeatedSheet.tsx';
import { SoapSheet } from './SoapSheet.tsx';
import { noSealDraft, type SealDraft } from './sealDraft.ts';
import { nextOfSeal, type SealNext } from './sealOrder.ts';
import { markNames, sealTexts, verdictWords } from './sealText.ts';
import { sealantHint, sealCeiling, withSealant } from './tyreOnRim.ts';
import { VerdictSheet } from './VerdictSheet.tsx';

export type SealView = NonNullable<Views['joint']['gives']>;

type Padded = 'reading' | 'dry-reading' | 'pumped' | 'let-down' | 'seated';
type Open =
  | { at: 'pad'; mark: Padded }
  | { at: 'seated' | 'sealant' | 'soaped' | 'verdict' | 'look' | 'note' };

const padTitles: Record<Padded, string> = {
  reading: 'Pressure',
  'dry-reading': 'Pressure, dry',
  pumped: 'Pumped up to',
  'let-down': 'Let down to',
  seated: 'Seated at',
};

/** What the big button says for the work suggested next. */
const acts: Record<SealNext, { words: string; mark: SealMark['mark']; under?: string }> = {
  seated: { words: 'It is on its seats', mark: 'seated', under: 'Asks for the bead line' },
  sealant: { words: 'Sealant is in', mark: 'sealant', under: 'Asks for kind and amount' },
  'spun-and-shaken': { words: 'Spun and shaken', mark: 'spun-and-shaken' },
  'laid-left': { words: 'Lies on its left', mark: 'laid-left', under: 'Look again in 30 min' },
  'laid-right': { words: 'Lies on its right', mark: 'laid-right', under: 'Look again in 30 min' },
  soaped: { words: 'Soap is on', mark: 'soaped', under: 'Asks where bubbles are' },
  reading: { words: 'Type the pressure', mark: 'reading' },
  verdict: { words: 'Judge it', mark: 'verdict' },
  wait: { words: 'Read it early', mark: 'reading' },
  settled: { words: 'Read the pressure', mark: 'reading' },
};

/** The seal of one wheel: what to do next, the look that is asked for, and every mark made. */
export function SealWork({
  view,
  settings,
  stepId,
}: {
  view: SealView;
  settings: Settings;
  stepId?: string;
}) {
  const { joint, bike, parts, waits, seal } = view;
  const { jointId, bikeId, name } = joint;
  const nowMs = useNow(1000);
  const marks = seal?.marks ?? [];
  const [open, setOpen] = useState<Open>();
  const [seated, setSeated] = useState<Seated>();
  const [shown, setShown] = useState<number>();
  const [draft, change, clearDraft] = useDraft<SealDraft>(`seal:${jointId}`, noSealDraft);
  const gathered = useStepDraft(`seal-${jointId}`, undefined);
  const { run, save, clear } = useRun();
  const steady = useSteadyTap();

  const wait = waits.find(({ waitKind, endedAtMs }) => waitKind === 'seal' && endedAtMs === undefined);
  const dueAtMs = wait?.dueAtMs;
  const look = dueAtMs === undefined ? 'none' : dueAtMs > nowMs ? 'running' : 'over';
  const wet = withSealant(parts);
  const next = nextOfSeal(marks, look, wet);
  const text = sealTexts[next];
  const ceiling = sealCeiling(parts);
  const uneven = marks.findLast(({ mark }) => mark === 'seated');
  const sealantIn = marks.some(({ mark }) => mark === 'sealant');
  const gauges = [
    ...new Set(
      marks
        .toReversed()
        .flatMap((mark) => ('reading' in mark && mark.reading?.gauge ? [mark.reading.gauge] : [])),
    ),
  ].slice(0, 3);
  const gauge = draft.gauge ?? gauges[0];
  const withGauge: SealDraft = { ...draft, ...(gauge === undefined ? {} : { gauge }) };

  const close = () => {
    setOpen(undefined);
    setSeated(undefined);
    clear();
  };
  const log = async (mark: SealMark, lookAgainMs?: number) => {
    if (save.is === 'saving') return;
    const entries = await run(
      {
        type: 'mark-seal',
        ...{ jointId, mark },
        ...(mark.mark === 'seated' && stepId ? { stepId } : {}),
        ...gathered.said(),
        ...(lookAgainMs === undefined ? {} : { lookAgainMs }),
      },
      { photos: gathered.photos, undo: `${markNames[mark.mark]}: ${name}` },
    );
    if (!entries) return;
    setOpen(undefined);
    setSeated(undefined);
    change({ pressure: '', temperature: '', below: false, amount: '' });
    clearDraft();
    gathered.change({ note: '' });
    gathered.clear();
  };
  const lookAgain = async (ms: number) => {
    if (save.is === 'saving') return;
    const undo = 'The look is set';
    const entries = wait
      ? await run(
          {
            type: 'change-wait',
            waitId: wait.waitId,
            // A wait counts from when it began, not from this tap.
            waitMs: ms + nowMs - wait.startedAtMs,
            why: 'Look again set anew at the wheel',
          },
          { undo },
        )
      : await run({ type: 'start-wait', bikeId, jointId, kind: 'seal', title: name, waitMs: ms }, { undo });
    if (entries) setOpen(undefined);
  };
  const logReading = (mark: Padded, reading: Reading | undefined, lookAgainMs: number | undefined) => {
    if (mark === 'seated' && seated) void log({ ...seated, ...(reading ? { reading } : {}) }, lookAgainMs);
    else if (mark === 'let-down') void log({ mark, ...(reading ? { reading } : {}) }, lookAgainMs);
    else if (mark !== 'seated' && reading) void log({ mark, reading }, lookAgainMs);
  };
  const make = (mark: SealMark['mark'], lookAgainMs?: number) => {
    clear();
    switch (mark) {
      case 'seated':
      case 'sealant':
      case 'soaped':
      case 'verdict':
        return setOpen({ at: mark });
      case 'reading':
      case 'dry-reading':
      case 'pumped':
      case 'let-down':
        return setOpen({ at: 'pad', mark });
      default:
        return void log({ mark }, lookAgainMs);
    }
  };

  const limit = <Ceiling ceiling={ceiling} unit={settings.pressureUnit} />;
  if (open?.at === 'pad')
    return (
      <ReadingPad
        title={`${padTitles[open.mark]}: ${name}`}
        {...{ settings, change, gauges, save }}
        draft={withGauge}
        ceilingBar={ceiling.ok ? ceiling.ceilingBar : undefined}
        ceiling={limit}
        needed={open.mark !== 'let-down' && open.mark !== 'seated'}
        onLog={(reading, lookAgainMs) => logReading(open.mark, reading, lookAgainMs)}
        onClose={close}
      />
    );
  if (open?.at === 'sealant')
    return (
      <SealantPad
        {...{ draft, change, save }}
        hint={sealantHint(parts, sealantIn)}
        refill={sealantIn}
        onSealant={(mark) => void log(mark)}
        onClose={close}
      />
    );

  const act = acts[next];
  const lies = next === 'laid-left' || next === 'laid-right';
  const press = steady(() => make(act.mark, lies ? LIE_MS : undefined));
  const quietly = next === 'wait' || next === 'settled';
  const prints = gathered.photos.map((photo, index) => ({
    id: photo.photoId,
    photo,
    alt: `${name}, ${index + 1}`,
  }));
  return (
    <Screen
      title={name}
      route={`seal ${jointId}`}
      back={hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
      actions={
        <>
          <SaveLine save={save} />
          <Button
            kind={quietly ? 'plain' : 'main'}
            size="greasy"
            wide
            icon={text.icon}
            under={act.under}
            onPress={press}
          >
            {act.words}
          </Button>
          {lies && (
            <Button size="greasy" onPress={steady(() => make(act.mark))}>
              Log only
            </Button>
          )}
          <Button
            size="greasy"
            icon="hourglass"
            onPress={() => {
              clear();
              setOpen({ at: 'look' });
            }}
          >
            Look again
          </Button>
        </>
      }
    >
      <div class="bench">
        <StepCard
          title={text.order}
          icon={text.icon}
          state={next === 'settled' ? 'done' : next === 'wait' ? 'waits' : look === 'over' ? 'due' : 'open'}
          stateWord={
            next === 'settled'
              ? verdictWords.holds
              : next === 'wait'
                ? 'Waits'
                : look === 'over'
                  ? 'Look now'
                  : seal?.verdict
                    ? verdictWords[seal.verdict]
                    : 'Next'
          }
          caption={bike?.name ?? 'Seal'}
        >
          <p class="bench-read">{text.how}</p>
          {next === 'seated' && uneven?.mark === 'seated' && uneven.beadLine === 'uneven' && (
            <p class="bench-loud">
              <Icon name="warning" sizePx={24} />
              The bead line was uneven. Let it down, wet the bead, seat it again: more pressure is no cure.
            </p>
          )}
          {limit}
        </StepCard>
        {next === 'seated' && (
          <Notice kind="caution" title="Before you pump">
            {cautions.tyre}
          </Notice>
        )}
        {wait && dueAtMs !== undefined && (
          <Countdown label="Look again" dueAtMs={dueAtMs} nowMs={nowMs} sinceMs={wait.startedAtMs} />
        )}
        <Ruler label="Any mark, in any order" />
        <SealTiles marks={marks} nowMs={nowMs} onMark={(mark) => make(mark)} />
        <div class="tiles">
          <Tile
            icon="camera"
            onFile={gathered.addPhoto}
            value={gathered.photos.length > 0 ? `${gathered.photos.length} taken` : undefined}
          >
            Photo
          </Tile>
          <Tile
            icon="note"
            onPress={() => setOpen({ at: 'note' })}
            value={gathered.draft.note.trim() || undefined}
          >
            Note
          </Tile>
          <Tile icon="lookup" href={hrefOf({ at: 'joint', jointId })}>
            Joint
          </Tile>
        </div>
        {(prints.length > 0 || gathered.draft.note.trim() !== '') && (
          <p class="bench-read">Goes with the next mark.</p>
        )}
        {gathered.photoProblem && (
          <p class="bench-loud" role="alert">
            {gathered.photoProblem}
          </p>
        )}
        {prints.length > 0 && <PhotoStrip photos={prints} onOpen={setShown} />}
        <SealMarks jointId={jointId} marks={marks} unit={settings.pressureUnit} />
        <Awake />
      </div>
      <PhotoFull photos={prints} index={shown} onIndex={setShown} onClose={() => setShown(undefined)} />
      {open?.at === 'seated' && (
        <SeatedSheet
          sealantIn={sealantIn}
          save={save}
          onSeated={(mark, goesOnTo) => {
            if (goesOnTo === 'log') return void log(mark);
            setSeated(mark);
            setOpen({ at: 'pad', mark: 'seated' });
          }}
          onClose={close}
        />
      )}
      {open?.at === 'soaped' && <SoapSheet save={save} onSoaped={(mark) => void log(mark)} onClose={close} />}
      {open?.at === 'verdict' && (
        <VerdictSheet save={save} onVerdict={(mark, ms) => void log(mark, ms)} onClose={close} />
      )}
      {open?.at === 'look' && (
        <LookAgainSheet save={save} onSpan={(ms) => void lookAgain(ms)} onClose={close} />
      )}
      {open?.at === 'note' && (
        <NoteSheet note={gathered.draft.note} onNote={(note) => gathered.change({ note })} onClose={close} />
      )}
    </Screen>
  );
}

import './seal.css';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { SealCurve } from '../../controls/figures/SealCurve.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Worktop } from '../../controls/frames/Worktop.tsx';
import { sealCeiling, withSealant } from '../../fit/tyreCeiling.ts';
import type { Id, Reading, SealMark, Settings } from '../../journal/entries.ts';
import type { Views } from '../../logbook.ts';
import { AGAIN_MS, LIE_MS } from '../../practice/seal/lookAgain.ts';
import { askedBy, sealActs } from '../../practice/seal/sealActs.ts';
import { nextOfSeal } from '../../practice/seal/sealOrder.ts';
import { sealOutlook } from '../../practice/seal/sealOutlook.ts';
import { sealantHint, tyreLitres } from '../../practice/seal/tyreOnRim.ts';
import { unitsOfMarks } from '../../practice/seal/unitsOfMarks.ts';
import { Awake } from '../bench/Awake.tsx';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { useSteadyTap } from '../bench/steadyTap.ts';
import { useNow } from '../door.tsx';
import { useReminders } from '../reminders/useReminders.ts';
import { go, hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { SealCard } from './SealCard.tsx';
import { SealMarks } from './SealMarks.tsx';
import { SealState } from './SealState.tsx';
import { SealTiles } from './SealTiles.tsx';
import { markNames, sealTexts } from './sealText.ts';
import { LookAgainSheet } from './sheets/LookAgainSheet.tsx';
import { NextMarkExtras } from './sheets/NextMarkExtras.tsx';
import { ReadingPad } from './sheets/ReadingPad.tsx';
import { SealantPad } from './sheets/SealantPad.tsx';
import { type Seated, SeatedSheet } from './sheets/SeatedSheet.tsx';
import { SoapSheet } from './sheets/SoapSheet.tsx';
import { VerdictSheet } from './sheets/VerdictSheet.tsx';
import { useSealMarks } from './useSealMarks.ts';

export type SealView = NonNullable<Views['joint']['gives']>;

export interface SealWorkProps {
  view: SealView;
  settings: Settings;
  /** The step of the plan that a seating finishes. */
  stepId?: Id;
  /** What was asked for from a notice: `again` or `verdict`. */
  asked: string | undefined;
}

type Open = 'look' | SealMark['mark'];

/** The mark a typed reading becomes; a seating was asked for its bead line before. */
function withReading(
  mark: Open,
  seated: Seated | undefined,
  reading: Reading | undefined,
): SealMark | undefined {
  if (mark === 'seated') return seated && { ...seated, ...(reading ? { reading } : {}) };
  if (mark === 'let-down') return { mark, ...(reading ? { reading } : {}) };
  if (mark === 'riding') {
    const { pressure, temperature } = reading ?? {};
    return pressure && { mark, pressure, ...(temperature ? { temperature } : {}) };
  }
  if (mark === 'reading' || mark === 'dry-reading' || mark === 'pumped') return reading && { mark, reading };
  return undefined;
}

/** The seal of one wheel: what to do next, the look that is asked for, and every mark made. */
export function SealWork({ view, settings, stepId, asked }: SealWorkProps) {
  const { joint, bike, parts, waits, seal } = view;
  const { jointId, bikeId, name } = joint;
  const nowMs = useNow(1000);
  const reminders = useReminders();
  const [open, setOpen] = useState<Open | undefined>(asked === 'verdict' ? 'verdict' : undefined);
  const [seated, setSeated] = useState<Seated>();
  const wait = waits.find(({ waitKind, endedAtMs }) => waitKind === 'seal' && endedAtMs === undefined);
  const { draft, change, gathered, save, clear, log, lookAgain } = useSealMarks(joint, stepId, wait);
  const steady = useSteadyTap();
  useEffect(() => {
    if (asked !== 'again') return;
    // Gone from the address first, so that a reload does not ask again.
    go({ at: 'seal', jointId }, true);
    void lookAgain(AGAIN_MS);
  }, []);

  const marks = seal?.marks ?? [];
  const look = wait?.dueAtMs === undefined ? 'none' : wait.dueAtMs > nowMs ? 'running' : 'over';
  const next = nextOfSeal(marks, look, withSealant(parts));
  const ceiling = sealCeiling(parts);
  const outlook = useMemo(() => sealOutlook(marks, tyreLitres(parts)), [seal, parts]);
  const sealantIn = marks.some(({ mark }) => mark === 'sealant');
  const gauges = marks
    .toReversed()
    .flatMap((mark) => ('reading' in mark && mark.reading?.gauge ? [mark.reading.gauge] : []));

  const shut = () => {
    setOpen(undefined);
    setSeated(undefined);
    clear();
  };
  const keep = async (mark: SealMark, lookAgainMs?: number, overLimit?: true) => {
    if (!(await log(mark, lookAgainMs, overLimit))) return;
    setOpen(undefined);
    setSeated(undefined);
  };
  const make = (mark: SealMark['mark'], lookAgainMs?: number) => {
    clear();
    if (askedBy[mark] !== 'tap') setOpen(mark);
    else void keep({ mark } as SealMark, lookAgainMs);
  };

  if (open && open !== 'look' && (askedBy[open] === 'pad' || (open === 'seated' && seated)))
    return (
      <ReadingPad
        title={`${markNames[open]}: ${name}`}
        {...{ change, save }}
        settings={{ ...settings, ...unitsOfMarks(marks) }}
        draft={{ ...draft, ...(draft.gauge === undefined && gauges[0] ? { gauge: gauges[0] } : {}) }}
        gauges={[...new Set(gauges)].slice(0, 3)}
        ceilingBar={ceiling.ok ? ceiling.ceilingBar : undefined}
        needed={open !== 'let-down' && open !== 'seated'}
        onLog={(reading, lookAgainMs, overLimit) => {
          const mark = withReading(open, seated, reading);
          if (mark) void keep(mark, lookAgainMs, overLimit);
        }}
        onClose={shut}
      />
    );
  if (open === 'sealant')
    return (
      <SealantPad
        {...{ draft, change, save }}
        hint={sealantHint(parts, sealantIn)}
        refill={sealantIn}
        onSealant={(mark) => void keep(mark)}
        onClose={shut}
      />
    );

  const act = sealActs[next];
  const lies = next === 'laid-left' || next === 'laid-right';
  return (
    <Screen
      title={name}
      route={`seal ${jointId}`}
      back={hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
      actions={
        <BenchActs
          save={save}
          main={
            <Button
              kind={next === 'wait' || next === 'settled' ? 'plain' : 'main'}
              size="greasy"
              wide
              icon={sealTexts[next].icon}
              under={act.under}
              onPress={steady(() => make(act.mark, lies ? LIE_MS : undefined))}
            >
              {act.words}
            </Button>
          }
        >
          {lies && (
            <Button size="greasy" icon="pencil" onPress={steady(() => make(act.mark))}>
              Log only
            </Button>
          )}
          <Button
            size="greasy"
            icon="hourglass"
            onPress={() => {
              clear();
              setOpen('look');
            }}
          >
            Look again
          </Button>
        </BenchActs>
      }
    >
      <Worktop>
        <SealCard
          {...{ next, marks, ceiling, wait, nowMs }}
          bikeName={bike?.name ?? 'Seal'}
          dose={next === 'sealant' ? sealantHint(parts, sealantIn) : undefined}
          verdict={seal?.verdict}
          unit={settings.pressureUnit}
        />
        <SealState {...{ outlook, nowMs }} unit={settings.pressureUnit} />
        <SealCurve
          outlook={outlook}
          ceilingBar={ceiling.ok ? ceiling.ceilingBar : undefined}
          unit={settings.pressureUnit}
        />
        {wait && look === 'running' && reminders && <reminders.WhenOver wait={wait} />}
        <Ruler label="Log anything" />
        <SealTiles marks={marks} nowMs={nowMs} onMark={(mark) => make(mark)} />
        <NextMarkExtras {...{ joint, gathered }} />
        <SealMarks jointId={jointId} marks={marks} />
        <Awake />
      </Worktop>
      {open === 'seated' && (
        <SeatedSheet
          {...{ sealantIn, save }}
          onSeated={(mark, goesOnTo) => (goesOnTo === 'log' ? void keep(mark) : setSeated(mark))}
          onClose={shut}
        />
      )}
      {open === 'soaped' && <SoapSheet save={save} onSoaped={(mark) => void keep(mark)} onClose={shut} />}
      {open === 'verdict' && (
        <VerdictSheet save={save} onVerdict={(mark, ms) => void keep(mark, ms)} onClose={shut} />
      )}
      {open === 'look' && (
        <LookAgainSheet
          save={save}
          suggestedMs={outlook.look && Math.max(0, outlook.look.atMs - nowMs)}
          onSpan={async (ms) => {
            if (await lookAgain(ms)) setOpen(undefined);
          }}
          onClose={shut}
        />
      )}
    </Screen>
  );
}

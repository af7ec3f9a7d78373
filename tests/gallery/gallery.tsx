import { render } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../src/controls/Button.tsx';
import { Choice } from '../../src/controls/fields/Choice.tsx';
import { DateTimeField } from '../../src/controls/fields/DateTimeField.tsx';
import { Keypad } from '../../src/controls/fields/Keypad.tsx';
import { NumberField } from '../../src/controls/fields/NumberField.tsx';
import { TextField } from '../../src/controls/fields/TextField.tsx';
import { Toggle } from '../../src/controls/fields/Toggle.tsx';
import { BigNumber } from '../../src/controls/figures/BigNumber.tsx';
import { Countdown } from '../../src/controls/figures/Countdown.tsx';
import { Gauge } from '../../src/controls/figures/Gauge.tsx';
import { Plot } from '../../src/controls/figures/Plot.tsx';
import { Progress } from '../../src/controls/figures/Progress.tsx';
import { Ruler } from '../../src/controls/figures/Ruler.tsx';
import { Stamp } from '../../src/controls/figures/Stamp.tsx';
import { Tally } from '../../src/controls/figures/Tally.tsx';
import { Notice } from '../../src/controls/frames/Notice.tsx';
import { Screen } from '../../src/controls/frames/Screen.tsx';
import { Sheet } from '../../src/controls/frames/Sheet.tsx';
import { StepCard } from '../../src/controls/frames/StepCard.tsx';
import { UndoBar } from '../../src/controls/frames/UndoBar.tsx';
import { WaitsStrip } from '../../src/controls/frames/WaitsStrip.tsx';
import { HoldButton } from '../../src/controls/HoldButton.tsx';
import { drawings, Icon, type IconName } from '../../src/controls/Icon.tsx';
import { Filters } from '../../src/controls/lists/Filters.tsx';
import { ListRow } from '../../src/controls/lists/ListRow.tsx';
import { PhotoFull } from '../../src/controls/lists/PhotoFull.tsx';
import { PhotoStrip } from '../../src/controls/lists/PhotoStrip.tsx';
import { WindowedList } from '../../src/controls/lists/WindowedList.tsx';
import type { TorqueUnit } from '../../src/mechanics/units.ts';

const NOW_MS = Date.UTC(2026, 10, 25, 13, 10);
const waits = [
  { id: 'locker', label: 'Threadlocker: Rotor bolts', where: 'Magpie', dueAtMs: NOW_MS + 1_100_000 },
  { id: 'tyre', label: 'Seal: Rear tyre', where: 'Magpie', dueAtMs: NOW_MS + 9_000_000 },
];
const late = [
  {
    id: 'locker',
    label: 'Threadlocker: Six bolts of the front rotor',
    where: 'Magpie',
    dueAtMs: NOW_MS - 700_000,
  },
];
const torqueUnits = ['N.m', '[in_i].[lbf_av]', 'kgf.cm'] as const;

function Bench() {
  return (
    <Screen
      title="Magpie"
      back="#lists"
      waits={<WaitsStrip waits={waits} nowMs={NOW_MS} href="#waits" />}
      actions={
        <>
          <Button kind="main" size="greasy" icon="check" under="5 N·m, pass 1 of 2">
            Applied
          </Button>
          <Button size="greasy">Other value</Button>
          <Button size="greasy">Skip</Button>
        </>
      }
    >
      <div class="stack">
        <Progress at={7} of={23} open={[3]} />
        <StepCard
          title="Tighten the face plate, crosswise"
          icon="spanner"
          state="open"
          caption="Stem and bar"
        >
          <BigNumber label="Target" value="5" unit="N·m" source="printed on the stem" />
          <Tally of={4} done={1} pass={{ at: 1, of: 2 }} />
        </StepCard>
      </div>
    </Screen>
  );
}

function Lists() {
  return (
    <Screen title="Everything that is open on Magpie before it may be ridden" back={() => undefined}>
      <ListRow
        state="open"
        title="Face plate, 4 bolts"
        detail="Stem on bar, shim 31.8 to 26.0"
        icon="bolt"
        end="5 N·m"
        href="#a"
      />
      <ListRow
        state="due"
        stateWord="Due Saturday"
        title="Crank pinch bolts"
        detail="Re-check after the first ride"
        icon="bell"
        end="12 to 14 N·m"
        href="#b"
      />
      <ListRow state="waits" stateWord="Waits until 14:32" title="Rear tyre, sealant" icon="tyre" href="#c" />
      <ListRow
        state="done"
        stateWord="Done 14:02"
        title="Bottom bracket cups"
        icon="press"
        end="40 N·m"
        href="#d"
      />
      <ListRow
        state="noted"
        title="One-way change: frame cold-set from 120 to 130"
        detail="Rear triangle of the steel track frame, a name long enough to break the line"
        icon="file"
        onPress={() => undefined}
      />
      <ListRow title="Plain line" end="12" />
      <div style={{ display: 'flex', flexWrap: 'wrap' }}>
        <Stamp kind="released" line="25 Nov 2026, 14:10" />
        <Stamp kind="held" line="2 joints open" />
        <Stamp kind="applied" line="5 N·m" />
      </div>
      <div class="stack">
        <Notice kind="empty" title="No bike yet" action={<Button kind="main">Add a bike</Button>}>
          A card is filled in at the bench.
        </Notice>
        <Notice kind="error" title="Not saved">
          The phone would not write. What you typed is still here.
        </Notice>
        <Notice kind="caution" title="Brake work">
          Have it checked by a qualified mechanic before riding.
        </Notice>
        <Notice kind="note" title="Backed up today" />
      </div>
    </Screen>
  );
}

function Keys() {
  const [typed, setTyped] = useState('5,2');
  const [unit, setUnit] = useState<TorqueUnit>('N.m');
  return (
    <Screen
      title="Other value"
      back="#bench"
      actions={
        <Button kind="main" size="greasy" icon="check">
          Write it down
        </Button>
      }
    >
      <Keypad
        label="Torque applied"
        typed={typed}
        unit={unit}
        units={torqueUnits}
        locale="de"
        onTyped={(text, chosen) => {
          setTyped(text);
          setUnit(chosen);
        }}
      />
    </Screen>
  );
}

function Form() {
  const [words, setWords] = useState('Saddle, came off Ferry');
  const [pick, setPick] = useState<'file' | 'saw' | 'coldset' | undefined>('coldset');
  const [on, setOn] = useState(true);
  return (
    <Screen
      title="One-way change"
      back="#lists"
      actions={
        <HoldButton onHeld={() => setOn(false)} icon="flag">
          Sign off
        </HoldButton>
      }
    >
      <div class="stack">
        <TextField label="Part" value={words} onInput={setWords} hint="As it is called on the shelf" />
        <TextField label="Why" value="" onInput={setWords} lines={3} error="Say why in a few words." />
        <NumberField
          label="Spacing before"
          typed="120"
          unit="mm"
          units={['mm', '[in_i]']}
          onTyped={() => undefined}
        />
        <NumberField
          label="Spacing after"
          typed="13o"
          unit="mm"
          onTyped={() => undefined}
          error="This is not a number."
        />
        <DateTimeField label="When" atMs={NOW_MS} onAt={() => undefined} />
        <Choice
          label="What was done"
          value={pick}
          onChoose={setPick}
          options={[
            { value: 'file', label: 'Filed', icon: 'file' },
            { value: 'saw', label: 'Cut', icon: 'saw', hint: 'What is left is measured next' },
            { value: 'coldset', label: 'Cold-set', icon: 'press' },
          ]}
        />
        <Toggle label="Checked by a second person" hint="Name goes on the card" on={on} onToggle={setOn} />
        <Toggle label="Not possible here" on={false} onToggle={setOn} disabled />
        <HoldButton kind="plain" icon="cross" onHeld={() => undefined}>
          Void this entry
        </HoldButton>
        <Button disabled>Not yet</Button>
        <Button>Plain</Button>
      </div>
    </Screen>
  );
}

function Waits() {
  const [sheet, setSheet] = useState(false);
  return (
    <Screen
      title="Waits"
      back="#lists"
      undo={
        <UndoBar text="5 N·m applied to the face plate" onUndo={() => undefined} onGone={() => undefined} />
      }
    >
      <div class="stack">
        <Countdown
          label="Threadlocker sets"
          nowMs={NOW_MS}
          sinceMs={NOW_MS - 600_000}
          dueAtMs={NOW_MS + 1_100_000}
        />
        <Countdown label="Tyre seals" nowMs={NOW_MS} dueAtMs={NOW_MS - 2_520_000} />
        <Countdown label="Glue" nowMs={NOW_MS} dueAtMs={NOW_MS + 94_000_000} />
        <Button onPress={() => setSheet(true)}>Open the sheet</Button>
      </div>
      <Sheet
        open={sheet}
        title="Not sure"
        onClose={() => setSheet(false)}
        actions={
          <Button kind="main" size="greasy">
            Redo it
          </Button>
        }
      >
        <p>Was the face plate tightened before the telephone rang?</p>
      </Sheet>
    </Screen>
  );
}

const photos = ['#8a5a3c', '#3c5a8a'].map((paint, index) => {
  const drawn = `<svg xmlns="http://www.w3.org/2000/svg" width="300" height="200"><rect width="300" height="200" fill="${paint}"/></svg>`;
  const buf = new TextEncoder().encode(drawn).buffer;
  return {
    id: String(index),
    photo: { buf, type: 'image/svg+xml' },
    alt: index ? 'Track end after filing' : 'Crown seat',
  };
});

function Pictures() {
  const [index, setIndex] = useState<number>();
  const [on, setOn] = useState<'open' | 'all' | 'done'>('open');
  return (
    <Screen title="Readings" back="#lists" waits={<WaitsStrip waits={late} nowMs={NOW_MS} href="#waits" />}>
      <div class="stack">
        <Filters
          label="Show"
          on={[on]}
          onToggle={setOn}
          tabs={[
            { value: 'open', label: 'Open', count: 3, icon: 'ring' },
            { value: 'done', label: 'Done', count: 19, icon: 'check' },
            { value: 'all', label: 'All' },
          ]}
        />
        <Ruler label="Pressure" end={<span class="small">two tyres</span>} />
        <Gauge
          label="Rear"
          value={2.9}
          text="2.9 bar"
          band={{ lo: 2.5, hi: 3.5 }}
          bandText="2.5 to 3.5 bar"
        />
        <Gauge
          label="Front"
          value={2.1}
          text="2.1 bar"
          band={{ lo: 2.5, hi: 3.5 }}
          bandText="2.5 to 3.5 bar"
        />
        <Gauge
          label="Spare"
          value={undefined}
          text=""
          band={{ lo: 2.5, hi: 3.5 }}
          bandText="2.5 to 3.5 bar"
        />
        <Ruler label="Torque found at re-checks" />
        <Plot
          label="Face plate"
          joined
          points={[
            { x: 0, y: 5 },
            { x: 12, y: 4.8 },
            { x: 40, y: 3.9 },
            { x: 41, y: 5 },
            { x: 90, y: 4.9 },
          ]}
          band={{ lo: 4.5, hi: 5.5 }}
          xLabel="days"
          yLabel="N·m"
        />
        <Ruler />
        <PhotoStrip photos={photos} onOpen={setIndex} onAdd={() => undefined} />
      </div>
      <PhotoFull photos={photos} index={index} onIndex={setIndex} onClose={() => setIndex(undefined)} />
    </Screen>
  );
}

function Long() {
  const [count, setCount] = useState(200);
  return (
    <Screen title="History" back="#lists">
      <WindowedList
        label="Entries"
        count={count}
        total={1000}
        rowKey={(row) => row}
        onNearEnd={() => setCount((now) => Math.min(1000, now + 200))}
        renderRow={(row) => (
          <ListRow
            state={row % 7 ? 'done' : 'open'}
            title={`Entry ${row + 1}${row % 5 ? '' : ', with a title long enough for a second line of the card'}`}
            detail={row % 3 ? undefined : 'Bottom bracket cups, three spacers under them'}
            href={`#entry${row}`}
          />
        )}
      />
    </Screen>
  );
}

const iconNames = Object.keys(drawings) as IconName[];

function Icons() {
  return (
    <Screen title="Drawings" back="#lists">
      <div
        style={{
          display: 'grid',
          gridTemplateColumns: 'repeat(4, 1fr)',
          gap: '18px 8px',
          textAlign: 'center',
        }}
      >
        {iconNames.map((name) => (
          <div key={name}>
            <Icon name={name} sizePx={40} />
            <div class="small">{name}</div>
          </div>
        ))}
      </div>
    </Screen>
  );
}

const cards = {
  bench: Bench,
  lists: Lists,
  keys: Keys,
  form: Form,
  waits: Waits,
  pictures: Pictures,
  long: Long,
  icons: Icons,
};

function Gallery() {
  const [name, setName] = useState(location.hash.slice(1));
  window.onhashchange = () => setName(location.hash.slice(1));
  const Card = cards[name as keyof typeof cards] ?? Lists;
  return <Card />;
}

const theme = new URLSearchParams(location.search).get('theme');
if (theme) document.documentElement.dataset['theme'] = theme;
render(<Gallery />, document.getElementById('app') as HTMLElement);

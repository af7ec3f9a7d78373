import { render } from 'preact';
import { useState } from 'preact/hooks';
import { BigNumber } from '../../src/controls/BigNumber.tsx';
import { Button } from '../../src/controls/Button.tsx';
import { Choice } from '../../src/controls/Choice.tsx';
import { Countdown } from '../../src/controls/Countdown.tsx';
import { DateTimeField } from '../../src/controls/DateTimeField.tsx';
import { HoldButton } from '../../src/controls/HoldButton.tsx';
import { Keypad } from '../../src/controls/Keypad.tsx';
import { ListRow } from '../../src/controls/ListRow.tsx';
import { Notice } from '../../src/controls/Notice.tsx';
import { NumberField } from '../../src/controls/NumberField.tsx';
import { Screen } from '../../src/controls/Screen.tsx';
import { Sheet } from '../../src/controls/Sheet.tsx';
import { Stamp } from '../../src/controls/Stamp.tsx';
import { StepCard } from '../../src/controls/StepCard.tsx';
import { TextField } from '../../src/controls/TextField.tsx';
import { Toggle } from '../../src/controls/Toggle.tsx';
import { UndoBar } from '../../src/controls/UndoBar.tsx';
import type { TorqueUnit } from '../../src/mechanics/units.ts';

const NOW_MS = Date.UTC(2026, 10, 25, 13, 10);
const torqueUnits = ['N.m', '[in_i].[lbf_av]', 'kgf.cm'] as const;

function Bench() {
  return (
    <Screen
      title="Magpie"
      back="#lists"
      waits={
        <ListRow
          state="waits"
          stateWord="Left 18:20, due 13:28"
          title="Threadlocker, rotor bolts"
          href="#wait"
        />
      }
      actions={
        <>
          <Button kind="main" size="greasy" icon="check" under="5 N·m, in one pass">
            Applied
          </Button>
          <Button size="greasy">Other value</Button>
          <Button size="greasy">Skip</Button>
        </>
      }
    >
      <StepCard
        title="Tighten the face plate, crosswise"
        icon="spanner"
        state="open"
        caption="Step 7 of 23, stem and bar"
      >
        <BigNumber label="Target" value="5" unit="N·m" source="printed on the stem" />
      </StepCard>
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
        <HoldButton kind="danger" icon="cross" onHeld={() => undefined}>
          Void this entry
        </HoldButton>
        <Button kind="danger" icon="cross">
          Danger
        </Button>
        <Button disabled>Not yet</Button>
        <Button kind="quiet">Quiet</Button>
      </div>
    </Screen>
  );
}

function Waits() {
  const [sheet, setSheet] = useState(false);
  return (
    <Screen title="Waits" back="#lists">
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
      <UndoBar text="5 N·m applied to the face plate" onUndo={() => undefined} onGone={() => undefined} />
    </Screen>
  );
}

const cards = { bench: Bench, lists: Lists, keys: Keys, form: Form, waits: Waits };

function Gallery() {
  const [name, setName] = useState(location.hash.slice(1));
  window.onhashchange = () => setName(location.hash.slice(1));
  const Card = cards[name as keyof typeof cards] ?? Lists;
  return <Card />;
}

const theme = new URLSearchParams(location.search).get('theme');
if (theme) document.documentElement.dataset['theme'] = theme;
render(<Gallery />, document.getElementById('app') as HTMLElement);

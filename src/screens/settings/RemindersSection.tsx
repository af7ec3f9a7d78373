import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { Toggle } from '../../controls/fields/Toggle.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import type { QuietHours } from '../../journal/entries.ts';
import { type Abilities, readAbilities, reminderLines } from '../../sensing/platform.ts';
import { useReminders } from '../reminders/useReminders.ts';
import { AbilityRows } from './AbilityRows.tsx';
import { TestReminder } from './TestReminder.tsx';
import type { ChangeProps } from './UnitsSection.tsx';

/** From ten in the evening to seven, until another time is chosen. */
const NIGHT: QuietHours = { fromMin: 22 * 60, toMin: 7 * 60 };

const hours = Array.from({ length: 48 }, (_, half) => {
  const min = half * 30;
  const two = (count: number) => String(count).padStart(2, '0');
  return { value: String(min), label: `${two(Math.floor(min / 60))}:${two(min % 60)}` };
});

function QuietChoice({ settings, change }: ChangeProps) {
  const { quiet } = settings;
  const set = (changed: Partial<QuietHours>) => change({ quiet: { ...NIGHT, ...quiet, ...changed } });
  return (
    <>
      <Toggle
        label="Quiet hours"
        hint="Nothing rings and no message comes. What falls due follows at the end."
        on={Boolean(quiet)}
        onToggle={(on) => change({ quiet: on ? NIGHT : null })}
      />
      {quiet && (
        <>
          <SelectField
            label="Quiet from"
            value={String(quiet.fromMin)}
            options={hours}
            onChoose={(min) => set({ fromMin: Number(min) })}
          />
          <SelectField
            label="Quiet until"
            value={String(quiet.toMin)}
            options={hours}
            onChoose={(min) => set({ toMin: Number(min) })}
            error={quiet.fromMin === quiet.toMin ? 'Same time: no quiet hours.' : undefined}
          />
        </>
      )}
    </>
  );
}

/** How reminders reach the person on this very phone, what they cannot do, and a test. */
export function RemindersSection(props: ChangeProps) {
  const [can, setCan] = useState<Abilities>();
  const [refused, setRefused] = useState(false);
  const reminders = useReminders();
  const look = () => readAbilities().then(setCan);
  useEffect(() => {
    void look();
  }, []);
  if (!can) return null;
  const ask = async () => {
    setRefused((await Notification.requestPermission()) !== 'granted');
    await look();
  };
  return (
    <>
      <Ruler label="Reminders" />
      <p class="lower">
        With the app open it rings on time. With the app closed it cannot: no phone lets an app ring at a set
        time without a server. The phone’s calendar can.
      </p>
      {reminders && <reminders.CalendarButton />}
      <AbilityRows lines={reminderLines(can)} />
      {refused && (
        <Notice kind="error" title="Messages stay off. Switch them on in the settings of the phone." />
      )}
      <div class="buttons">
        {can.notifications === 'ask' && (
          <Button icon="bell" onPress={() => void ask()}>
            Allow messages
          </Button>
        )}
        <TestReminder />
      </div>
      <QuietChoice {...props} />
    </>
  );
}

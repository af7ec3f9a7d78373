import type { ComponentChildren } from 'preact';
import { Button } from '../../../controls/Button.tsx';
import { Keypad } from '../../../controls/fields/Keypad.tsx';
import { Screen } from '../../../controls/frames/Screen.tsx';
import { parseNumber } from '../../../mechanics/quantity.ts';
import { type AnyUnit, type Typed, unitLabel } from '../../../mechanics/units.ts';
import type { SaveState } from '../../door.tsx';
import { Waits } from '../../Waits.tsx';
import { SaveLine } from '../frame/SaveLine.tsx';

export interface PadProps<U extends AnyUnit> {
  title: string;
  /** "Torque applied". */
  label: string;
  typed: string;
  unit: U;
  units: readonly U[];
  onTyped: (typed: string, unit: U) => void;
  save: SaveState;
  onLog: (value: Typed<U>) => void;
  onClose: () => void;
  /** What the button does with the number: "Take" where it is logged later, together with more. */
  act?: string;
  /** A choice or a remark between the number and the keys. */
  children?: ComponentChildren;
}

/** A number for the step, with big keys. Closing keeps what was typed. */
export function NumberPad<U extends AnyUnit>(props: PadProps<U>) {
  const { title, label, typed, unit, units, onTyped, save, onLog, onClose, act = 'Log', children } = props;
  const number = parseNumber(typed);
  const log = () => {
    if (number.ok) onLog({ value: number.value, unit, typed: number.typed });
  };
  return (
    <Screen
      title={title}
      route={`pad ${title}`}
      back={onClose}
      waits={<Waits />}
      actions={
        <>
          <SaveLine save={save} />
          <Button kind="main" size="greasy" icon="check" disabled={!number.ok} onPress={log}>
            {number.ok
              ? `${act} ${number.typed} ${unitLabel[unit]}`
              : typed === ''
                ? 'Type the number'
                : 'Not a number'}
          </Button>
        </>
      }
    >
      <Keypad label={label} typed={typed} unit={unit} units={units} onTyped={onTyped} onDone={log}>
        {children}
      </Keypad>
    </Screen>
  );
}

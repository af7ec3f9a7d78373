import './Keypad.css';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { decimalSign, type KeypadKey, keepTypable, pressKey } from '../../drafts/typedDigits.ts';
import { type AnyUnit, unitLabel } from '../../mechanics/units.ts';
import { Button } from '../Button.tsx';
import { Icon } from '../Icon.tsx';

const digits = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

export interface KeypadProps<U extends AnyUnit> {
  /** What is being typed: "Torque applied". */
  label: string;
  /** The text as typed so far, kept by the screen. */
  typed: string;
  unit: U;
  /** What stands behind the number instead of the unit: a scale has none. */
  unitText?: string | undefined;
  /** The units to choose from; with one alone the row of units stays away. */
  units?: readonly U[];
  /** Told on every key and change of unit. Changing the unit leaves the digits as they were typed. */
  onTyped: (typed: string, unit: U) => void;
  /** Enter on a keyboard. */
  onDone?: () => void;
  /** One sentence when the number cannot be taken. */
  error?: string | undefined;
  /** Presets or a remark, between the number and the keys. */
  children?: ComponentChildren;
  /** Language whose decimal sign the key carries; comma and dot are taken anyway. */
  locale?: string;
}

const isField = (node: EventTarget | null) =>
  node instanceof HTMLElement && (node.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(node.tagName));

/** Big keys for a number, and the number shown exactly as typed. Keys of a real keyboard work from anywhere on the screen. */
export function Keypad<U extends AnyUnit>({
  label,
  typed,
  unit,
  unitText,
  units = [],
  onTyped,
  onDone,
  error,
  children,
  locale,
}: KeypadProps<U>) {
  const sign = decimalSign(locale);
  const press = (key: KeypadKey) => onTyped(pressKey(typed, key, sign), unit);
  const pressRef = useRef(press);
  pressRef.current = press;

  // A pad stands on top of its page, and the one it came from may have been scrolled.
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!box.current?.closest('dialog')) scrollTo(0, 0);
  }, []);

  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || isField(event.target)) return;
      if (/^[0-9]$/.test(event.key)) pressRef.current(event.key as KeypadKey);
      else if (event.key === ',' || event.key === '.') pressRef.current('decimal');
      else if (event.key === 'Backspace') pressRef.current('erase');
      else return;
      event.preventDefault();
    };
    // Capturing: digits and Backspace are taken before any bench command is made of them.
    document.addEventListener('keydown', hear, true);
    return () => document.removeEventListener('keydown', hear, true);
  }, []);

  const key = (name: KeypadKey, spoken: string, face: ComponentChildren) => (
    <button
      type="button"
      class="button button-plain keypad-key"
      key={name}
      aria-label={spoken}
      onClick={() => press(name)}
    >
      {face}
    </button>
  );
  return (
    <div class="keypad" ref={box}>
      <label>
        <span class="caption">{label}</span>
        <span class="keypad-shown">
          <input
            class="keypad-typed"
            // The screen brings its own keys; a phone's would cover half of it.
            inputMode="none"
            autocomplete="off"
            value={typed}
            aria-invalid={error ? true : undefined}
            onInput={(event) => {
              const field = event.currentTarget;
              field.value = keepTypable(field.value);
              onTyped(field.value, unit);
            }}
            onKeyDown={(event) => {
              if (event.key === 'Enter') onDone?.();
            }}
          />
          <span class="keypad-unit">{unitText ?? unitLabel[unit]}</span>
        </span>
        {error && (
          <span class="field-error" role="alert">
            {error}
          </span>
        )}
      </label>
      {units.length > 1 && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row in every browser
        <div class="keypad-units" role="group" aria-label="Unit">
          {units.map((one) => (
            <Button key={one} size="greasy" pressed={one === unit} onPress={() => onTyped(typed, one)}>
              {unitLabel[one]}
            </Button>
          ))}
        </div>
      )}
      {children}
      <div class="keypad-keys">
        {digits.map((digit) => key(digit, digit, digit))}
        {key('decimal', sign === ',' ? 'comma' : 'point', sign)}
        {key('0', '0', '0')}
        {key('erase', 'erase one', <Icon name="erase" sizePx={36} />)}
      </div>
    </div>
  );
}

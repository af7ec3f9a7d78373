/** What a key, a presenter or a foot switch can ask for at the bench. */
export type BenchCommand = 'next' | 'back' | 'applied' | 'undo';

/** The part of a keyboard event that matters; `KeyboardEvent` fits. */
export interface KeyPress {
  key: string;
  ctrlKey?: boolean;
  metaKey?: boolean;
  altKey?: boolean;
  repeat?: boolean;
}

// Presenters and foot switches send page or arrow keys; Enter is the large pedal. No letter alone does anything (WCAG 2.1.4).
const commands = new Map<string, BenchCommand>(
  Object.entries({
    ArrowRight: 'next',
    PageDown: 'next',
    ' ': 'next',
    ArrowLeft: 'back',
    PageUp: 'back',
    Enter: 'applied',
    Backspace: 'undo',
  } as const),
);

/**
 * The command of a key press.
 * A key held down repeats; a repeat is never taken, or one long press of a pedal would sign off a whole bike.
 * @param press the key with its modifiers
 * @returns the command, or undefined where the key means nothing here
 * @example commandOf({ key: 'PageDown' }) //=> 'next'
 */
export function commandOf({ key, ctrlKey, metaKey, altKey, repeat }: KeyPress): BenchCommand | undefined {
  if (repeat || altKey) return undefined;
  const named = key.length === 1 ? key.toLowerCase() : key;
  if (ctrlKey || metaKey) return named === 'z' ? 'undo' : undefined;
  return commands.get(named);
}

const typing = 'input, textarea, select, [contenteditable=""], [contenteditable="true"], dialog[open]';
const pressable = 'button, a[href], summary, [role="button"]';

/**
 * Listens for bench commands until told to stop. Keys typed into a field, or pressed while a dialog is open, are left alone;
 * Enter and Space on a button or a link are that button's own.
 * @param onCommand told each command
 * @param page where to listen; the document when left out
 * @returns how to stop listening
 */
export function listenForKeys(
  onCommand: (command: BenchCommand) => void,
  page: Document = document,
): () => void {
  const hear = (event: KeyboardEvent) => {
    if (event.defaultPrevented) return;
    const at = event.target instanceof Element ? event.target : undefined;
    if (at?.closest(typing) || page.querySelector('dialog[open]')) return;
    if ((event.key === 'Enter' || event.key === ' ') && at?.closest(pressable)) return;
    const command = commandOf(event);
    if (!command) return;
    event.preventDefault();
    onCommand(command);
  };
  page.addEventListener('keydown', hear);
  return () => page.removeEventListener('keydown', hear);
}

import { createContext } from 'preact';
import { useCallback, useContext, useEffect, useLayoutEffect, useState } from 'preact/hooks';
import type { Command, Refused } from '../journal/commands.ts';
import type { Entry } from '../journal/entries.ts';
import type { Logbook, NoQuestion, Photo, ViewName, Views } from '../logbook.ts';
import { historyPlace } from '../words/history/historyPlace.ts';
import { madePhotos } from './draft.ts';
import { hrefOf } from './route.ts';

export const Door = createContext<Logbook | undefined>(undefined);

/** The logbook of this page. */
export function useLogbook(): Logbook {
  const logbook = useContext(Door);
  if (!logbook) throw new Error('a screen stands outside the door');
  return logbook;
}

export type Seen<T> = { is: 'reading' } | { is: 'there'; value: T } | { is: 'failed'; why: string };

/** What is asked of a view; nothing where there is only one for the whole logbook. */
type Question<V extends ViewName> = Views[V]['ask'] extends NoQuestion ? [] : [ask: Views[V]['ask']];

/**
 * A view of the logbook, read again after every commit. While it is read again the old value stays, so that
 * nothing flickers under a finger.
 * @example useView('settings') //=> { is: 'there', value: { torqueUnit: 'N.m', … } }
 */
export function useView<V extends ViewName>(view: V, ...[asked]: Question<V>): Seen<Views[V]['gives']> {
  const logbook = useLogbook();
  const ask: Views[V]['ask'] = asked ?? {};
  const key = `${view} ${JSON.stringify(ask)}`;
  const [seen, setSeen] = useState<{ of: string; seen: Seen<Views[V]['gives']> } | undefined>(() => {
    const value = logbook.peek(view, ask);
    return value === undefined ? undefined : { of: key, seen: { is: 'there', value } };
  });
  // Before the browser paints: the store answers while it does.
  useLayoutEffect(() => {
    let current = true;
    const read = () => {
      logbook.read(view, ask).then(
        (value) => current && setSeen({ of: key, seen: { is: 'there', value } }),
        (why) => current && setSeen({ of: key, seen: { is: 'failed', why: String(why?.message ?? why) } }),
      );
    };
    // What was read ahead is true until the next commit; it need not be read twice.
    const value = logbook.peek(view, ask);
    if (value === undefined) read();
    else setSeen((old) => (old?.of === key ? old : { of: key, seen: { is: 'there', value } }));
    const stop = logbook.watch(read);
    return () => {
      current = false;
      stop();
    };
    // The key holds the view and what is asked of it.
  }, [logbook, key]);
  return seen?.of === key ? seen.seen : { is: 'reading' };
}

export type SaveState =
  | { is: 'idle' }
  | { is: 'saving' }
  | { is: 'saved'; entries: Entry[] }
  | { is: 'refused'; refused: Refused['refused']; sentence: string }
  | { is: 'not-saved'; sentence: string };

/** What the undo bar offers to take back: shown on whatever screen comes next. */
export interface Undoable {
  words: string;
  entryIds: string[];
  savedAtMs: number;
  /** Where it can be corrected when it is too late for that. */
  correctHref?: string | undefined;
}

export const UndoSlot = createContext<(undoable: Undoable | undefined) => void>(() => {});

/**
 * Carries out a command, or a list of them as one, and keeps what became of it. "Saved" is only said after the commit; while one
 * runs, a second is not begun.
 * @returns `run`, which resolves to the entries or undefined when nothing was written, and the state
 */
export function useRun(): {
  run(
    command: Command | readonly Command[],
    options?: { photos?: Photo[]; undo?: string | ((entries: Entry[]) => string) },
  ): Promise<Entry[] | undefined>;
  save: SaveState;
  clear(): void;
} {
  const logbook = useLogbook();
  const offerUndo = useContext(UndoSlot);
  const [save, setSave] = useState<SaveState>({ is: 'idle' });
  const run = useCallback(
    async (
      command: Command | readonly Command[],
      options: { photos?: Photo[]; undo?: string | ((entries: Entry[]) => string) } = {},
    ) => {
      setSave({ is: 'saving' });
      try {
        const photos = await madePhotos(options.photos ?? []);
        if (photos.length < (options.photos?.length ?? 0)) {
          setSave({
            is: 'not-saved',
            sentence: 'Not saved yet: a photo could not be used. Save without it, or take another.',
          });
          return undefined;
        }
        const result = await logbook.run(command, photos);
        if ('refused' in result) {
          const { sentenceOf } = await import('../words/refusals.ts');
          setSave({ is: 'refused', refused: result.refused, sentence: sentenceOf(result) });
          return undefined;
        }
        setSave({ is: 'saved', entries: result.entries });
        if (options.undo !== undefined && result.entries.length > 0) {
          const entryIds = result.entries.map(({ id }) => id);
          const place = historyPlace(result.entries);
          const correctHref = place === undefined ? undefined : hrefOf({ at: 'history', place });
          const words = typeof options.undo === 'string' ? options.undo : options.undo(result.entries);
          offerUndo({ words, entryIds, savedAtMs: logbook.now(), correctHref });
        }
        return result.entries;
      } catch (thrown) {
        setSave({ is: 'not-saved', sentence: whyNotSaved(thrown) });
        return undefined;
      }
    },
    [logbook, offerUndo],
  );
  const clear = useCallback(() => setSave({ is: 'idle' }), []);
  return { run, save, clear };
}

function whyNotSaved(thrown: unknown): string {
  const name = (thrown as DOMException)?.name;
  if (name === 'QuotaExceededError') {
    return 'Not saved: storage full. Free some space or remove the photo. What you typed is still here.';
  }
  return 'Not saved. What you typed is still here: try again, and if it fails again, reload the page.';
}

/** The time, anew every `everyMs` while the page is seen. */
export function useNow(everyMs = 1000): number {
  const logbook = useLogbook();
  const [nowMs, setNow] = useState(logbook.now());
  useEffect(() => {
    const tick = () => setNow(logbook.now());
    const timer = setInterval(tick, everyMs);
    document.addEventListener('visibilitychange', tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
    };
  }, [logbook, everyMs]);
  return nowMs;
}

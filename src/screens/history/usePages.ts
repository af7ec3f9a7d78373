import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { HistoryLine, HistoryMark } from '../../logbook.ts';
import { useLogbook } from '../door.tsx';

const LINES_AT_ONCE = 120;
/** A page while words or parts are looked for: few readings, yet the screen stays awake between them. */
const SEARCH_PAGE = 1000;

export interface Pages {
  lines: HistoryLine[];
  /** Nothing older is left to be read. */
  whole: boolean;
  reading: boolean;
  failed: boolean;
  /** Reads the next page; while one is read, does nothing. */
  more: () => void;
}

/**
 * A history page by page, newest first. After a commit what was read is read again, so that a correction
 * shows at once.
 * @param searching most lines will not be shown, so that more are read at a time
 */
export function usePages(place: string, searching: boolean): Pages {
  const logbook = useLogbook();
  const [lines, setLines] = useState<HistoryLine[]>([]);
  const [next, setNext] = useState<HistoryMark | 'start' | 'end'>('start');
  const [failed, setFailed] = useState(false);
  const reading = useRef(false);
  const [busy, setBusy] = useState(true);
  const shown = useRef(0);
  const era = useRef(0);

  const read = useCallback(
    async (after: HistoryMark | undefined, limit: number) => {
      reading.current = true;
      setBusy(true);
      const mine = era.current;
      try {
        const page = await logbook.read('history', { place, limit, ...(after ? { after } : {}) });
        if (mine !== era.current) return;
        setLines((old) => {
          const all = after ? [...old, ...page.lines] : page.lines;
          shown.current = all.length;
          return all;
        });
        setNext(page.next ?? 'end');
        setFailed(false);
      } catch {
        if (mine === era.current) setFailed(true);
      } finally {
        if (mine === era.current) {
          reading.current = false;
          setBusy(false);
        }
      }
    },
    [logbook, place],
  );

  useEffect(() => {
    const again = () => {
      era.current += 1;
      void read(undefined, Math.max(LINES_AT_ONCE, shown.current));
    };
    again();
    const stop = logbook.watch(again);
    return () => {
      era.current += 1;
      stop();
    };
  }, [logbook, read]);

  const more = useCallback(() => {
    if (!reading.current && next !== 'start' && next !== 'end')
      void read(next, searching ? SEARCH_PAGE : LINES_AT_ONCE);
  }, [next, read, searching]);
  return { lines, whole: next === 'end', reading: busy, failed, more };
}

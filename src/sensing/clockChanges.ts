import type { ClockJump } from './clockWatch.ts';

/** Looks of two pages are at most a throttled minute apart, and some. */
const SAME_JUMP_MS = 90_000;
/** Two pages measure one jump this closely alike. */
const ALIKE_MS = 5000;
/** What adds up to less was put back again. */
const SET_MS = 60_000;
const REMEMBERED = 8;

/** A question that waits for an answer: the clock was moved, are running waits to move with it? */
export interface ClockQuestion {
  /** The same on every page that asks about this change. */
  changeId: string;
  /** By how much, ms; forward is positive. */
  byMs: number;
}

/** What the pages of one phone know together of changes of its clock. */
export interface ClockChanges {
  /** Jumps that some page noticed, newest last, asked about or answered. */
  noticed: readonly { byMs: number; atMs: number }[];
  question?: ClockQuestion | undefined;
}

export const noChanges: ClockChanges = { noticed: [] };

/**
 * Takes a jump up. One that another page has noticed already changes nothing; one that comes while an earlier waits
 * for its answer is added to it.
 * @param nowMs the wall clock as it runs now
 * @example noticedJump(noChanges, { byMs: 3_600_000, afterMs: 0 }, 10).question //=> { byMs: 3600000, changeId: 'clock 3600 at 10' }
 */
export function noticedJump(
  changes: ClockChanges,
  { byMs, afterMs }: ClockJump,
  nowMs: number,
): ClockChanges {
  const known = changes.noticed.some(
    (one) =>
      Math.abs(one.byMs - byMs) < ALIKE_MS &&
      one.atMs > afterMs - SAME_JUMP_MS &&
      one.atMs < nowMs + SAME_JUMP_MS,
  );
  if (known) return changes;
  const noticed = [...changes.noticed, { byMs, atMs: nowMs }].slice(-REMEMBERED);
  const wholeMs = byMs + (changes.question?.byMs ?? 0);
  if (Math.abs(wholeMs) < SET_MS) return { noticed };
  const changeId = `clock ${Math.round(wholeMs / 1000)} at ${nowMs}`;
  return { noticed, question: { byMs: wholeMs, changeId } };
}

/** Where all pages of one phone keep what they know, one at a time. */
export interface SharedPlace {
  read(): string | null;
  write(text: string): void;
  /** Runs one piece of work after another, over all pages. */
  alone<T>(work: () => Promise<T>): Promise<T>;
}

function stored(place: SharedPlace): ClockChanges {
  try {
    const found = JSON.parse(place.read() ?? 'null') as ClockChanges | null;
    return Array.isArray(found?.noticed) ? found : noChanges;
  } catch {
    return noChanges;
  }
}

/** The changes of the clock as the pages share them: a reload or a second page finds the question that is open. */
export function clockChanges(place: SharedPlace) {
  const write = (changes: ClockChanges) => place.write(JSON.stringify(changes));
  return {
    /** The question that waits for an answer, whichever page noticed it. */
    open: (): ClockQuestion | undefined => stored(place).question,
    /** Takes a jump up, and gives the question that is open then. */
    notice: (jump: ClockJump, nowMs: number): Promise<ClockQuestion | undefined> =>
      place.alone(async () => {
        const changes = noticedJump(stored(place), jump, nowMs);
        write(changes);
        return changes.question;
      }),
    /**
     * Answers a question, if no other page has done so.
     * @param act what follows from the answer; when it fails, the question stays open
     * @returns whether this page was the one that answered
     */
    answer: (changeId: string, act: () => Promise<void>): Promise<boolean> =>
      place.alone(async () => {
        if (stored(place).question?.changeId !== changeId) return false;
        await act();
        write({ noticed: stored(place).noticed });
        return true;
      }),
  };
}

const KEY = 'clock:changes';

/** The place in this browser; where it keeps nothing, a page knows only its own. */
export function placeInBrowser(): SharedPlace {
  let own: string | null = null;
  return {
    read() {
      try {
        return localStorage.getItem(KEY);
      } catch {
        return own;
      }
    },
    write(text) {
      own = text;
      try {
        localStorage.setItem(KEY, text);
      } catch {
        // Then the question does not outlive this page.
      }
    },
    alone: async (work) => (navigator.locks ? await navigator.locks.request(KEY, work) : await work()),
  };
}

/** Calls back when another page noticed or answered a change. */
export function onOtherPage(onChange: () => void): void {
  addEventListener('storage', ({ key }) => {
    if (key === KEY) onChange();
  });
}

import type { Command, Photo } from '../journal/commands.ts';
import type { Id } from '../journal/entries.ts';

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** Ids the demo chooses for what a command makes beside the thing it names, so that later lines can name it. */
export interface ChosenIds {
  /** The wait that begins. */
  waitId?: Id;
  defectId?: Id;
  /** The re-checks a ride sets, by `joint/kind`. */
  recheckIds?: Record<string, Id>;
  /** The re-check that follows on the one answered. */
  nextRecheckId?: Id;
}

export type DemoCommand = Command & ChosenIds;

/** One command of the demo, and when it is to have been given. */
export interface DemoLine {
  atMs: number;
  command: DemoCommand;
  photos?: Photo[];
}

/** How the demo writes: as if it were some days and minutes ago. */
export interface DemoPen {
  /** The true time. */
  nowMs: number;
  /** Sets the day, counted back from today, and the minutes since nine in the morning; later lines follow it. */
  at(daysAgo: number, minutes: number): void;
  /** Sets the time to so many minutes before now. */
  minutesAgo(minutes: number): void;
  write(command: DemoCommand): void;
}

/**
 * A pen that writes lines into a list.
 * @param nowMs the instant the demo ends at, ms UTC
 * @param lines where the lines go
 */
export function demoPen(nowMs: number, lines: DemoLine[]): DemoPen {
  const nine = new Date(nowMs).setHours(9, 0, 0, 0);
  let atMs = nowMs;
  return {
    nowMs,
    at(daysAgo, minutes) {
      atMs = Math.min(nowMs, nine - daysAgo * DAY_MS + minutes * MINUTE_MS);
    },
    minutesAgo(minutes) {
      atMs = nowMs - minutes * MINUTE_MS;
    },
    write(command) {
      lines.push({ atMs, command });
      // Lines of one day stand in the order they were written, half a minute apart.
      atMs = Math.min(nowMs, atMs + MINUTE_MS / 2);
    },
  };
}

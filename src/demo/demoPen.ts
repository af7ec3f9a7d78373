import type { Command, Photo } from '../journal/commands.ts';

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** One command of the demo, and when it is to have been given. */
export interface DemoLine {
  atMs: number;
  command: Command;
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
  write(command: Command): void;
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

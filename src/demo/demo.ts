import type { Command } from '../journal/commands.ts';
import type { Logbook } from '../logbook.ts';
import { ferry } from './demoFerry.ts';
import { magpie } from './demoMagpie.ts';

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** How the demo writes: as if it were some days and minutes ago. */
export interface DemoPen {
  /** The true time. */
  nowMs: number;
  /** The time the next line gets. */
  atMs(): number;
  /** Sets the day, counted back from today, and the minutes since nine in the morning; later lines follow it. */
  at(daysAgo: number, minutes: number): void;
  /** Sets the time to so many minutes before now. */
  minutesAgo(minutes: number): void;
  write(command: Command): Promise<void>;
  read: Logbook['read'];
}

function pen(logbook: Logbook, onLine: () => void): DemoPen {
  const nowMs = logbook.now();
  const nine = new Date(nowMs).setHours(9, 0, 0, 0);
  let atMs = nowMs;
  return {
    nowMs,
    atMs: () => atMs,
    at(daysAgo, minutes) {
      atMs = Math.min(nowMs, nine - daysAgo * DAY_MS + minutes * MINUTE_MS);
    },
    minutesAgo(minutes) {
      atMs = nowMs - minutes * MINUTE_MS;
    },
    async write(command) {
      const result = await logbook.runAsOf(atMs, command);
      if ('refused' in result)
        throw new Error(`demo: ${command.type} refused, ${result.refused} ${result.about ?? ''}`);
      // Lines of one day stand in the order they were written, half a minute apart.
      atMs = Math.min(nowMs, atMs + MINUTE_MS / 2);
      onLine();
    },
    read: (view, ask) => logbook.read(view, ask),
  };
}

/** About how many commands the demo gives; only the progress bar depends on it. */
const ABOUT_LINES = 330;

/**
 * Puts the two invented bikes into the logbook, through the same door and the same checks as anything else.
 * @param onProgress share done, 0 to 1
 */
export async function loadDemo(
  logbook: Logbook,
  onProgress: (share: number) => void = () => {},
): Promise<void> {
  let lines = 0;
  const write = pen(logbook, () => {
    lines += 1;
    onProgress(Math.min(0.99, lines / ABOUT_LINES));
  });
  await ferry(write);
  await magpie(write);
  onProgress(1);
}

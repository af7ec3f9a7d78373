import type { Command } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';
import type { Logbook } from '../logbook.ts';
import { demoLines } from './demoLines.ts';
import type { ChosenIds, DemoCommand } from './demoPen.ts';

/** Which of the demo's chosen ids an entry stands for, and the id it has. */
function idMade(entry: Entry, chosen: ChosenIds): [chosen: Id | undefined, made: Id] | undefined {
  if (entry.type === 'locker-applied') return [chosen.waitId, entry.waitId];
  if (entry.type === 'defect-found') return [chosen.defectId, entry.defectId];
  if (entry.type === 'recheck-set')
    return [chosen.recheckIds?.[`${entry.jointId}/${entry.kind}`] ?? chosen.nextRecheckId, entry.recheckId];
  return undefined;
}

/** A command that names things by the ids they were given. */
function renamed(command: DemoCommand, made: ReadonlyMap<Id, Id>): Command {
  const fields = Object.entries(command).map(([field, value]) =>
    /^(wait|defect|recheck)Id$/.test(field) ? [field, made.get(value as Id) ?? value] : [field, value],
  );
  return Object.fromEntries(fields);
}

/**
 * Puts the two invented bikes into the logbook, through the same door and the same checks as anything else.
 * @param onProgress share done, 0 to 1
 * @throws Error when a line is refused
 */
export async function loadDemo(
  logbook: Logbook,
  onProgress: (share: number) => void = () => {},
): Promise<void> {
  const lines = demoLines(logbook.now());
  const made = new Map<Id, Id>();
  for (const [at, { atMs, command, photos }] of lines.entries()) {
    const result = await logbook.runAsOf(atMs, renamed(command, made), photos);
    if ('refused' in result)
      throw new Error(`demo: ${command.type} refused, ${result.refused} ${result.about ?? ''}`);
    for (const entry of result.entries) {
      const [chosen, id] = idMade(entry, command) ?? [];
      if (chosen && id) made.set(chosen, id);
    }
    onProgress((at + 1) / lines.length);
  }
}

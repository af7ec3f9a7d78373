import { useContext } from 'preact/hooks';
import type { Command } from '../../journal/commands.ts';
import { type SaveState, UndoSlot, useLogbook, useRun } from '../door.tsx';

/**
 * Carries out commands one after the other and offers to take all of them back together. It stops at the first
 * that is refused; what was written before it can be taken back too.
 */
export function useRunAll(): {
  runAll(commands: readonly Command[], undo: string): Promise<boolean>;
  save: SaveState;
} {
  const logbook = useLogbook();
  const offerUndo = useContext(UndoSlot);
  const { run, save } = useRun();
  const runAll = async (commands: readonly Command[], undo: string): Promise<boolean> => {
    const entryIds: string[] = [];
    let whole = true;
    for (const command of commands) {
      const entries = await run(command);
      if (!entries) {
        whole = false;
        break;
      }
      entryIds.push(...entries.map(({ id }) => id));
    }
    const words = whole ? undo : 'Only a part of it was written';
    if (entryIds.length > 0) offerUndo({ words, entryIds, savedAtMs: logbook.now() });
    return whole;
  };
  return { runAll, save };
}

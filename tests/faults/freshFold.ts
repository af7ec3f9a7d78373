import { foldAll } from '../../src/journal/fold.ts';
import { MemoryRows } from '../../src/journal/memoryRows.ts';
import { upcast } from '../../src/journal/upcasts.ts';

/** The rows that a journal gives when it is folded from its first line, in a process that never saw the store. */
export function freshRows(lines: readonly { entry: Parameters<typeof upcast>[0] }[]): unknown[] {
  const rows = new MemoryRows();
  foldAll(
    rows,
    lines.map(({ entry }) => upcast(entry)),
  );
  return [...rows.rows.values()];
}

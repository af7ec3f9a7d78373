import { useMemo } from 'preact/hooks';
import { partsOfSheet } from '../../documents/partsOfSheet.ts';
import type { SheetLine } from '../../documents/sheetLine.ts';
import { sheetLines } from '../../documents/sheetLines.ts';
import type { Id } from '../../journal/entries.ts';
import { zoneNow } from '../../sensing/zoneNow.ts';
import { type Seen, useView } from '../door.tsx';
import { useNames } from '../history/useNames.ts';

const none: never[] = [];

/** The lines of the as-built sheet of a bike at an instant, in the phone's own time zone. */
export function useSheet(bikeId: Id, atMs: number): Seen<SheetLine[]> {
  const built = useView('as-built', { bikeId, atMs });
  const value = built.is === 'there' ? built.value : undefined;
  // Parts that have left since are still named in the joints and targets of that day.
  const parts = useMemo(() => (value ? partsOfSheet(value) : []), [value]);
  const names = useNames(none, { parts });
  const lines = useMemo(() => value && sheetLines(value, { zone: zoneNow(), names }), [value, names]);
  if (built.is === 'failed') return built;
  return lines ? { is: 'there', value: lines } : { is: 'reading' };
}

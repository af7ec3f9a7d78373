import { useEffect, useState } from 'preact/hooks';
import type { PartRow } from '../../journal/rows.ts';
import { useLogbook } from '../door.tsx';

const OFF_BIKES = ['shelf', 'quarantine', 'scrapped', 'sold'];

/** Every part of the logbook, wherever it is; undefined while it is read. Labels must be free among all of them. */
export function useAllParts(): PartRow[] | undefined {
  const logbook = useLogbook();
  const [parts, setParts] = useState<PartRow[]>();
  useEffect(() => {
    let current = true;
    const read = async () => {
      const bikes = await logbook.read('bikes', {});
      const places = [...OFF_BIKES, ...bikes.map(({ bikeId }) => bikeId)];
      const found = await Promise.all(places.map((at) => logbook.read('parts', { at })));
      if (current) setParts(found.flat());
    };
    // Without the list no label is suggested; the form itself works.
    const readQuietly = () => void read().catch(() => undefined);
    readQuietly();
    const stop = logbook.watch(readQuietly);
    return () => {
      current = false;
      stop();
    };
  }, [logbook]);
  return parts;
}

import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Id } from '../../journal/entries.ts';
import { useWheelWay } from './wheelWay.ts';

/** From a joint or a finding to the wheel its parts make. */
export function WheelLine({ bikeId, partIds }: { bikeId: Id; partIds: readonly Id[] }) {
  const { href, words } = useWheelWay(bikeId, partIds);
  return <ListRow icon="wheel" title={words} detail="Spoke length, lacing, tension, truing" href={href} />;
}

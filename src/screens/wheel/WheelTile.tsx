import { Tile } from '../../controls/Tile.tsx';
import type { Id } from '../../journal/entries.ts';
import { useWheelWay } from './wheelWay.ts';

/** From a step or a re-check of spokes to the wheel: its lacing, its readings, what to turn. */
export function WheelTile({ bikeId, partIds }: { bikeId: Id; partIds: readonly Id[] }) {
  const { href, words } = useWheelWay(bikeId, partIds);
  return (
    <Tile icon="wheel" href={href} value={words}>
      Wheel
    </Tile>
  );
}

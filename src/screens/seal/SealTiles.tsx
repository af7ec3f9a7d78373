import type { IconName } from '../../controls/Icon.tsx';
import { Tile } from '../../controls/Tile.tsx';
import type { SealMark } from '../../journal/entries.ts';
import type { SealRow } from '../../journal/rows.ts';
import { clockText, dayText } from '../../words/dayText.ts';
import { markNames } from './sealText.ts';

const icons: Record<SealMark['mark'], IconName> = {
  seated: 'tyre',
  'dry-reading': 'scale',
  sealant: 'drop',
  'spun-and-shaken': 'wheel',
  'laid-left': 'down',
  'laid-right': 'down',
  soaped: 'lookup',
  reading: 'scale',
  burped: 'sound',
  pumped: 'up',
  'let-down': 'minus',
  riding: 'wheel',
  verdict: 'pencil',
};

const every = Object.keys(icons) as SealMark['mark'][];

export interface SealTilesProps {
  marks: SealRow['marks'];
  nowMs: number;
  onMark: (mark: SealMark['mark']) => void;
}

/** Every mark that can be made, in the order of the work, with the time it was last made. */
export function SealTiles({ marks, nowMs, onMark }: SealTilesProps) {
  const last = (mark: SealMark['mark']) => {
    const atMs = marks.findLast((one) => one.mark === mark)?.atMs;
    if (atMs === undefined) return undefined;
    return dayText(atMs) === dayText(nowMs) ? clockText(atMs) : dayText(atMs);
  };
  return (
    <div class="tiles">
      {every.map((mark) => (
        <Tile key={mark} icon={icons[mark]} value={last(mark)} onPress={() => onMark(mark)}>
          {markNames[mark]}
        </Tile>
      ))}
    </div>
  );
}

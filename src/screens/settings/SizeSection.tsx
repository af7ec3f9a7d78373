import { useEffect, useState } from 'preact/hooks';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { numberText } from '../../mechanics/numberText.ts';
import { useView } from '../door.tsx';

const MEGA = 1_000_000;

/** How much room the browser says the app takes, bytes; undefined where it does not say. */
function useRoom(): { usedBytes: number; mostBytes: number } | undefined {
  const [room, setRoom] = useState<{ usedBytes: number; mostBytes: number }>();
  useEffect(() => {
    navigator.storage?.estimate?.().then(
      ({ usage = 0, quota = 0 }) => setRoom({ usedBytes: usage, mostBytes: quota }),
      () => undefined,
    );
  }, []);
  return room;
}

/** How much has been written down. */
export function SizeSection() {
  const size = useView('size');
  const room = useRoom();
  if (size.is !== 'there') return null;
  const { entries, photos } = size.value;
  return (
    <>
      <Ruler label="The logbook" />
      <ListRow icon="note" title="Entries" end={numberText(entries, 0)} />
      <ListRow icon="camera" title="Photos" end={numberText(photos, 0)} />
      {room && room.mostBytes > 0 && (
        <ListRow
          icon="save"
          title="Storage used"
          detail={`Of about ${numberText(room.mostBytes / MEGA, 0)} MB the browser allows, by its own estimate`}
          end={`${numberText(room.usedBytes / MEGA, 1)} MB`}
        />
      )}
    </>
  );
}

import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { AbilityLine } from '../../sensing/platform.ts';

/** What this phone can do and what it cannot, a row each. */
export function AbilityRows({ lines }: { lines: readonly AbilityLine[] }) {
  return (
    <>
      {lines.map(({ name, good, sentence }) => (
        <ListRow
          key={name}
          title={<span class="settings-sentence">{sentence}</span>}
          icon={good ? 'check' : 'cross'}
        />
      ))}
    </>
  );
}

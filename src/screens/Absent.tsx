import { Notice } from '../controls/frames/Notice.tsx';
import type { Seen } from './door.tsx';
import { Slow } from './Slow.tsx';

/** Where what is not in the logbook can be looked for. */
const WAY = {
  bike: 'Go back to the list and open it from there.',
  part: 'Go back to the shelf and open it from there.',
  joint: 'Go back to the list and open it on its bike.',
  wheel: 'Go back to the bike and open it from there.',
};

/**
 * What stands in place of something that cannot be shown: it is being read, could not be read, or is not there.
 * @param seen what was asked for, the thing itself first
 */
export function Absent({ what, seen }: { what: keyof typeof WAY; seen: Seen<unknown>[] }) {
  if (seen.some(({ is }) => is === 'failed'))
    return (
      <Notice kind="error" title={`The ${what} could not be read`}>
        Go back and open it again. What is recorded is safe.
      </Notice>
    );
  if (seen.some(({ is }) => is === 'reading')) return <Slow />;
  return (
    <Notice kind="error" title={`That ${what} is not in the logbook`}>
      {WAY[what]}
    </Notice>
  );
}

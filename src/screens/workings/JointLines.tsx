import './workings.css';
import type { Id } from '../../journal/entries.ts';
import { useLines } from './useLines.ts';
import { WorkingRow } from './WorkingRow.tsx';

export interface JointLinesProps {
  jointId: Id;
  /** The tool in the hand; without it, the one the joint was tightened with. */
  toolId?: Id | undefined;
}

/** The figures of a joint, line by line, each with its working behind a tap. */
export function JointLines({ jointId, toolId }: JointLinesProps) {
  const seen = useLines(jointId, toolId);
  if (seen.is === 'reading') return <p role="status">One moment…</p>;
  if (seen.is === 'failed') return <p role="alert">The figures could not be read. Try again.</p>;
  if (seen.is !== 'there') return null;
  if (seen.lines.length === 0) return <p class="small">No bolts here, so there is nothing to work out.</p>;
  return (
    <ul class="working-rows">
      {seen.lines.map((line) => (
        <li key={line.id}>
          <WorkingRow line={line} />
        </li>
      ))}
    </ul>
  );
}

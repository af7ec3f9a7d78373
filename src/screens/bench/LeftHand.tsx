import './leftHand.css';
import type { JointRow } from '../../journal/rows.ts';
import { leftHanded } from '../../standards/screws/leftHand.ts';

/** Said at arm's length before it is turned: what tightens anti-clockwise, with the way drawn. */
export function LeftHand({ joint }: { joint: JointRow | undefined }) {
  const left = joint ? leftHanded(joint.kind, joint.fasteners) : [];
  return (
    <>
      {left.map((piece) => (
        <p key={piece} class="left-hand" role="note">
          <svg viewBox="0 0 24 24" width="64" height="64" aria-hidden="true">
            <path
              d="M12 4a8 8 0 1 0 8 8M12 4l4-3M12 4l4 3"
              fill="none"
              stroke="currentColor"
              stroke-width="2.5"
            />
          </svg>
          <strong>{`${piece}: left-hand thread. Tighten anti-clockwise.`}</strong>
        </p>
      ))}
    </>
  );
}

import { useState } from 'preact/hooks';
import type { JointRow, PartRow, WaitRow } from '../../journal/rows.ts';
import { unsetBonds } from '../../planning/unsetBonds.ts';
import { bondWords } from '../../words/bondWords.ts';
import { type SaveState, useNow } from '../door.tsx';
import { ReasonSheet } from './frame/ReasonSheet.tsx';

/** Said in the step before a hand loads what has not set: which bond, and since when. */
export function UnsetBonds({
  view,
  joint,
}: {
  view: { joints: JointRow[]; parts: PartRow[]; waits: WaitRow[] };
  joint: JointRow | undefined;
}) {
  const nowMs = useNow(60_000);
  if (!joint) return null;
  const bearers = view.parts.filter(({ kind }) => kind === 'frame' || kind === 'fork');
  const ids = new Set(bearers.map(({ partId }) => partId));
  return (
    <>
      {unsetBonds(joint, view.joints, view.waits, ids, nowMs).map((bond) => (
        <p key={bond.jointId} class="loud" role="status">
          {`${bondWords(bond)} This step loads it.`}
        </p>
      ))}
    </>
  );
}

const reasons = ['The label says it holds this by now', 'Trial only, comes apart again'] as const;

interface BondSheetProps {
  /** The joint that the bond bears. */
  jointId: string;
  save: SaveState;
  /** Resolves to whether it went on. */
  onWord: (despite: string) => Promise<boolean>;
}

/** Asks for a word where a bond has not set; what was meant goes on with it. */
export function BondSheet({ jointId, save, onWord }: BondSheetProps) {
  const [dismissed, setDismissed] = useState<SaveState>();
  if (save.is !== 'refused' || save.refused !== 'bond-not-set' || dismissed === save) return null;
  return (
    <ReasonSheet
      about={`bond:${jointId}`}
      title="A bond has not set"
      presets={reasons}
      act="Go on for this reason"
      save={save}
      onReason={onWord}
      onClose={() => setDismissed(save)}
    />
  );
}

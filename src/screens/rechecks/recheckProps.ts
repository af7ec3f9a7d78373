import type { Entry, Settings } from '../../journal/entries.ts';
import type { JointRow, RecheckRow } from '../../journal/rows.ts';
import type { RechecksView } from './Rechecks.tsx';

/** What the answering of any one re-check is given. */
export interface RecheckProps {
  view: RechecksView;
  recheck: RecheckRow;
  joint: JointRow | undefined;
  settings: Settings;
  nowMs: number;
  /** Which of those due this is, counted from 1, and how many there are; absent for one done early. */
  place: { at: number; of: number } | undefined;
  toolId: string | undefined;
  onTool: (toolId: string | undefined) => void;
  /** Told after the commit. A finding stays in sight until it is dismissed. */
  onAnswered: (entries: Entry[]) => void;
  onBack: () => void;
}

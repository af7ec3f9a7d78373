import type { Entry, Settings } from '../../journal/entries.ts';
import type { JointRow, StepRow } from '../../journal/rows.ts';
import type { BenchView } from './frame/BenchFrame.tsx';

/** What every kind of step at the bench is given. */
export interface StepProps {
  view: BenchView;
  step: StepRow;
  index: number;
  joint: JointRow | undefined;
  settings: Settings;
  /** Tool chosen at an earlier step of this sitting. */
  toolId: string | undefined;
  onTool: (toolId: string | undefined) => void;
  onShow: (stepId: string) => void;
  onBack: () => void;
  onNext: () => void;
  /** Told after the commit; what was logged closes the step, or leaves it open as hand-tight. */
  onLogged: (entries: Entry[]) => void;
  /** Takes back what was just logged; false when there is nothing that young. */
  onUndo: () => boolean;
}

import { noSealDraft, type SealDraft } from '../../drafts/sealDraft.ts';
import type { Id, SealMark } from '../../journal/entries.ts';
import type { JointRow, WaitRow } from '../../journal/rows.ts';
import { type Gathered, useStepDraft } from '../bench/useStepDraft.ts';
import { type SaveState, useLogbook, useRun } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { markNames } from './sealText.ts';

export interface SealEntry {
  draft: SealDraft;
  change: (changed: Partial<SealDraft>) => void;
  /** Note and photos that go with the next mark. */
  gathered: Gathered;
  save: SaveState;
  clear(): void;
  /** Logs one mark; true once it is kept. */
  log(mark: SealMark, lookAgainMs?: number, overLimit?: true): Promise<boolean>;
  /** Sets the next look without a mark; true once it is kept. */
  lookAgain(spanMs: number): Promise<boolean>;
}

/**
 * Writes the marks of one wheel, and holds what is typed for the next.
 * @param stepId the step of the plan that a seating finishes
 * @param wait the look that is asked for already
 */
export function useSealMarks(joint: JointRow, stepId: Id | undefined, wait: WaitRow | undefined): SealEntry {
  const { jointId, bikeId, name } = joint;
  const logbook = useLogbook();
  const [draft, change, clearDraft] = useDraft<SealDraft>(`seal:${jointId}`, noSealDraft);
  const gathered = useStepDraft(`seal-${jointId}`, undefined);
  const { run, save, clear } = useRun();
  const log = async (mark: SealMark, lookAgainMs?: number, overLimit?: true) => {
    if (save.is === 'saving') return false;
    const entries = await run(
      {
        type: 'mark-seal',
        ...{ jointId, mark },
        ...(mark.mark === 'seated' && stepId ? { stepId } : {}),
        ...gathered.noteAndPhotos(),
        ...(lookAgainMs === undefined ? {} : { lookAgainMs }),
        ...(overLimit ? { overLimit } : {}),
      },
      { photos: gathered.photos, undo: `${markNames[mark.mark]}: ${name}` },
    );
    if (!entries) return false;
    // The next mark starts empty; gauge, units and kind of sealant stay as they were chosen.
    change({ pressure: '', temperature: '', below: false, amount: '' });
    clearDraft();
    gathered.change({ note: '' });
    gathered.clear();
    return true;
  };
  const lookAgain = async (spanMs: number) => {
    if (save.is === 'saving') return false;
    // A running wait counts from when it began, not from this tap.
    const command = wait
      ? ({
          type: 'change-wait',
          waitId: wait.waitId,
          waitMs: spanMs + logbook.now() - wait.startedAtMs,
          why: 'New time to look again set',
        } as const)
      : ({ type: 'start-wait', bikeId, jointId, kind: 'seal', title: name, waitMs: spanMs } as const);
    return (await run(command, { undo: `Look again: ${name}` })) !== undefined;
  };
  return { draft, change, gathered, save, clear, log, lookAgain };
}

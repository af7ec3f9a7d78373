import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { DefectRow, JointRow } from '../../../journal/rows.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { convert, type DistanceUnit, unitLabel } from '../../../mechanics/units.ts';
import { dayText } from '../../../words/dayText.ts';
import { useRun } from '../../door.tsx';
import { AskSheet } from '../sheets/AskSheet.tsx';
import { DefectSheet } from '../sheets/DefectSheet.tsx';

export interface DefectsSectionProps {
  bikeId: Id;
  /** The one to open at once. */
  open: Id | undefined;
  defects: DefectRow[];
  joints: JointRow[];
  unit: DistanceUnit;
}

function limitWords({ dueAtMs, untilKm, restriction }: DefectRow, unit: DistanceUnit): string {
  const far = untilKm === undefined ? undefined : numberText(convert(untilKm, 'km', unit), 1);
  const limits = [
    ...(dueAtMs === undefined ? [] : [dayText(dueAtMs)]),
    ...(far === undefined ? [] : [`${far} ${unitLabel[unit]} after it was found`]),
  ].join(' or ');
  return [limits && `Until ${limits}`, restriction].filter(Boolean).join('. ');
}

/** What was found wrong and is not mended yet. */
export function DefectsSection({ bikeId, open, defects, joints, unit }: DefectsSectionProps) {
  const [sheet, setSheet] = useState<'find' | Id | undefined>(open);
  const { run, save, clear } = useRun();
  const closing = defects.find(({ defectId }) => defectId === sheet);
  const shut = () => {
    setSheet(undefined);
    clear();
  };
  const mend = async (how: string) => {
    if (!closing) return false;
    const command = { type: 'close-defect', defectId: closing.defectId, how } as const;
    const entries = await run(command, { undo: 'Problem closed' });
    if (entries) shut();
    return entries !== undefined;
  };
  return (
    <Fold label="Problems" end={defects.length} open={defects.length > 0}>
      {defects.map((defect) => (
        <ListRow
          key={defect.defectId}
          title={defect.words}
          detail={limitWords(defect, unit)}
          state="held"
          stateWord={defect.decision === 'do-not-ride' ? 'Do not ride' : 'Ride limited'}
          onPress={() => setSheet(defect.defectId)}
        />
      ))}
      <div class="buttons">
        <Button icon="warning" onPress={() => setSheet('find')}>
          Report a problem
        </Button>
      </div>
      {sheet === 'find' && <DefectSheet bikeId={bikeId} joints={joints} unit={unit} onClose={shut} />}
      {closing && (
        <AskSheet
          draft={`mended:${closing.defectId}`}
          title={closing.words}
          label="How it was fixed"
          act="Close the problem"
          save={save}
          onWords={mend}
          onClose={shut}
        />
      )}
    </Fold>
  );
}

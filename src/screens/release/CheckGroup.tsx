import './release.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { fittedHere } from '../../fit/fittedHere.ts';
import type { Id } from '../../journal/entries.ts';
import type { PartRow, RideCheckRow } from '../../journal/rows.ts';
import {
  answeredCount,
  type CheckAnswers,
  confirmedItems,
  firstAnswers,
} from '../../practice/release/checkAnswers.ts';
import { defectKind } from '../../practice/release/defectKind.ts';
import { notFitted } from '../../standards/checks/notFitted.ts';
import type { RideCheckGroup, RideCheckItem } from '../../standards/checks/rideCheck.ts';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { AskSheet } from '../bike/sheets/AskSheet.tsx';
import { DefectSheet, type DefectSheetProps } from '../bike/sheets/DefectSheet.tsx';
import { type SaveState, useRun } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { Waits } from '../Waits.tsx';
import { CheckItem } from './CheckItem.tsx';

export interface CheckGroupProps extends Pick<DefectSheetProps, 'joints' | 'unit'> {
  bikeId: Id;
  group: RideCheckGroup;
  parts: readonly PartRow[];
  confirmed: RideCheckRow['groups'][string] | undefined;
  onConfirmed: () => void;
  onBack: () => void;
}

const wordsMissing: SaveState = { is: 'refused', refused: 'words-missing', sentence: 'Write a word or two.' };

/** One group of the pre-ride check: look at each thing, answer, then confirm the lot with one tap. */
export function CheckGroup(props: CheckGroupProps) {
  const { bikeId, group, confirmed, joints, parts, unit, onConfirmed, onBack } = props;
  const [draft, change, clear] = useDraft<{ answers: CheckAnswers }>(`check:${bikeId}:${group.id}`, {
    answers: firstAnswers(group, confirmed, { parts, joints }),
  });
  const [asked, setAsked] = useState<RideCheckItem>();
  const [defect, setDefect] = useState<RideCheckItem>();
  const [wordless, setWordless] = useState(false);
  const { run, save } = useRun();
  const { answers } = draft;
  const done = answeredCount(group, answers);
  const all = done === group.items.length;
  const answer = (itemId: string, given: CheckAnswers[string]) =>
    change({ answers: { ...answers, [itemId]: given } });
  // What the bike has by its parts can be a finding, but not missing.
  const mayLack = (itemId: string) =>
    notFitted[itemId] !== undefined && !fittedHere(itemId, { parts, joints });
  const wordsFor = ({ id }: RideCheckItem) => {
    const given = answers[id];
    return given && 'words' in given ? given.words : '';
  };
  const confirm = async () => {
    if (!all || save.is === 'saving') return;
    const command = {
      type: 'confirm-ride-check',
      ...{ bikeId, groupId: group.id, items: confirmedItems(group, answers) },
    } as const;
    if (!(await run(command, { undo: `Confirmed: ${group.title}` }))) return;
    clear();
    onConfirmed();
  };
  return (
    <Screen
      title={group.title}
      route={`check ${group.id}`}
      back={onBack}
      waits={<Waits />}
      actions={
        <BenchActs
          save={save}
          main={
            <Button
              kind="main"
              size="greasy"
              icon="check"
              disabled={!all}
              under={`${done} of ${group.items.length} answered`}
              onPress={confirm}
            >
              {all ? 'All OK' : 'Answer each one'}
            </Button>
          }
        />
      }
    >
      <div>
        {group.items.map((item) => (
          <CheckItem
            key={item.id}
            item={item}
            answer={answers[item.id]}
            onOk={() => answer(item.id, { ok: true })}
            onFinding={() => {
              setWordless(false);
              setAsked(item);
            }}
            onAbsent={mayLack(item.id) ? () => answer(item.id, { ok: false, absent: true }) : undefined}
            onDefect={() => setDefect(item)}
          />
        ))}
      </div>
      {asked && (
        <AskSheet
          draft={`check:${bikeId}:${group.id}:${asked.id}`}
          title="Problem"
          label={`What did you find? ${asked.words}`}
          first={wordsFor(asked)}
          act="Keep the problem"
          save={wordless ? wordsMissing : { is: 'idle' }}
          onWords={async (words) => {
            setWordless(words === '');
            if (words === '') return false;
            answer(asked.id, { ok: false, words });
            setAsked(undefined);
            return true;
          }}
          onClose={() => setAsked(undefined)}
        />
      )}
      {defect && (
        <DefectSheet
          {...{ bikeId, joints, unit }}
          words={wordsFor(defect)}
          area={defectKind(defect)}
          onClose={() => setDefect(undefined)}
        />
      )}
    </Screen>
  );
}

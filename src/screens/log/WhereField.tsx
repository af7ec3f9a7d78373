import { TextField } from '../../controls/fields/TextField.tsx';
import type { LineDraft, LineKind } from '../../practice/log/lineDraft.ts';
import type { AtHand } from '../../practice/log/named.ts';
import { picksFor } from '../../practice/log/picks.ts';
import { Picks } from './Picks.tsx';

const labels: Readonly<Record<LineKind, string>> = {
  ...{ torque: 'Joint', locker: 'Joint', tyre: 'Tyre', cut: 'Part', part: 'What is it?', ride: '' },
  ...{ problem: 'Where (optional)', note: 'About (optional)' },
};

export interface WhereFieldProps {
  kind: LineKind;
  draft: LineDraft;
  hand: AtHand;
  error: string | undefined;
  change: (changed: Partial<LineDraft>) => void;
}

/** Which joint or part: typed, or tapped from what the bike has and what is usual. */
export function WhereField({ kind, draft, hand, error, change }: WhereFieldProps) {
  const { where, whereId } = draft;
  const all = picksFor(kind, hand, '');
  const named = all.find((pick) => (whereId === '' ? pick.words === where : pick.id === whereId));
  // What was tapped stays among the others; what is typed narrows them.
  const picks = named ? all : picksFor(kind, hand, where);
  const keyOf = (pick: { id: string; words: string }) => pick.id || pick.words;
  return (
    <div class="log-group">
      <TextField
        label={labels[kind]}
        value={where}
        onInput={(words) => change({ where: words, whereId: '', fromPartId: '' })}
        error={error}
        maxLength={120}
      />
      <Picks
        label={labels[kind]}
        options={picks.map((pick) => ({ value: keyOf(pick), words: pick.words }))}
        chosen={named && keyOf(named)}
        onChoose={(value) => {
          const pick = picks.find((one) => keyOf(one) === value);
          if (pick) change({ where: pick.words, whereId: pick.id, fromPartId: '' });
        }}
      />
    </div>
  );
}

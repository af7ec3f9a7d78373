import { TextField } from '../../../controls/fields/TextField.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { toggleBetween } from '../../../drafts/jointDraft.ts';
import type { Between, BetweenKind } from '../../../journal/entries.ts';
import type { PartRow } from '../../../journal/rows.ts';
import { betweenNames } from '../../../words/betweenNames.ts';
import { partLine } from '../../../words/partLine.ts';

const substances: readonly BetweenKind[] = [
  'dry',
  'grease',
  'assembly-paste',
  'anti-seize',
  'threadlocker',
  'retaining-compound',
  'washer',
  'other',
];

/** Parts that go between two others, and what the joint calls them. */
const bridging: Partial<Record<string, BetweenKind>> = {
  adapter: 'adapter',
  shim: 'shim',
  sleeve: 'shim',
  spacer: 'spacer',
};

export interface BetweenFieldsProps {
  between: readonly Between[];
  parts: readonly PartRow[];
  onBetween: (between: Between[]) => void;
}

/** What goes between the faces and on the threads. */
export function BetweenFields({ between, parts, onBetween }: BetweenFieldsProps) {
  const bridges = parts.flatMap((part) => {
    const kind = bridging[part.kind];
    return kind ? [{ part, one: { kind, partId: part.partId } }] : [];
  });
  const lies = (one: Between) =>
    between.some(({ kind, partId }) => kind === one.kind && partId === one.partId);
  const other = between.find(({ kind }) => kind === 'other');
  return (
    <>
      <Ruler label="Grease, paste or threadlocker" />
      <div>
        {bridges.map(({ part, one }) => (
          <Toggle
            key={part.partId}
            label={part.name}
            hint={partLine(part)}
            on={lies(one)}
            onToggle={() => onBetween(toggleBetween(between, one))}
          />
        ))}
        {substances.map((kind) => (
          <Toggle
            key={kind}
            label={betweenNames[kind]}
            on={lies({ kind })}
            onToggle={() => onBetween(toggleBetween(between, { kind }))}
          />
        ))}
      </div>
      {other && (
        <TextField
          label="What else"
          value={other.words ?? ''}
          onInput={(words) =>
            onBetween(between.map((one) => (one.kind === 'other' ? { ...one, words } : one)))
          }
          maxLength={120}
        />
      )}
    </>
  );
}

import { SelectField } from '../../controls/fields/SelectField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import type { HistoryLine } from '../../logbook.ts';
import { entryAbout } from '../../words/history/entryAbout.ts';
import type { Names } from '../../words/history/names.ts';
import { type EntryGroup, groupLabels } from './entryHeads.ts';
import type { Narrowing } from './timeline.ts';

const ALL = 'all';

export interface SeenIds {
  joints: string[];
  parts: string[];
  bikes: string[];
}

/** The joints, parts and bikes named in what was read so far. */
export function seenIn(lines: readonly HistoryLine[]): SeenIds {
  const abouts = lines.map(({ entry }) => entryAbout(entry));
  return {
    joints: [...new Set(abouts.flatMap(({ joints }) => joints))],
    parts: [...new Set(abouts.flatMap(({ parts }) => parts))],
    bikes: [...new Set(abouts.flatMap(({ bikes }) => bikes))],
  };
}

export interface NarrowProps {
  narrowing: Narrowing;
  seen: SeenIds;
  names: Names;
  change: (changed: Partial<Narrowing>) => void;
}

/** What the history is narrowed to: words, kind of work, joint, part, bike. */
export function Narrow({ narrowing, seen, names, change }: NarrowProps) {
  const pick = (
    label: string,
    every: string,
    value: string | undefined,
    ids: string[],
    nameOf: (id: string) => string | undefined,
    field: keyof Narrowing,
  ) =>
    ids.length > 1 && (
      <SelectField
        label={label}
        value={value ?? ALL}
        options={[
          { value: ALL, label: every },
          ...ids
            .map((id) => ({ value: id, label: nameOf(id) ?? '…' }))
            .sort((a, b) => a.label.localeCompare(b.label, undefined, { numeric: true })),
        ]}
        onChoose={(id) => change({ [field]: id === ALL ? undefined : id })}
      />
    );
  const { group, jointId, partId, bikeId, sought } = narrowing;
  const on = [group, jointId, partId, bikeId].filter((one) => one !== undefined).length;
  return (
    <div class="history-ask">
      <TextField
        label="Find words"
        type="search"
        value={sought}
        onInput={(words) => change({ sought: words })}
      />
      <Fold label="Filter" end={on === 0 ? 'everything' : `${on} chosen`}>
        <div class="stack">
          <SelectField
            label="Kind of entry"
            value={group ?? ALL}
            options={[
              { value: ALL, label: 'every kind' },
              ...(Object.keys(groupLabels) as EntryGroup[]).map((value) => ({
                value: value as string,
                label: groupLabels[value],
              })),
            ]}
            onChoose={(value) => change({ group: value === ALL ? undefined : (value as EntryGroup) })}
          />
          {pick('Joint', 'every joint', jointId, seen.joints, names.joint, 'jointId')}
          {pick('Part', 'every part', partId, seen.parts, names.part, 'partId')}
          {pick('Bike', 'every bike', bikeId, seen.bikes, names.bike, 'bikeId')}
        </div>
      </Fold>
    </div>
  );
}

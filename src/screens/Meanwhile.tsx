import './meanwhile.css';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/frames/Notice.tsx';
import type { ChangedMeanwhile as Changed } from '../drafts/edit.ts';

export interface MeanwhileProps<T> {
  changed: readonly Changed<T>[];
  /** What each field is called on this form. */
  labels: Partial<Record<keyof T, string>>;
  onTake: (taken: Partial<T>) => void;
}

/** What a field says, where that fits a line; a list of sizes or bolts does not. */
function shown(value: unknown): string | undefined {
  if (value === '' || value === null || value === undefined) return 'empty';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'string' || typeof value === 'number' ? `“${value}”` : undefined;
}

/** What was changed elsewhere since this form was opened, and a way to take that instead of what was typed here. */
export function Meanwhile<T extends object>({ changed, labels, onTake }: MeanwhileProps<T>) {
  const labelled = changed.filter(({ field }) => labels[field] !== undefined);
  if (labelled.length === 0) return null;
  return (
    <Notice kind="caution" title="Changed since you started this edit">
      <ul class="meanwhile">
        {labelled.map(({ field, now, replaced }) => {
          const value = shown(now);
          const is = value === undefined ? 'changed' : `now ${value}`;
          return (
            <li key={String(field)}>
              <span>{`${labels[field]}: ${is}${replaced ? '. Saving replaces it with yours.' : ''}`}</span>
              {replaced && (
                <Button onPress={() => onTake({ [field]: now } as unknown as Partial<T>)}>
                  {value === undefined ? 'Take the change' : `Use ${value}`}
                </Button>
              )}
            </li>
          );
        })}
      </ul>
    </Notice>
  );
}

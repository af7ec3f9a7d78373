import './Filters.css';
import { Icon, type IconName } from '../Icon.tsx';

export interface FilterTab<T extends string> {
  value: T;
  label: string;
  icon?: IconName;
  /** How many rows it would show. */
  count?: number | undefined;
}

export interface FiltersProps<T extends string> {
  /** Spoken name of the row: "Show". */
  label: string;
  tabs: readonly FilterTab<T>[];
  /** Those switched on; for one-of-several pass a single one. */
  on: readonly T[];
  onToggle: (value: T) => void;
}

/** Index tabs that narrow a list. Which of them may be on together is decided by the screen. */
export function Filters<T extends string>({ label, tabs, on, onToggle }: FiltersProps<T>) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row in every browser
    <div class="filters" role="group" aria-label={label}>
      {tabs.map((tab) => (
        <button
          key={tab.value}
          type="button"
          class="filter"
          aria-pressed={on.includes(tab.value)}
          onClick={() => onToggle(tab.value)}
        >
          {tab.icon && <Icon name={tab.icon} sizePx={20} />}
          {tab.label}
          {tab.count !== undefined && <span>{tab.count}</span>}
        </button>
      ))}
    </div>
  );
}

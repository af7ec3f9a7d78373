import './log.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';

/** So many stand in sight; the others come at a tap. */
const IN_SIGHT = 5;

export interface PicksProps<T extends string> {
  /** What is chosen here, for a screen reader. */
  label: string;
  options: readonly { value: T; words: string }[];
  chosen: T | undefined;
  onChoose: (value: T) => void;
  /** All in sight from the start. */
  all?: boolean;
}

/** One of several by a tap, the usual first. */
export function Picks<T extends string>({ label, options, chosen, onChoose, all = false }: PicksProps<T>) {
  const [more, setMore] = useState(all);
  if (options.length === 0) return null;
  const shown = more || options.length <= IN_SIGHT + 1 ? options : options.slice(0, IN_SIGHT);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row in every browser
    <div class="log-picks" role="group" aria-label={label}>
      {shown.map(({ value, words }) => (
        <Button key={value} pressed={value === chosen} onPress={() => onChoose(value)}>
          {words}
        </Button>
      ))}
      {shown.length < options.length && (
        <Button label={`More: ${label}`} onPress={() => setMore(true)}>
          More
        </Button>
      )}
    </div>
  );
}

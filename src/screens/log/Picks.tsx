import './log.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';

/** So many stand in sight; the others come at a tap. */
const IN_SIGHT = 4;

export interface PicksProps<T extends string> {
  /** What is chosen here, for a screen reader. */
  label: string;
  options: readonly { value: T; words: string }[];
  chosen: T | undefined;
  onChoose: (value: T) => void;
  /** All in sight, also once one is chosen; otherwise the others make room for the rest of the form. */
  all?: boolean;
}

/** One of several by a tap, the usual first. */
export function Picks<T extends string>({ label, options, chosen, onChoose, all = false }: PicksProps<T>) {
  const [more, setMore] = useState(false);
  if (options.length === 0) return null;
  const folded = options.filter(({ value }) => value === chosen);
  const few = options.length <= IN_SIGHT + 1 ? options : options.slice(0, IN_SIGHT);
  const shown = more || all ? options : folded.length > 0 ? folded : few;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row in every browser
    <div class="log-picks" role="group" aria-label={label}>
      {shown.map(({ value, words }) => (
        <Button
          key={value}
          pressed={value === chosen}
          onPress={() => {
            setMore(false);
            onChoose(value);
          }}
        >
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

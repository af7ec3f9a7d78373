import '../figures/Ruler.css';
import './Fold.css';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import { Icon } from '../Icon.tsx';

export interface FoldProps {
  /** Heading of the section, in sight also while it is folded. */
  label: string;
  /** At the right end: a count, a state. */
  end?: ComponentChildren;
  /** Open from the start. */
  open?: boolean;
  /** Something inside is wrong and must be seen: the section opens, and stays as the hand leaves it after that. */
  wrong?: boolean;
  /** Drawn only while the section is open. */
  children: ComponentChildren;
}

/** A ruled section of the form that opens at a tap; what is folded away is not drawn at all. */
export function Fold({ label, end, open = false, wrong = false, children }: FoldProps) {
  const [isOpen, setOpen] = useState(open || wrong);
  useLayoutEffect(() => {
    if (wrong) setOpen(true);
  }, [wrong]);
  return (
    <details class="fold" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary class="ruler fold-head">
        <Icon name="more" sizePx={20} />
        <h2 class="ruler-word">{label}</h2>
        {end !== undefined && <span class="fold-end">{end}</span>}
      </summary>
      {isOpen && children}
    </details>
  );
}

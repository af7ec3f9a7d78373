import './Ruler.css';
import type { ComponentChildren } from 'preact';

export interface RulerProps {
  /** Heading of the section below; without one a bare divider is drawn. */
  label?: string;
  /** At the right end: a count, a small link. */
  end?: ComponentChildren;
}

/** A ruled heading of the form, or a graduated line between two parts of it. */
export function Ruler({ label, end }: RulerProps) {
  if (!label) return <hr class="ruler-bare" />;
  return (
    <div class="ruler">
      <h2 class="ruler-word">{label}</h2>
      {end}
    </div>
  );
}

import './Worktop.css';
import type { ComponentChildren } from 'preact';

/** What is worked with while the hands are dirty: a column of large things below one another. */
export function Worktop({ children }: { children: ComponentChildren }) {
  return <div class="worktop">{children}</div>;
}

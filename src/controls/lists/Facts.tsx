import './Facts.css';
import type { ComponentChildren } from 'preact';

export type CaptionedFact = readonly [caption: string, words: ComponentChildren];

/** Captions and what stands behind them; a fact without words is left out. */
export function Facts({ of }: { of: readonly CaptionedFact[] }) {
  const filled = of.filter(([, words]) => words !== undefined && words !== '' && words !== false);
  if (filled.length === 0) return null;
  return (
    <dl class="facts">
      {filled.map(([caption, words]) => (
        <div class="fact" key={caption}>
          <dt>{caption}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}

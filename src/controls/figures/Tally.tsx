import './Tally.css';

export interface TallyProps {
  /** Bolts of the joint. */
  of: number;
  /** Bolts done in this pass. */
  done: number;
  /** Which pass this is, and how many there are; left out where one pass is enough. */
  pass?: { at: number; of: number } | undefined;
  /** What is counted. */
  noun?: string;
}

/** Bolt heads counted off: filled and ticked when done, ringed with the grease pencil while not. */
export function Tally({ of, done, pass, noun = 'bolts' }: TallyProps) {
  return (
    <div class="tally">
      <span class="tally-bolts" aria-hidden="true">
        {Array.from({ length: of }, (_, bolt) => (
          // biome-ignore lint/a11y/noSvgWithoutTitle: hidden; the words beside it say the same
          <svg key={bolt} width="40" height="40" viewBox="0 0 40 40">
            <path
              class={bolt < done ? 'tally-bolt tally-done' : 'tally-bolt'}
              d="M14 9.6h12l6 10.4-6 10.4H14L8 20z"
            />
            {bolt < done ? (
              <path class="tally-tick" d="m14 20 5 5 8-10" />
            ) : (
              <path
                class="tally-ring"
                d="M26 4C14 0 3 9 4 21c1 11 10 16 19 15 9-1 15-9 13-18C34 10 28 5 19 4"
              />
            )}
          </svg>
        ))}
      </span>
      <span class="tally-text" role="status">
        {done} of {of} {noun}
        {pass && `, pass ${pass.at} of ${pass.of}`}
      </span>
    </div>
  );
}

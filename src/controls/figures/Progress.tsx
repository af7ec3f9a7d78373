import './Progress.css';

export interface ProgressProps {
  /** The step one is at, counted from 1. */
  at: number;
  of: number;
  /** Steps passed over without being done, counted from 1; they stay red. */
  open?: readonly number[];
  /** What is counted. */
  noun?: string;
}

/** Where am I: a rule with one division for each step. */
export function Progress({ at, of, open = [], noun = 'Step' }: ProgressProps) {
  const text = `${noun} ${at} of ${of}`;
  const openText = open.length > 0 ? `${open.length} not done` : '';
  const look = (step: number) =>
    step === at ? 'progress-now' : open.includes(step) ? 'progress-open' : step < at ? 'progress-past' : '';
  return (
    <div
      role="progressbar"
      aria-label={noun}
      aria-valuemin={1}
      aria-valuemax={of}
      aria-valuenow={at}
      aria-valuetext={openText ? `${text}, ${openText}` : text}
    >
      <div class="progress-words">
        <span>{text}</span>
        {openText && <span>{openText}</span>}
      </div>
      <div class="progress-rule">
        {Array.from({ length: of }, (_, index) => (
          <i key={index} class={look(index + 1)} />
        ))}
      </div>
    </div>
  );
}

import './workings.css';
import { useState } from 'preact/hooks';
import { Mark, type MarkState } from '../../controls/figures/Mark.tsx';
import { Icon } from '../../controls/Icon.tsx';
import type { LineVerdict, WorkingLine } from '../../workings/joint/line.ts';
import { WorkingView } from './WorkingView.tsx';

/** A good figure is noted, never ticked: a tick means done, not safe. */
const marks: Record<LineVerdict['tone'], MarkState> = { good: 'noted', care: 'due', stop: 'held' };

function Notes({ caption, of }: { caption: string; of: readonly string[] }) {
  return (
    <>
      <p class="caption">{caption}</p>
      <ul class="working-list">
        {of.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </>
  );
}

/** One figure of a joint; a tap opens how it was worked out. */
export function WorkingRow({ line }: { line: WorkingLine }) {
  const { label, text, verdict, warnings = [], raises = [], working, missing = [] } = line;
  const [open, setOpen] = useState(false);
  const words = (
    <span class="working-words">
      <span class="caption">{label}</span>
      <span class="working-text">{text}</span>
      {verdict && <Mark state={marks[verdict.tone]} word={verdict.word} />}
      {warnings.length > 0 && verdict?.tone !== 'good' && !open && (
        <span class="small">{warnings.length === 1 ? warnings[0] : `${warnings.length} warnings`}</span>
      )}
    </span>
  );
  if (!working && missing.length + warnings.length + raises.length === 0)
    return <div class="working-row working-plain">{words}</div>;
  return (
    <details class="working-row" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary class="working-head">
        {words}
        <Icon name="more" sizePx={20} />
      </summary>
      {open && (
        <div class="working-body">
          {warnings.length > 0 && <Notes caption="Warnings" of={warnings} />}
          {working && <WorkingView label="Result" working={working} />}
          {raises.length > 0 && <Notes caption="What would raise it" of={raises} />}
          {missing.length > 0 && (
            <Notes
              caption={working ? 'To make it more accurate' : 'What is missing'}
              of={missing.map(({ what, whereToMeasure }) => `${what}: ${whereToMeasure}`)}
            />
          )}
        </div>
      )}
    </details>
  );
}

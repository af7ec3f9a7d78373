import './workings.css';
import { Gauge } from '../../controls/figures/Gauge.tsx';
import type { Working } from '../../mechanics/working.ts';
import { knownWords } from '../../words/knownWords.ts';
import { leans, valueText, workedFigureText } from '../../words/workedFigureText.ts';

export interface WorkingViewProps {
  label: string;
  working: Working;
}

/** Everything needed to do a computation again by hand, and how far it can be trusted. */
export function WorkingView({ label, working }: WorkingViewProps) {
  const { result, unit, formula, inputs, source, known } = working;
  const measure = unit === '1' ? '' : unit;
  const wide = typeof result !== 'number' && result.lo < result.hi;
  return (
    <div class="working">
      {wide ? (
        <Gauge
          label={label}
          value={leans(result) ? result.mid : undefined}
          text={leans(result) ? `likeliest ${workedFigureText(result.mid)} ${measure}`.trim() : ''}
          band={result}
          bandText={`${workedFigureText(result.lo)} to ${workedFigureText(result.hi)} ${measure}`.trim()}
          judged={false}
        />
      ) : (
        <div>
          <p class="caption">{label}</p>
          <p class="working-result">{valueText(result, unit)}</p>
        </div>
      )}
      <p class="working-formula">{formula}</p>
      <dl class="working-inputs">
        {inputs.map(({ name, value, unit: inputUnit }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{valueText(value, inputUnit)}</dd>
          </div>
        ))}
      </dl>
      <p class="small">
        <strong>{knownWords[known]}.</strong> Source: {source}.
      </p>
    </div>
  );
}

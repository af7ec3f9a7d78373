import { Plot } from '../../controls/figures/Plot.tsx';
import { convert, type TorqueUnit, unitLabel } from '../../mechanics/units.ts';
import type { RulingTarget } from '../../planning/rulingTarget.ts';
import type { TorqueTime } from '../../practice/joint/torqueTimes.ts';
import { dayText } from '../../words/dayText.ts';

const DAY_MS = 86_400_000;
/** The error a torque tool may have; a single figure is drawn that wide. Own proposal, as at the bench. */
const TOOL_ERROR = 0.06;

function bandOf(ruling: RulingTarget, unit: TorqueUnit): { lo: number; hi: number } | undefined {
  if (!ruling.ok) return undefined;
  const { torque, upTo } = ruling.target;
  const lo = convert(torque.value, torque.unit, unit);
  return upTo
    ? { lo, hi: convert(upTo.value, upTo.unit, unit) }
    : { lo: lo * (1 - TOOL_ERROR), hi: lo * (1 + TOOL_ERROR) };
}

export interface TorquePlotProps {
  times: readonly TorqueTime[];
  ruling: RulingTarget;
  unit: TorqueUnit;
}

/** The torques of a joint over its life, in the band of its target. */
export function TorquePlot({ times, ruling, unit }: TorquePlotProps) {
  const first = times[0];
  if (!first || times.length < 2) return null;
  const met = times.some(({ what }) => what === 'found');
  return (
    <div class="joint-plot">
      <Plot
        label={met ? 'Applied and found at re-checks' : 'Applied'}
        points={times.map(({ atMs, value }) => ({ x: (atMs - first.atMs) / DAY_MS, y: value }))}
        band={bandOf(ruling, unit)}
        xLabel={`days since ${dayText(first.atMs)}`}
        yLabel={unitLabel[unit]}
        joined
      />
      {ruling.ok && (
        <p class="small">
          {ruling.target.upTo
            ? 'Shaded: the target as given.'
            : 'Shaded: the target, give or take the 6 % a torque tool may be out.'}
        </p>
      )}
    </div>
  );
}

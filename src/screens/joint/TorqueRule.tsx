import './torqueRule.css';
import { torqueScale } from '../../drawing/scales/torqueScale.ts';
import type { JointRow } from '../../journal/rows.ts';
import { numberText } from '../../mechanics/numberText.ts';
import { convert, type TorqueUnit, type Typed, torqueNm, unitLabel } from '../../mechanics/units.ts';
import { rulingTarget } from '../../planning/rulingTarget.ts';

const nm = (torque: Typed<TorqueUnit> | undefined) => torque && torqueNm(torque.value, torque.unit);
/** Length of the rule in the units of its drawing, and where it begins. */
const LENGTH = 320;
const LEFT = 20;
const x = (share: number) => LEFT + share * LENGTH;

/** Target, applied and found on one rule: a hatched band, a black wedge, a hollow diamond. The figures stand in words below it. */
export function TorqueRule({ joint, unit }: { joint: JointRow; unit: TorqueUnit }) {
  const ruling = rulingTarget(joint.targets);
  const applied = nm(joint.applied?.applied);
  const found = nm(joint.found?.movedAt);
  if (!ruling.ok || (applied === undefined && found === undefined)) return null;
  const { torque, upTo } = ruling.target;
  const lo = torqueNm(torque.value, torque.unit);
  const scale = torqueScale({ target: [lo, nm(upTo) ?? lo], applied, found });
  const { from, to } = scale.target;
  return (
    <svg class="torque-rule" viewBox="0 0 360 84" aria-hidden="true" focusable="false">
      <path class="torque-line" d={`M${LEFT} 44H${LEFT + LENGTH}`} />
      {scale.ticks.map((tick) => (
        <g key={tick}>
          <path class="torque-line" d={`M${x(tick / scale.endNm)} 44v8`} />
          <text x={x(tick / scale.endNm)} y="72" text-anchor="middle">
            {numberText(convert(tick, 'N.m', unit), 0)}
          </text>
        </g>
      ))}
      <rect class="torque-target" x={x(from) - 2} y="20" width={x(to) - x(from) + 4} height="24" />
      {scale.applied !== undefined && (
        <path class="torque-applied" d={`M${x(scale.applied)} 42l-8 -18h16z`} />
      )}
      {scale.found !== undefined && <path class="torque-found" d={`M${x(scale.found)} 14l9 12-9 12-9-12z`} />}
      <text x={LEFT + LENGTH} y="14" text-anchor="end">
        {unitLabel[unit]}
      </text>
    </svg>
  );
}

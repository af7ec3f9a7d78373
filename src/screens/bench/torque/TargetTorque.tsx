import './targetTorque.css';
import { BigNumber } from '../../../controls/figures/BigNumber.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { Icon } from '../../../controls/Icon.tsx';
import type { PartRow } from '../../../journal/rows.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { convert, type TorqueUnit, unitLabel } from '../../../mechanics/units.ts';
import type { RulingTarget, TorqueTarget as Target } from '../../../planning/rulingTarget.ts';
import { sourceText, standingWarning, targetFigureText } from '../../../words/targetWords.ts';

export interface TorqueTargetProps {
  ruling: RulingTarget;
  parts: readonly PartRow[];
  torqueUnit: TorqueUnit;
}

const withUnit = (target: Target) => `${targetFigureText(target)} ${unitLabel[target.torque.unit]}`;

/** The figure in the unit of the settings, where the part speaks another. */
function otherUnit({ torque, upTo }: Target, unit: TorqueUnit): string {
  if (torque.unit === unit) return '';
  const ends = [torque, ...(upTo ? [upTo] : [])];
  const figures = ends.map((end) => numberText(convert(end.value, end.unit, unit), 1));
  return ` = ${figures.join(' to ')} ${unitLabel[unit]}.`;
}

/** The torque to give, readable from afar, and who says so. A missing source is louder than a good one. */
export function TargetTorque({ ruling, parts, torqueUnit }: TorqueTargetProps) {
  if (!ruling.ok)
    return (
      <Notice kind="caution" title="No torque given, no source">
        Look for a figure on both parts, or ask the makers.
      </Notice>
    );
  const { target, standing, overruled } = ruling;
  const nameOf = (given: Target) => parts.find(({ partId }) => partId === given.partId)?.name;
  const warning = standingWarning[standing];
  const others = overruled.map((given) => `${withUnit(given)} (${sourceText(given, nameOf(given))})`);
  return (
    <div class={target.upTo ? 'target-range' : undefined}>
      <BigNumber
        label="Target"
        value={targetFigureText(target)}
        unit={unitLabel[target.torque.unit]}
        source={`${sourceText(target, nameOf(target))}.${otherUnit(target, torqueUnit)}${
          others.length > 0 ? ` Lower than ${others.join(', ')}, so it is used.` : ''
        }`}
      />
      {warning && (
        <p class="loud">
          <Icon name="warning" sizePx={24} />
          {warning}
        </p>
      )}
    </div>
  );
}

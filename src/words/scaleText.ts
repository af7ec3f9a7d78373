import type { ToolRow } from '../journal/rows.ts';
import { numberText } from '../mechanics/numberText.ts';
import { type TorqueUnit, torqueFromNm, unitLabel } from '../mechanics/units.ts';

/** The scale of a tool in the unit chosen. @example scaleText({ minNm: 2, maxNm: 24 }, 'N.m') //=> '2 to 24 N·m' */
export function scaleText({ minNm, maxNm }: Pick<ToolRow, 'minNm' | 'maxNm'>, unit: TorqueUnit): string {
  const text = (nm: number) => numberText(torqueFromNm(nm, unit), 1);
  if (maxNm === undefined) return 'Scale not known';
  return `${minNm === undefined ? 'up' : text(minNm)} to ${text(maxNm)} ${unitLabel[unit]}`;
}

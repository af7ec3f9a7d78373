import { numberText } from '../mechanics/numberText.ts';
import { type TorqueUnit, torqueFromNm, unitLabel } from '../mechanics/units.ts';
import type { Saying } from '../workings/joint/line.ts';
import { dayText } from './dayText.ts';

/** Figures in the way of the phone's language, torques in the unit of the settings. */
export function sayingIn(unit: TorqueUnit): Saying {
  const figure = (nm: number) => numberText(torqueFromNm(nm, unit), 1);
  return {
    number: numberText,
    torque: (loNm, hiNm = loNm) => {
      const [lo, hi] = [figure(loNm), figure(hiNm)];
      return `${lo === hi ? lo : `${lo} to ${hi}`} ${unitLabel[unit]}`;
    },
    day: (ms) => dayText(ms),
  };
}

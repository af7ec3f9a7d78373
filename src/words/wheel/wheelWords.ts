import type { ErdEnd, WheelAbout, WheelMoment, WheelReadings } from '../../journal/aboutWheels.ts';
import { numberText } from '../../mechanics/numberText.ts';
import type { LacingConcern } from '../../mechanics/wheels/lacingUsable.ts';
import type { WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import type { Balance } from '../../mechanics/wheels/spokeTension.ts';
import type { GaugeAnswer } from '../../mechanics/wheels/spokeTensionGauge.ts';
import type { TrueWord } from '../../standards/wheels/truingBands.ts';

export const sideNames: Record<WheelSideName, string> = { left: 'Left side', drive: 'Drive side' };
export const onSide: Record<WheelSideName, string> = { left: 'left', drive: 'drive side' };

export const erdEndWords: Record<ErdEnd, string> = {
  'nipple-slot': 'Bottom of the screwdriver slot',
  'nipple-top': 'Top of the nipple head',
  'nipple-seat': 'Nipple seat in the rim',
  printed: 'Printed, end point not known',
};

export const drillingWords: Record<WheelAbout['drilling'], string> = {
  even: 'Even',
  paired: 'In pairs',
  'two-to-one': 'Two to one',
};

export const momentLabels: Record<WheelMoment, string> = {
  building: 'While building',
  before: 'Before truing',
  after: 'After truing',
  'stress-relieved': 'After stress relief',
  'first-ride': 'After the first ride',
  later: 'Later on',
};

export const readInLabels: Record<WheelReadings['readIn'], string> = {
  N: 'N',
  kgf: 'kgf',
  '[lbf_av]': 'lbf',
  scale: 'Gauge scale',
  Hz: 'By ear, Hz',
};

export const concernWords: Record<LacingConcern, string> = {
  'past-ninth': 'More crossings than a ninth of the spokes: usual only on very small hubs.',
  'past-tangent': 'The spoke passes the tangent and bends round the flange. Use fewer crossings.',
  'head-overlap': 'The spoke lies over the head of its neighbour: it bows, and is hard to replace.',
  'steep-entry': 'The spoke meets the rim at a steep angle and bends at the nipple. Use fewer crossings.',
};

export const balanceWords: Record<Balance, string> = {
  'very-even': 'Very even',
  even: 'Even',
  serviceable: 'Usable',
  uneven: 'Uneven',
};

export const trueWords: Record<TrueWord, string> = {
  good: 'Good',
  acceptable: 'Acceptable',
  over: 'Over the band',
  redo: 'True again',
};

export const gaugeRefusals: Record<Extract<GaugeAnswer, { ok: false }>['reason'], string> = {
  'table-too-short': 'Enter at least two rows of the gauge’s table first.',
  'table-not-in-order': 'The gauge’s table does not run one way. Check its rows.',
  'outside-table': 'The reading lies outside the gauge’s table.',
  'not-a-number': 'That is not a number.',
};

const fractions = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;

/**
 * How far to turn a nipple, and which way.
 * @param eighths of a turn, tightening positive, not 0
 * @example turnWords(-6) //=> '¾ turn looser'
 */
export function turnWords(eighths: number): string {
  const most = Math.abs(eighths);
  const turns = `${most >= 8 ? Math.floor(most / 8) : ''}${fractions[most % 8]}`;
  return `${turns} ${most > 8 ? 'turns' : 'turn'} ${eighths > 0 ? 'tighter' : 'looser'}`;
}

/** How much longer or shorter the size to buy is. @example differenceWords(-1.65) //=> '1.6 mm shorter' */
export function differenceWords(mm: number): string {
  const size = numberText(Math.abs(mm), 1);
  if (numberText(0, 1) === size) return 'as computed';
  return `${size} mm ${mm < 0 ? 'shorter' : 'longer'}`;
}

/** Per cent with its sign. @example awayWords(-6.7) //=> '−7 %' */
export function awayWords(percent: number): string {
  const size = numberText(Math.abs(percent), 0);
  return `${size === numberText(0, 0) ? '±' : percent < 0 ? '−' : '+'}${size} %`;
}

/** What can hurt, said once on the page of the wheel. */
export const wheelCautions = [
  'Eye protection on: a spoke that breaks under tension flies out of the rim.',
  'Too much tension cracks rims and flanges. The rim maker’s maximum goes before every figure here and limits the tightest spoke.',
  'Radial spokes can tear a flange apart: only where the hub maker allows it, never beside a rotor or on the drive side.',
  'Have a qualified wheel builder check a wheel before its first ride.',
] as const;

import type { WheelAbout, WheelReadings } from '../../journal/aboutWheels.ts';
import { convert } from '../../mechanics/units.ts';
import { nextTurns, type TruingBands, type WheelState } from '../../mechanics/wheels/nextTurns.ts';
import type { LaidSpoke, WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import { usualRim, type WheelInfluence, wheelInfluence } from '../../mechanics/wheels/wheelInfluence.ts';
import { truingBands } from '../../standards/wheels/truingBands.ts';
import { spokePieces } from './spokePieces.ts';
import { wheelBalance } from './wheelBalance.ts';
import { sideAbout, type WheelFigures } from './wheelFigures.ts';
import { sideTargetsN, type WheelResult } from './wheelResult.ts';

/** One nipple to turn. */
export interface NippleTurn {
  spoke: number;
  side: WheelSideName;
  /** eighths of a turn, tightening positive */
  eighths: number;
}

export type TruingAdvice =
  | { is: 'nothing-read' }
  /** there is neither a target nor a reading on one side */
  | { is: 'no-target' }
  | { is: 'held-by-nothing' }
  | {
      is: 'turns';
      turns: NippleTurn[];
      within: boolean;
      /** where the wheel is expected to be afterwards */
      expected: WheelState;
      targetsN: Record<WheelSideName, number>;
    };

/** Spokes within this share of what their side is to have are left alone. Source: `judgeBalance`, even. */
const TENSION_SHARE = 0.1;
/** The run of the rim that is aimed at: half of a full run to either side. */
const AIM = truingBands[0]!;

type ReadSet = Pick<WheelReadings, 'tensionsN' | 'sidewaysMm' | 'outwardMm' | 'dish'>;

const meanOf = (values: readonly (number | null)[]): number => {
  const read = values.filter((value) => value !== null);
  return read.length === 0 ? 0 : read.reduce((sum, value) => sum + value, 0) / read.length;
};

/** A rim read against a pointer that stood anywhere, brought to where the rim itself stands. */
function placed(values: readonly (number | null)[], standsMm: number): (number | null)[] {
  const mean = meanOf(values);
  return values.map((value) => (value === null ? null : value - mean + standsMm));
}

/** What each side is to have: from the target, or the mean of what was read. */
function targetsOf(
  result: WheelResult,
  layout: readonly LaidSpoke[],
  set: ReadSet,
): Record<WheelSideName, number> | undefined {
  const asked = sideTargetsN(result);
  if (asked) return asked;
  const { sides } = wheelBalance(layout, set.tensionsN, undefined);
  if (!sides.left || !sides.drive) return undefined;
  return { left: sides.left.spread.meanN, drive: sides.drive.spread.meanN };
}

const BANDS: TruingBands = {
  ...{ sidewaysMm: AIM.lateralMm / 2, outwardMm: AIM.radialMm / 2, tensionShare: TENSION_SHARE },
};

/** How far the worst of all that was read lies from where it is to be, as a share of its band. */
function worstShare({ tensionsN, sidewaysMm, outwardMm }: WheelState, targetsN: readonly number[]): number {
  const shares = (
    values: readonly (number | null)[],
    bandOf: (at: number) => number,
    from?: readonly number[],
  ) => values.map((value, at) => (value === null ? 0 : Math.abs(value - (from?.[at] ?? 0)) / bandOf(at)));
  return Math.max(
    ...shares(tensionsN, (at) => TENSION_SHARE * (targetsN[at] as number), targetsN),
    ...shares(sidewaysMm, () => BANDS.sidewaysMm),
    ...shares(placed(outwardMm, 0), () => BANDS.outwardMm),
  );
}

/** Quarter turns, or eighths where quarters are too coarse: on short stiff spokes a quarter adds a sixth of the tension. */
function finestNeeded(state: WheelState, targetsN: readonly number[], influence: WheelInfluence) {
  const inQuarters = nextTurns(state, targetsN, BANDS, influence);
  const quarters = { ...inQuarters, eighths: inQuarters.quarters.map((turn) => 2 * turn) };
  if (inQuarters.within) return quarters;
  const halved = (rows: number[][]) => rows.map((row) => row.map((one) => one / 2));
  const { sideways, outward, tension } = influence;
  // From where the quarters lead: most of the way is the same.
  const reached = { ...inQuarters.expected, outwardMm: placed(inQuarters.expected.outwardMm, 0) };
  const finer = nextTurns(reached, targetsN, BANDS, {
    ...{ sideways: halved(sideways), outward: halved(outward), tension: halved(tension) },
  });
  const better =
    finer.within || worstShare(finer.expected, targetsN) < worstShare(inQuarters.expected, targetsN) - 1e-9;
  const eighths = quarters.eighths.map((turn, at) => turn + (finer.quarters[at] as number));
  return better ? { ...finer, eighths } : quarters;
}

/**
 * Which nipples to turn next, and how far, so that rim and tensions come within their bands with few turns.
 * @param wheel what is known of it: the thickness of its spokes
 * @param set one walk round the wheel; what was not read is neither judged nor mended
 * @returns the turns, the largest first
 * @example truingAdvice(wheel, figures, result, set).is //=> 'turns'
 */
export function truingAdvice(
  wheel: Pick<WheelAbout, 'leftSide' | 'driveSide'>,
  figures: WheelFigures,
  result: WheelResult,
  set: ReadSet,
): TruingAdvice {
  const { layout, erdMm, sides } = figures;
  const none = layout.map(() => null);
  const { tensionsN, sidewaysMm = none, outwardMm = none, dish } = set;
  if ([tensionsN, sidewaysMm, outwardMm].every((list) => list.every((value) => value === null)))
    return { is: 'nothing-read' };
  const targets = targetsOf(result, layout, set);
  if (!targets) return { is: 'no-target' };
  const modelSide = (side: WheelSideName) => ({
    ...{ pcdMm: sides[side].pcdMm, flangeMm: sides[side].flangeMm },
    pieces: spokePieces(sideAbout(wheel, side), result.sides[side].lengths[0]?.exactMm ?? erdMm / 2),
  });
  if (!result.tensions.ok) return { is: 'held-by-nothing' };
  const influence = wheelInfluence(
    layout,
    { left: modelSide('left'), drive: modelSide('drive') },
    erdMm,
    usualRim(erdMm),
  );
  const standsMm = dish ? convert(dish.value, dish.unit, 'mm') : 0;
  const { eighths, within, expected } = finestNeeded(
    { tensionsN, sidewaysMm: placed(sidewaysMm, standsMm), outwardMm: placed(outwardMm, 0) },
    layout.map(({ side }) => targets[side]),
    influence,
  );
  const turns = layout
    .map(({ spoke, side }, at) => ({ spoke, side, eighths: eighths[at] as number }))
    .filter((turn) => turn.eighths !== 0)
    .sort((a, b) => Math.abs(b.eighths) - Math.abs(a.eighths) || a.spoke - b.spoke);
  return { is: 'turns', turns, within, expected, targetsN: targets };
}

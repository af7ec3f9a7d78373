import type { WheelAbout, WheelReadings } from '../../journal/aboutWheels.ts';
import { convert } from '../../mechanics/units.ts';
import { nextTurns, type TruingBands, type WheelState } from '../../mechanics/wheels/nextTurns.ts';
import type { LaidSpoke, WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import { EVEN_PERCENT } from '../../mechanics/wheels/spokeTension.ts';
import { usualRim, type WheelInfluence, wheelInfluence } from '../../mechanics/wheels/wheelInfluence.ts';
import { truingBands } from '../../standards/wheels/truingBands.ts';
import { spokePieces } from './spokePieces.ts';
import { wheelBalance } from './wheelBalance.ts';
import { sideAbout, type WheelFigures } from './wheelFigures.ts';
import { inNewtons, sideTargetsN, type WheelResult } from './wheelResult.ts';

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
  /** the tension aimed at leaves no room below what the rim maker allows on any one spoke */
  | { is: 'at-maximum' }
  | {
      is: 'turns';
      turns: NippleTurn[];
      within: boolean;
      /** where the wheel is expected to be afterwards */
      expected: WheelState;
      targetsN: Record<WheelSideName, number>;
    };

/** The run of the rim that is aimed at: half of a full run to either side. */
const AIM = truingBands[0]!;
/** No hands bring all spokes closer to one tension than this share. Own judgement. */
const LEAST_SHARE = 0.02;

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

/** What is good enough: spokes even with their side, and none above what the rim maker allows. */
function bandsOf(tighterN: number, limitN: number | undefined): TruingBands {
  const room = limitN === undefined ? Number.POSITIVE_INFINITY : limitN / tighterN - 1;
  return {
    ...{ sidewaysMm: AIM.lateralMm / 2, outwardMm: AIM.radialMm / 2 },
    tensionShare: Math.min(EVEN_PERCENT / 100, room),
  };
}

/** Quarter turns, or eighths where quarters are too coarse: on short stiff spokes a quarter adds a sixth of the tension. */
function finestNeeded(
  state: WheelState,
  targetsN: readonly number[],
  bands: TruingBands,
  influence: WheelInfluence,
) {
  const inQuarters = nextTurns(state, targetsN, bands, influence);
  const quarters = { ...inQuarters, eighths: inQuarters.quarters.map((turn) => 2 * turn) };
  if (inQuarters.within) return quarters;
  const halved = (rows: number[][]) => rows.map((row) => row.map((one) => one / 2));
  const { sideways, outward, tension } = influence;
  // From where the quarters lead: most of the way is the same.
  const reached = { ...inQuarters.expected, outwardMm: placed(inQuarters.expected.outwardMm, 0) };
  const finer = nextTurns(reached, targetsN, bands, {
    ...{ sideways: halved(sideways), outward: halved(outward), tension: halved(tension) },
  });
  const better = finer.worst < inQuarters.worst - 1e-9;
  const eighths = quarters.eighths.map((turn, at) => turn + (finer.quarters[at] as number));
  return better ? { ...finer, eighths } : quarters;
}

/**
 * Which nipples to turn next, and how far, so that rim and tensions come within their bands with few turns.
 * @param wheel what is known of it: the thickness of its spokes, and the most its rim allows
 * @param set one walk round the wheel; what was not read is neither judged nor mended
 * @returns the turns, the largest first
 * @example truingAdvice(wheel, figures, result, set).is //=> 'turns'
 */
export function truingAdvice(
  wheel: Pick<WheelAbout, 'leftSide' | 'driveSide' | 'limit'>,
  figures: WheelFigures,
  result: WheelResult,
  set: ReadSet,
): TruingAdvice {
  const { layout, erdMm, sides } = figures;
  const none = layout.map(() => null);
  const { tensionsN, sidewaysMm = none, outwardMm = none, dish } = set;
  if ([tensionsN, sidewaysMm, outwardMm].every((list) => list.every((value) => value === null)))
    return { is: 'nothing-read' };
  if (!result.tensions.ok) return { is: 'held-by-nothing' };
  const targets = targetsOf(result, layout, set);
  if (!targets) return { is: 'no-target' };
  const bands = bandsOf(Math.max(targets.left, targets.drive), inNewtons(wheel.limit));
  if (bands.tensionShare < LEAST_SHARE) return { is: 'at-maximum' };
  const modelSide = (side: WheelSideName) => ({
    ...{ pcdMm: sides[side].pcdMm, flangeMm: sides[side].flangeMm },
    pieces: spokePieces(sideAbout(wheel, side), result.sides[side].lengths[0]?.exactMm ?? erdMm / 2),
  });
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
    bands,
    influence,
  );
  const turns = layout
    .map(({ spoke, side }, at) => ({ spoke, side, eighths: eighths[at] as number }))
    .filter((turn) => turn.eighths !== 0)
    .sort((a, b) => Math.abs(b.eighths) - Math.abs(a.eighths) || a.spoke - b.spoke);
  return { is: 'turns', turns, within, expected, targetsN: targets };
}

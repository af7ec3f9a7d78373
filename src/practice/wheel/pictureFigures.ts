import { spokeLayout } from '../../mechanics/wheels/spokeLayout.ts';
import { figuresOfWheel, lacingPlanOf, type WheelFigures, type WheelSketch } from './wheelFigures.ts';

/** Sizes to draw with until the wheel is measured, mm. Own choice: a middling wheel. */
const SKETCHED = { erdMm: 560, pcdMm: 50 };

/**
 * What the picture of a wheel needs: to scale where it is measured, else with middling sizes.
 * @returns undefined where the spokes cannot be laced
 * @example pictureFigures(wheel)?.layout.length //=> 36
 */
export function pictureFigures(
  wheel: WheelSketch,
): Pick<WheelFigures, 'layout' | 'erdMm' | 'sides'> | undefined {
  const answer = figuresOfWheel(wheel);
  if (answer.is === 'known') return answer.figures;
  if (answer.is === 'refused') return undefined;
  const side = ({ spokes, crosses }: WheelSketch['leftSide']) => ({
    ...{ spokes, crosses, pcdMm: SKETCHED.pcdMm, flangeMm: 30, hubHoleMm: 2.6 },
  });
  try {
    return {
      layout: spokeLayout(lacingPlanOf(wheel)),
      erdMm: SKETCHED.erdMm,
      sides: { left: side(wheel.leftSide), drive: side(wheel.driveSide) },
    };
  } catch (thrown) {
    if (thrown instanceof RangeError) return undefined;
    throw thrown;
  }
}

import { describe, expect, test } from 'vitest';
import { type LacingPlan, spokeLayout } from '../../../../src/mechanics/wheels/spokeLayout.ts';
import { spokeStiffnessN } from '../../../../src/mechanics/wheels/spokeLengthCorrections.ts';
import { NIPPLE_PITCH_MM } from '../../../../src/mechanics/wheels/spokeTensionNipple.ts';
import { usualRim, wheelInfluence } from '../../../../src/mechanics/wheels/wheelInfluence.ts';
import { turnEach } from '../../../fixtures/wheels/finiteElementWheel.ts';

const pieces = [{ lengthMm: 184, diameterMm: 2 }];
const wheels: [string, LacingPlan, number, number, number][] = [
  ['20 inch rear, 36 spokes 3-cross, dished', plan(36, 3), 384, 34, 20],
  ['29 inch rear, 32 spokes 3-cross, dished', plan(32, 3), 601, 35, 21],
  ['28 inch front, 20 spokes radial', plan(20, 0), 602, 36, 36],
];

function plan(spokes: number, crosses: number): LacingPlan {
  const half = spokes / 2;
  return {
    ...{ drilling: 'even', firstSide: 'left', leftSpokes: half, driveSpokes: half },
    ...{ leftCrosses: crosses, driveCrosses: crosses },
  };
}

describe('what one turn of a nipple does', () => {
  test.each(wheels)('%s: as a wheel of finite elements has it', (_, lacing, erdMm, leftMm, driveMm) => {
    const layout = spokeLayout(lacing);
    const sides = {
      left: { pcdMm: 45, flangeMm: leftMm, pieces },
      drive: { pcdMm: 45, flangeMm: driveMm, pieces },
    };
    // A rim whose line lies where the spokes end: both models then hang on the same points.
    const rim = { ...usualRim(erdMm), radiusMm: erdMm / 2 };
    const influence = wheelInfluence(layout, sides, erdMm, rim);
    const witnesses = turnEach(layout, sides, rim, erdMm, [0, 1], {
      ...{ perGap: 3, stiffnessN: spokeStiffnessN(pieces), pitchMm: NIPPLE_PITCH_MM },
    });
    for (const [turned, witness] of witnesses.entries()) {
      for (const quantity of ['sideways', 'outward', 'tension'] as const) {
        const theirs = witness.map((one) => one[quantity]);
        const ours = influence[quantity].map((row) => row[turned] as number);
        const most = Math.max(...theirs.map(Math.abs));
        const worst = Math.max(...theirs.map((one, at) => Math.abs(one - (ours[at] as number))));
        expect(worst / most, `${quantity} of nipple ${turned + 1}`).toBeLessThan(0.03);
      }
    }
  });

  test('it pulls the rim to its own side and inward, and tightens itself less than a stiff rim would', () => {
    const layout = spokeLayout(plan(36, 3));
    const side = { pcdMm: 45, flangeMm: 30, pieces };
    const { sideways, outward, tension } = wheelInfluence(
      layout,
      { left: side, drive: side },
      384,
      usualRim(384),
    );
    expect(layout[0]?.side).toBe('left');
    expect(sideways[0]?.[0]).toBeLessThan(0);
    expect(outward[0]?.[0]).toBeLessThan(0);
    // Handbook: 1495 N a turn of a 2.0 × 184 spoke in a rim that does not give.
    expect(tension[0]?.[0]).toBeGreaterThan(300);
    expect(tension[0]?.[0]).toBeLessThan(1495);
  });

  test('pulls balance: tightening all nipples alike moves the rim of an even wheel to neither side', () => {
    const layout = spokeLayout(plan(32, 3));
    const side = { pcdMm: 58, flangeMm: 30, pieces };
    const { sideways } = wheelInfluence(layout, { left: side, drive: side }, 601, usualRim(601));
    const moved = sideways.map((row) => row.reduce((sum, one) => sum + one, 0));
    expect(moved.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 9);
    // Between two spokes of different sides the rim ripples, by less than any gauge shows.
    for (const mm of moved) expect(Math.abs(mm)).toBeLessThan(0.005);
  });

  test('a wheel whose flanges lie in the plane of the rim is held by nothing', () => {
    const layout = spokeLayout(plan(32, 3));
    const side = { pcdMm: 58, flangeMm: 0, pieces };
    expect(() => wheelInfluence(layout, { left: side, drive: side }, 601, usualRim(601))).toThrow(RangeError);
  });
});

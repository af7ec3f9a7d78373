import { describe, expect, test } from 'vitest';
import { steererLengthMm, steererSpare } from '../../../src/mechanics/clamps/steererLength.ts';
import { chainPath, FARTHEST_AXLE_MM } from '../../../src/mechanics/drive/chainDrive.ts';
import { chainAngleDeg, frontChainlineMm, rearChainlineMm } from '../../../src/mechanics/drive/chainline.ts';
import { axleForLiftMm, chainSlack } from '../../../src/mechanics/drive/chainSlack.ts';
import { axleWornMm, chainWearPercent, wornLengthMm } from '../../../src/mechanics/drive/chainWear.ts';
import {
  cadenceRpm,
  developmentM,
  gainRatio,
  gearInches,
  speedKmh,
} from '../../../src/mechanics/drive/gearing.ts';
import { wheelDiameterMm } from '../../../src/mechanics/drive/gearingWheel.ts';
import { rollerCircleMm } from '../../../src/mechanics/drive/pitchDiameter.ts';
import { holeChordMm } from '../../../src/mechanics/screws/boltCircle.ts';
import { sideTensions } from '../../../src/mechanics/wheels/bracing.ts';
import { shortenHub, splitCut } from '../../../src/mechanics/wheels/hubShortening.ts';
import { crossingAngleDeg, twoToOne } from '../../../src/mechanics/wheels/lacing.ts';
import { lacings, tangentAngleDeg } from '../../../src/mechanics/wheels/lacingUsable.ts';
import { spokeLengthMm, spokeSpanMm } from '../../../src/mechanics/wheels/spokeLength.ts';
import {
  evenDiameterMm,
  rimCompressionN,
  rimShrinkMm,
  spokeStiffnessN,
  spokeStretchMm,
} from '../../../src/mechanics/wheels/spokeLengthCorrections.ts';
import {
  erdFromNipplesMm,
  erdFromReadings,
  erdFromRodsMm,
} from '../../../src/mechanics/wheels/spokeLengthErd.ts';
import { flangesFromRimHoles } from '../../../src/mechanics/wheels/spokeLengthRimHoles.ts';
import { stockedSpoke } from '../../../src/mechanics/wheels/spokeLengthStock.ts';
import { straightPullLengthMm } from '../../../src/mechanics/wheels/spokeLengthStraightPull.ts';
import { countWithin, tensionSpread } from '../../../src/mechanics/wheels/spokeTension.ts';
import { tensionPerTurnN, windupDeg } from '../../../src/mechanics/wheels/spokeTensionNipple.ts';

// The ranges of the docstrings: both ends are taken, and the next figure beyond each is refused by name.

const even = { ringTeeth: 20, sprocketTeeth: 20 };
const wire = (lengthMm: number, diameterMm = 2) => [{ lengthMm, diameterMm }];
const side = { erdMm: 400, pcdMm: 60, flangeMm: 30 };
const laced = { ...side, spokes: 18, crossingDeg: 60 };
const hub = { overLocknutMm: 135, chainlineMm: 40, rotorGapMm: 15, leftFlangeMm: 35, driveFlangeMm: 20 };
const none = { leftMm: 0, driveMm: 0 };
const stack = { lowerStackMm: 10, headTubeMm: 100, upperStackMm: 20, spacersMm: 10, stemClampMm: 40 };
const ring = { radiusMm: 300, areaMm2: 100 };
const straight = { erdMm: 500, headCircleMm: 60, lineOffsetMm: 20, flangeMm: 30, head: 'rim-side' } as const;
const flanges = { leftMm: 35, driveMm: 20 };
const spread = tensionSpread([1000, 1100]);

type Guard = readonly [name: string, lo: number, hi: number, call: (value: number) => unknown, step?: number];
const drives: Guard[] = [
  ['axleMm', 12.7 / Math.sin(Math.PI / 20), 2000, (mm) => chainPath(even, mm)],
  ['teeth', 6, 120, (teeth) => rollerCircleMm(teeth), 1],
  ['pitchMm', 5, 60, (mm) => rollerCircleMm(20, mm)],
  ['overLocknutMm', 70, 250, (mm) => rearChainlineMm(mm, 10)],
  ['faceToToothMm', 0, 125, (mm) => rearChainlineMm(250, mm)],
  ['seatTubeMm', 20, 80, (mm) => frontChainlineMm(mm, 20)],
  ['gapMm', 0, 100, (mm) => frontChainlineMm(30, mm)],
  ['offsetMm', -100, 100, (mm) => chainAngleDeg(mm, 400)],
  ['spanMm', 50, 2000, (mm) => chainAngleDeg(3, mm)],
  ['pitches', 8, 2000, (pitches) => chainSlack(even, pitches, 400)],
  ['liftMm', 0, 60, (mm) => axleForLiftMm(even, 80, mm)],
  ['pitches', 1, 200, (pitches) => chainWearPercent(pitches * 12.7, pitches), 1],
  ['pitchMm', 5, 60, (mm) => chainWearPercent(24 * mm, 24, mm)],
  ['pitches', 1, 200, (pitches) => wornLengthMm(pitches, 1), 1],
  ['pitchMm', 5, 60, (mm) => wornLengthMm(24, 1, mm)],
  ['percent', 0, 5, (percent) => wornLengthMm(24, percent)],
  ['percent', 0, 5, (percent) => axleWornMm(even, 80, percent)],
  ['ratio', 0.05, 20, (ratio) => gearInches(ratio, 660)],
  ['wheelDiameterMm', 80, 2000, (mm) => gearInches(2, mm)],
  ['ratio', 0.05, 20, (ratio) => developmentM(ratio, 660)],
  ['crankMm', 50, 300, (mm) => gainRatio(2, 660, mm)],
  ['ratio', 0.05, 20, (ratio) => gainRatio(ratio, 660, 170)],
  ['developmentMetres', 0, 50, (metres) => speedKmh(metres, 60)],
  ['cadenceRpm', 0, 300, (rpm) => speedKmh(5, rpm)],
  ['speed', 0, 200, (kmh) => cadenceRpm(5, kmh)],
  ['developmentMetres', 0.05, 50, (metres) => cadenceRpm(metres, 20)],
  ['rolloutMm', 250, 130_000, (mm) => wheelDiameterMm({ known: 'rollout', rolloutMm: mm })],
  ['turns', 1, 20, (turns) => wheelDiameterMm({ known: 'rollout', rolloutMm: 20_000, turns })],
  ['diameterMm', 80, 2000, (mm) => wheelDiameterMm({ known: 'diameter', diameterMm: mm })],
  ['widthMm', 15, 130, (mm) => wheelDiameterMm({ known: 'designation', widthMm: mm, beadSeatMm: 559 })],
  ['beadSeatMm', 100, 700, (mm) => wheelDiameterMm({ known: 'designation', widthMm: 40, beadSeatMm: mm })],
  ['boltsCount', 3, 12, (bolts) => holeChordMm(100, bolts), 1],
  ['steps', 1, 2, (steps) => holeChordMm(100, 5, steps), 1],
  ['capGapMm', 0, 10, (mm) => steererLengthMm(stack, mm)],
  ['headTubeMm', 0, 400, (mm) => steererLengthMm({ ...stack, headTubeMm: mm })],
  ['steererMm', 50, 600, (mm) => steererSpare(mm, stack)],
];
const cutHub = (change: object) => shortenHub({ ...hub, ...change }, none);
const wheels: Guard[] = [
  ['tighterN', 1, 3000, (newtons) => sideTensions(newtons, laced, laced)],
  ['spokes', 4, 36, (spokes) => sideTensions(1000, { ...laced, spokes }, laced), 1],
  ['overLocknutMm', 70, 250, (overLocknutMm) => cutHub({ overLocknutMm })],
  ['leftFlangeMm', -125, 125, (leftFlangeMm) => cutHub({ leftFlangeMm })],
  ['driveFlangeMm', -125, 125, (driveFlangeMm) => cutHub({ driveFlangeMm })],
  ['chainlineMm', -125, 125, (chainlineMm) => cutHub({ chainlineMm })],
  ['rotorGapMm', -125, 125, (rotorGapMm) => cutHub({ rotorGapMm })],
  ['leftMm', -60, 60, (leftMm) => shortenHub(hub, { ...none, leftMm })],
  ['driveMm', -60, 60, (driveMm) => shortenHub(hub, { ...none, driveMm })],
  ['totalMm', -120, 120, (mm) => splitCut(mm, 0)],
  ['shiftMm', -60, 60, (mm) => splitCut(0, mm)],
  ['crosses', 0, 9, (crosses) => crossingAngleDeg(crosses, 36), 1],
  ['flangeHoles', 4, 36, (holes) => crossingAngleDeg(0, holes), 1],
  ['flangeHoles', 4, 36, (holes) => lacings(side, holes), 1],
  ['a third of the spokes', 4, 18, (third) => twoToOne(3 * third), 1],
  ['erdMm', 100, 800, (mm) => tangentAngleDeg(mm, 45)],
  ['pcdMm', 10, 380, (mm) => tangentAngleDeg(400, mm)],
  ['pcdMm', 10, 400, (mm) => tangentAngleDeg(700, mm)],
  ['erdMm', 100, 800, (erdMm) => spokeSpanMm({ ...side, erdMm }, 60)],
  ['pcdMm', 10, 380, (pcdMm) => spokeSpanMm({ ...side, pcdMm }, 60)],
  ['pcdMm', 10, 400, (pcdMm) => spokeSpanMm({ ...side, erdMm: 700, pcdMm }, 60)],
  ['flangeMm', -150, 150, (flangeMm) => spokeSpanMm({ ...side, flangeMm }, 60)],
  ['crossingDeg', 0, 180, (deg) => spokeSpanMm(side, deg)],
  ['hubHoleMm', 1.5, 5, (hubHoleMm) => spokeLengthMm({ ...side, hubHoleMm }, 60)],
  ['spokeGPa', 50, 250, (gpa) => spokeStiffnessN(wire(200), gpa)],
  ['lengthMm', 0.1, 400, (mm) => spokeStiffnessN(wire(mm))],
  ['diameterMm', 1, 4, (mm) => spokeStiffnessN(wire(200, mm))],
  ['stiffnessN', 1000, 5e6, (newtons) => evenDiameterMm(newtons), 1],
  ['spokeGPa', 50, 250, (gpa) => evenDiameterMm(500_000, gpa)],
  ['tensionN', 0, 3000, (newtons) => spokeStretchMm(newtons, wire(200))],
  ['spokes', 8, 72, (spokes) => rimCompressionN(spokes, 1000)],
  ['meanTensionN', 0, 3000, (newtons) => rimCompressionN(36, newtons)],
  ['rimGPa', 20, 250, (rimGPa) => rimShrinkMm(36, 1000, { ...ring, rimGPa })],
  ['areaMm2', 20, 1000, (areaMm2) => rimShrinkMm(36, 1000, { ...ring, areaMm2 })],
  ['radiusMm', 50, 400, (radiusMm) => rimShrinkMm(36, 1000, { ...ring, radiusMm })],
  ['rodMm', 20, 400, (mm) => erdFromRodsMm(mm, 100)],
  ['gapMm', 0, 700, (mm) => erdFromRodsMm(250, mm)],
  ['betweenNipplesMm', 60, 800, (mm) => erdFromNipplesMm(mm, 12)],
  ['nippleMm', 5, 30, (mm) => erdFromNipplesMm(500, mm)],
  ['readingMm', 100, 800, (mm) => erdFromReadings([mm])],
  ['leftMm', -150, 150, (leftMm) => flangesFromRimHoles({ ...flanges, leftMm }, { holes: 'middle' })],
  ['driveMm', -150, 150, (driveMm) => flangesFromRimHoles({ ...flanges, driveMm }, { holes: 'middle' })],
  ['toDriveMm', -20, 20, (toDriveMm) => flangesFromRimHoles(flanges, { holes: 'offset', toDriveMm })],
  [
    'eachSideMm',
    0,
    20,
    (eachSideMm) => flangesFromRimHoles(flanges, { holes: 'staggered', eachSideMm, toward: 'own-flange' }),
  ],
  ['exactMm', 50, 400, (mm) => stockedSpoke(mm, 2)],
  ['step', 0.5, 10, (step) => stockedSpoke(200, step)],
  ['size at hand', 50, 400, (mm) => stockedSpoke(400, [mm])],
  ['erdMm', 100, 800, (erdMm) => straightPullLengthMm({ ...straight, erdMm })],
  [
    'headCircleMm',
    10,
    400,
    (headCircleMm) => straightPullLengthMm({ ...straight, headCircleMm, lineOffsetMm: 0 }),
  ],
  [
    'headCircleMm',
    10,
    380,
    (headCircleMm) => straightPullLengthMm({ ...straight, erdMm: 400, headCircleMm, lineOffsetMm: 0 }),
  ],
  ['lineOffsetMm', 0, 30, (lineOffsetMm) => straightPullLengthMm({ ...straight, lineOffsetMm })],
  ['flangeMm', -150, 150, (flangeMm) => straightPullLengthMm({ ...straight, flangeMm })],
  ['limitPercent', 0, 100, (percent) => spread.ok && countWithin(spread.spread, percent)],
  ['pitchMm', 0.3, 0.7, (mm) => tensionPerTurnN(wire(200), mm)],
  ['tensionN', 0, 3000, (newtons) => windupDeg(newtons, 200, 2)],
  ['lengthMm', 50, 400, (mm) => windupDeg(1000, mm, 2)],
  ['diameterMm', 1, 4, (mm) => windupDeg(1000, 200, mm)],
  ['friction', 0, 1, (mu) => windupDeg(1000, 200, 2, { lo: mu, mid: mu, hi: mu })],
];

const guards = [...drives, ...wheels].map(
  ([name, lo, hi, call, step = 1e-6]) => [name, lo, hi, call, step] as const,
);
describe.each(guards)('%s from %d to %d', (name, lo, hi, call, step) => {
  test('both ends are taken', () => {
    expect(() => call(lo)).not.toThrow();
    expect(() => call(hi)).not.toThrow();
  });
  test.each([lo - step, hi + step])('%d is refused by name', (value) => {
    expect(() => call(value)).toThrow(RangeError);
    expect(() => call(value)).toThrow(name);
  });
});

test('a ruler reads from nine tenths to twelve tenths of the new length', () => {
  const read = (share: number) => () => chainWearPercent(304.8 * share, 24);
  expect(read(0.9001)).not.toThrow();
  expect(read(1.1999)).not.toThrow();
  expect(read(0.8999)).toThrow('measuredMm');
  expect(read(1.2001)).toThrow('measuredMm');
});

test('a hub keeps at least 60 mm, and a steerer is at most a metre', () => {
  expect(shortenHub({ ...hub, overLocknutMm: 120 }, { leftMm: 30, driveMm: 30 }).overLocknutMm).toBe(60);
  expect(() => shortenHub({ ...hub, overLocknutMm: 120 }, { leftMm: 30, driveMm: 30.1 })).toThrow(
    'width left',
  );
  expect(shortenHub({ ...hub, overLocknutMm: 250 }, { leftMm: -60, driveMm: -60 }).overLocknutMm).toBe(370);
  const tall = { ...stack, headTubeMm: 400, spacersMm: 400 };
  expect(steererLengthMm({ ...tall, upperStackMm: 153 })).toBe(1000);
  expect(() => steererLengthMm({ ...tall, upperStackMm: 153.1 })).toThrow('steerer length');
});

test('no axle stands farther away than a tandem’s', () => expect(FARTHEST_AXLE_MM).toBe(2000));

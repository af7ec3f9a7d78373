import { given, type Working, type WorkingInput } from '../working.ts';
import { type ChainDrive, chainPath } from './chainDrive.ts';
import { axleFromPitches, chainPitches } from './chainLength.ts';
import { axleSettingMm } from './chainSlack.ts';
import { CHAIN_PITCH_MM } from './pitchDiameter.ts';

// Each function runs one computation and writes down, beside the result, what a person needs to do it again by hand.

const polygon = 'chain as a polygon, derived here; rigid links agree within 0.005 mm';

function pathInputs(drive: ChainDrive, axleMm: number): WorkingInput[] {
  const { spanMm, ringWrapTeeth, sprocketWrapTeeth } = chainPath(drive, axleMm);
  return [
    given('p', drive.pitchMm ?? CHAIN_PITCH_MM, 'mm'),
    given('S', spanMm, 'mm'),
    given('teeth wrapped on the ring', ringWrapTeeth, ''),
    given('teeth wrapped on the sprocket', sprocketWrapTeeth, ''),
  ];
}

/** Chain length. @example chainPitchesWorking({ ringTeeth: 36, sprocketTeeth: 15 }, 380).unit //=> 'pitches' */
export function chainPitchesWorking(drive: ChainDrive, axleMm: number): Working {
  return {
    result: chainPitches(drive, axleMm),
    unit: 'pitches',
    formula: 'L = 2·S/p + teeth wrapped, S = √(C² − (R − r)²)',
    inputs: [given('C', axleMm, 'mm'), ...pathInputs(drive, axleMm)],
    source: polygon,
    known: 'computed',
  };
}

/** Taut axle position. @example axleFromPitchesWorking({ ringTeeth: 36, sprocketTeeth: 15 }, 86).unit //=> 'mm' */
export function axleFromPitchesWorking(drive: ChainDrive, pitches: number): Working {
  const axleMm = axleFromPitches(drive, pitches);
  return {
    result: axleMm,
    unit: 'mm',
    formula: 'L = 2·S/p + teeth wrapped, S = √(C² − (R − r)²), solved for C',
    inputs: [given('L', pitches, 'pitches'), ...pathInputs(drive, axleMm)],
    source: polygon,
    known: 'computed',
  };
}

/** Where to set the axle. @example axleSettingWorking({ ringTeeth: 36, sprocketTeeth: 15 }, 86).unit //=> 'mm' */
export function axleSettingWorking(drive: ChainDrive, pitches: number): Working {
  return {
    result: axleSettingMm(drive, pitches),
    unit: 'mm',
    formula: 'C at which L·p − L(C)·p = 2·√((S/2)² + h²) − S, for h = 12.7, 9.525, 6.35 mm',
    inputs: [given('L', pitches, 'pitches'), given('taut C', axleFromPitches(drive, pitches), 'mm')],
    source: 'half an inch of slack, cycling forum advice; our reading of it',
    known: 'proposal',
  };
}

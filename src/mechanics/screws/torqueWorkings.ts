import type { Band } from '../band.ts';
import { given, type Working, type WorkingInput } from '../working.ts';
import { engagementForFullStrengthMm, type ThreadStrengths } from './engagement.ts';
import { assemblyTorqueNm } from './preloadAssembly.ts';
import { preloadBandN } from './preloadFromTorque.ts';
import { preloadUse } from './preloadUse.ts';
import type { ThreadSize } from './threadGeometry.ts';
import { type FrictionJoint, looseningTorqueNm, torqueLongForm } from './torqueLongForm.ts';
import { type ExtendedWrench, wrenchSettingNm } from './wrenchExtension.ts';

// Each function runs one computation and writes down, beside the result, what a person needs to do it again by hand.

const threadInputs = ({ diameterMm, pitchMm }: ThreadSize): WorkingInput[] => [
  given('d', diameterMm, 'mm'),
  given('P', pitchMm, 'mm'),
];

const frictionInputs = (joint: FrictionJoint): WorkingInput[] => [
  ...threadInputs(joint.thread),
  given('µt', joint.threadFriction),
  given('µb', joint.bearingFriction),
  given('Dkm', joint.bearingDiameterMm, 'mm'),
];

/** The preload band of a torque. @example preloadWorking(5, 5, around(0.2, 0.3), 0.04).unit //=> 'N' */
export function preloadWorking(
  torqueNm: number,
  diameterMm: number,
  nutFactor: Band,
  toolError: number,
): Working {
  return {
    result: preloadBandN(torqueNm, diameterMm, nutFactor, toolError),
    unit: 'N',
    formula: 'F = T·(1 ± w) / (K·d)',
    inputs: [
      given('T', torqueNm, 'N·m'),
      given('d', diameterMm, 'mm'),
      given('K', nutFactor),
      given('w', toolError),
    ],
    source: 'short form of fastener handbooks, checked against published torque and preload pairs',
    known: 'seen',
  };
}

/** Share of the proof load. @example useWorking({ lo: 3500, mid: 5000, hi: 6500 }, 8230).unit //=> '' */
export function useWorking(preloadN: Band, proofN: number): Working {
  return {
    result: preloadUse(preloadN, proofN).share,
    unit: '',
    formula: 'F / Fp',
    inputs: [given('F', preloadN, 'N'), given('Fp', proofN, 'N')],
    source: 'ISO 898-1 proof loads, public copy',
    known: 'seen',
  };
}

/** The most a screw itself stands. @example assemblyTorqueWorking(joint, 640).unit //=> 'N·m' */
export function assemblyTorqueWorking(joint: FrictionJoint, yieldMPa: number, utilisation = 0.9): Working {
  return {
    result: assemblyTorqueNm(joint, yieldMPa, utilisation),
    unit: 'N·m',
    formula:
      'T = F·[P/2π + 0.577·d2·µt + Dkm·µb/2], F = A0·ν·Rp / √(1 + 3·[1.5·(d2/d0)·(P/(π·d2) + 1.155·µt)]²)',
    inputs: [...frictionInputs(joint), given('Rp', yieldMPa, 'MPa'), given('ν', utilisation)],
    source: 'VDI 2230 equation form, checked against published torque tables',
    known: 'seen',
  };
}

/** Torque that raises a preload. @example tighteningWorking(5000, joint).unit //=> 'N·m' */
export function tighteningWorking(preloadN: number, joint: FrictionJoint): Working {
  return {
    result: torqueLongForm(preloadN, joint).totalNm,
    unit: 'N·m',
    formula: 'T = F·[P/2π + 0.577·d2·µt + Dkm·µb/2]',
    inputs: [given('F', preloadN, 'N'), ...frictionInputs(joint)],
    source: 'VDI 2230 equation form',
    known: 'seen',
  };
}

/** Torque that starts a sound joint loosening. @example looseningWorking(5000, joint).unit //=> 'N·m' */
export function looseningWorking(preloadN: number, joint: FrictionJoint): Working {
  return {
    result: looseningTorqueNm(preloadN, joint),
    unit: 'N·m',
    formula: 'T = F·[−P/2π + 0.577·d2·µt + Dkm·µb/2]',
    inputs: [given('F', preloadN, 'N'), ...frictionInputs(joint)],
    source: 'VDI 2230 equation form, pitch part turned round',
    known: 'computed',
  };
}

/** What to set on an extended wrench. @example wrenchWorking(10, { wrenchMm: 100, extensionMm: 15, angleDeg: 45 }).unit //=> 'N·m' */
export function wrenchWorking(wantedNm: number, wrench: ExtendedWrench): Working {
  return {
    result: wrenchSettingNm(wantedNm, wrench),
    unit: 'N·m',
    formula: 'S = T·L / (L + E·cos θ)',
    inputs: [
      given('T', wantedNm, 'N·m'),
      given('L', wrench.wrenchMm, 'mm'),
      given('E', wrench.extensionMm, 'mm'),
      given('θ', wrench.angleDeg, '°'),
    ],
    source: 'aircraft and US Army maintenance manuals',
    known: 'seen',
  };
}

/** Engagement at which the screw breaks first. @example engagementWorking({ diameterMm: 5, pitchMm: 0.8, form: 'iso' }).unit //=> 'mm' */
export function engagementWorking(thread: ThreadSize, strengths?: ThreadStrengths): Working {
  return {
    result: engagementForFullStrengthMm(thread, strengths),
    unit: 'mm',
    formula: strengths ? 'Le = J·2·As / (0.5·π·d2), J ≥ 1' : 'Le = 2·As / (0.5·π·d2)',
    inputs: [
      ...threadInputs(thread),
      ...(strengths
        ? [given('R screw', strengths.screwMPa, 'MPa'), given('R female', strengths.femaleMPa, 'MPa')]
        : []),
    ],
    source: 'FED-STD-H28/2B, as worked on a thread-engagement page',
    known: 'seen',
  };
}

import { isNativeRotorMm } from '../../standards/interfaces/brakeMounts.ts';
import { askFor, mmText, type Rule, unknown } from '../bridges/rule.ts';
import type { Face } from '../faces/face.ts';
import { readingOf, traitOf } from '../faces/reading.ts';
import { standardOf } from '../faces/standardOf.ts';
import type { Judgement } from '../verdict.ts';

/** Half of this is how far the pads would stand off the rotor's edge. */
const ROTOR_SLACK_MM = 0.5;

/** The rotor a mount takes with no adapter: stamped, or for an IS mount by its end. */
export function nativeRotorMm(mount: Face): number | undefined {
  const stamped = readingOf(mount, 'nativeRotorMm')?.mid;
  if (stamped !== undefined) return stamped;
  const end = traitOf(mount, 'end');
  return mount.standard === 'is' && (end === 'front' || end === 'rear') ? isNativeRotorMm[end] : undefined;
}

function caliperOnMount(mount: Face, caliper: Face): Judgement {
  const mountRow = standardOf(mount);
  const caliperRow = standardOf(caliper);
  if (!mountRow || !caliperRow)
    return unknown('The mount is not known yet: 51 mm from hole to hole is IS, 74 mm is post mount.', [
      ...(mountRow ? [] : [askFor(mount, 'holeSpacingMm')]),
      ...(caliperRow ? [] : [askFor(caliper, 'holeSpacingMm')]),
    ]);
  const wanted = readingOf(caliper, 'rotorMm');
  const largest = readingOf(mount, 'largestRotorMm');
  if (wanted && largest && wanted.mid > largest.mid + ROTOR_SLACK_MM)
    return {
      meets: 'no',
      because: `A ${mmText(wanted.mid)} rotor is bigger than this mount allows, ${mmText(largest.mid)}.`,
      final: true,
    };
  if (mountRow.id !== caliperRow.id)
    return {
      meets: 'no',
      because: `The caliper is made for ${caliperRow.label}; the frame or fork has ${mountRow.label}.`,
    };
  if (!wanted) return { meets: 'yes', because: `Caliper and mount are both ${mountRow.label}.` };
  const native = nativeRotorMm(mount);
  if (native === undefined)
    return unknown('Which rotor the bare mount takes is not known.', [askFor(mount, 'nativeRotorMm')]);
  if (Math.abs(native - wanted.mid) <= ROTOR_SLACK_MM)
    return {
      meets: 'yes',
      because: `The bare mount is made for a ${mmText(native)} rotor, and this is one.`,
    };
  return wanted.mid < native
    ? {
        meets: 'no',
        because: `The mount takes no rotor smaller than ${mmText(native)}, and an adapter only fits a bigger one.`,
      }
    : {
        meets: 'no',
        because: `The bare mount is made for a ${mmText(native)} rotor; this one is ${mmText(wanted.mid)}.`,
      };
}

/** Caliper on frame or fork. */
export const brakeRules: readonly Rule[] = [
  {
    topic: 'caliper-on-mount',
    first: 'disc-mount',
    second: 'caliper-mount',
    risk: 'Pads half off the rotor, or a mount stressed beyond its rotor, fail when needed most.',
    source: isNativeRotorMm.source,
    known: isNativeRotorMm.known,
    judge: caliperOnMount,
  },
];

import { rotorStep } from '../../mechanics/brakes/brakeMount.ts';
import { given } from '../../mechanics/working.ts';
import type { JointFacts } from './jointFacts.ts';
import { lackText, missing, type Saying, type WorkingLine } from './line.ts';

/** What the rotor asks of the mount; no line where no disc brake is held. */
export function brakeLine(facts: JointFacts, say: Saying): WorkingLine | undefined {
  const { kind, rotorMm, nativeRotorMm } = facts;
  if (kind !== 'caliper' && kind !== 'brake-mount' && kind !== 'rotor') return undefined;
  const line = { id: 'rotor', label: 'Rotor and mount' };
  if (rotorMm === undefined || nativeRotorMm === undefined) {
    // A caliper on a rim brake has neither, so nothing is asked for where nothing is known.
    if (rotorMm === undefined && nativeRotorMm === undefined && kind !== 'rotor') return undefined;
    const lacks = [
      ...(rotorMm === undefined ? [missing('rotor')] : []),
      ...(nativeRotorMm === undefined ? [missing('native-rotor')] : []),
    ];
    return { ...line, text: `Not computed; missing: ${lackText(lacks)}.`, missing: lacks };
  }
  const step = rotorStep(nativeRotorMm, rotorMm);
  if (!step.ok)
    return {
      ...line,
      text: `The rotor of ${say.number(rotorMm)} mm is smaller than the ${say.number(nativeRotorMm)} mm the mount begins with.`,
      verdict: { tone: 'stop', word: 'Does not go together' },
    };
  const { stepMm, radialMm } = step;
  return {
    ...line,
    text:
      stepMm === 0
        ? `${say.number(rotorMm)} mm is what the mount takes bare: no adapter for the size`
        : `An adapter of +${say.number(stepMm)} mm, the caliper ${say.number(radialMm)} mm further out`,
    working: {
      result: radialMm,
      unit: 'mm',
      formula: 'r = (rotor − bare mount) / 2',
      inputs: [given('rotor', rotorMm, 'mm'), given('bare mount', nativeRotorMm, 'mm')],
      source: 'geometry: a caliper sits on a radius',
      known: 'exact',
    },
  };
}

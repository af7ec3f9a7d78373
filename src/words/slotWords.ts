import type { AxlePositions, AxleRefusal, AxleStop } from '../fit/wholes/axlePosition.ts';
import type { Band } from '../mechanics/band.ts';
import { numberText } from '../mechanics/numberText.ts';

/** Why the figures of a slot cannot be meant. */
export const slotRefusals: Record<AxleRefusal, string> = {
  'teeth-out-of-range': 'Enter 6 to 120 teeth.',
  'slot-ends-swapped': 'The two measurements are swapped: the front one must be the smaller.',
  'slot-too-near': 'Ring and sprocket would touch. Measure from spindle centre to axle centre.',
  'slot-too-far': 'No bicycle has its axle so far back. Measure again.',
  'wear-out-of-range': 'Enter a wear of 0 to 3 per cent.',
  'filing-out-of-range': 'Enter up to 30 mm; what a dropout allows is far less.',
  'not-a-number': 'Type digits, with a comma or a point.',
};

/** A length to a tenth of a millimetre. @example mmToTenth(3.14) //=> '3.1 mm' */
export const mmToTenth = (value: number): string => `${numberText(value, 1)} mm`;

/** A band whose ends may read alike. */
function endsText({ lo, hi }: Band): string {
  const [from, to] = [numberText(lo, 1), numberText(hi, 1)];
  return from === to ? from : `${from} to ${to}`;
}

/**
 * One chain length in sentences: where the axle stands, how much room there is, where slack puts it, what wear does
 * and when it has used up the slot.
 * @example stopWords(stop, 0.75)[0] //=> 'Axle at 407.4 mm: 9.4 mm to the front, 12.6 mm to the rear.'
 */
export function stopWords(stop: AxleStop, wearPercent: number): string[] {
  const { tautMm, toFrontMm, toRearMm, wornMm, outgrows, slackFits, needsFiling } = stop;
  const { settingMm, wearToRearPercent } = stop;
  const wear = `Worn by ${numberText(wearPercent, 2)} %: ${mmToTenth(wornMm.lo)} to ${mmToTenth(wornMm.hi)}`;
  const after = {
    no: 'still in the slot',
    perhaps: 'perhaps past its end',
    yes: 'past the end of the slot',
  }[outgrows];
  return [
    `Axle at ${mmToTenth(tautMm)}: ${mmToTenth(toFrontMm)} to the front, ${mmToTenth(toRearMm)} to the rear.`,
    `With its slack the chain needs it at ${numberText(settingMm.lo, 1)} to ${mmToTenth(settingMm.hi)}.`,
    `${wear}, ${after}.`,
    `Wear of ${endsText(wearToRearPercent)} % uses the slot up.`,
    ...(slackFits ? [] : ['No room to give the chain its slack.']),
    ...(needsFiling ? ['The axle sits in metal that is still to be filed.'] : []),
  ];
}

/**
 * What to file off the front for the next shorter chain, of what it is made up, and what is left then.
 * @example filingWords(positions)[0] //=> 'File 9.4 mm more off the front, both sides alike, for 89 links.'
 */
export function filingWords({ beyondFront, filing }: AxlePositions, wearPercent: number): string[] {
  if (!beyondFront || !filing) return [];
  const { fileMm, missingMm, slackMm, readingMm, marginMm, leftMm, rearMm } = filing;
  const half = beyondFront.kind === 'half-link' ? ' with a half-link' : '';
  const worn = `a chain worn by ${numberText(wearPercent, 2)} %`;
  return [
    `File ${mmToTenth(fileMm)} more off the front, both sides alike, for ${filing.pitches} links${half}.`,
    `Of that ${mmToTenth(missingMm)} is to get it in, ${mmToTenth(slackMm)} is for slack, ${mmToTenth(readingMm)} for the error of the reading, ${mmToTenth(marginMm)} for the file.`,
    `Left in front of the axle: ${numberText(leftMm.least, 1)} to ${mmToTenth(leftMm.most)}.`,
    rearMm < 0
      ? `Not this chain: ${worn} comes out at the rear by ${mmToTenth(-rearMm)}.`
      : `At the rear ${worn} still has ${mmToTenth(rearMm)}.`,
  ];
}

/** What one change moves the axle by. */
export function moveWords({ moves }: AxlePositions): string[] {
  if (!moves) return [];
  const rows = [
    ['a ring tooth more', moves.ringToothMore],
    ['a sprocket tooth more', moves.sprocketToothMore],
    ['a half-link more', moves.halfLinkMore],
    ['a pair of links more', moves.linkPairMore],
  ] as const;
  return rows.flatMap(([what, by]) =>
    by === null ? [] : [`${what}: ${numberText(Math.abs(by), 1)} mm ${by < 0 ? 'forward' : 'back'}`],
  );
}

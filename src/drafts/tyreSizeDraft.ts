import { parseTyreSize } from '../mechanics/tyres/tyreDesignation.ts';
import { beadSeatNames, beadSeatsMm } from '../standards/tyres/beadSeats.ts';
import type { FaceDraft } from './faceDraft.ts';

/** One size a marking may stand for. */
export interface SizeOffer {
  beadSeatMm: number;
  widthMm: number;
}

export interface TyreMarkingRead {
  offers: readonly SizeOffer[];
  /** What to mind, or why nothing is offered. */
  words?: string;
}

const refusals = {
  'not-a-size': 'Enter it as 47-622, 26 x 1 3/8 or 700 x 28C.',
  'name-not-in-table': 'No list has this name. Read the three-digit number.',
  'no-such-bead-seat': 'No wheel is that size. Read the number again.',
} as const;

/**
 * What is printed on a tyre or rim, as sizes to take over. A name of several rims gives all of them and asks; a number of no
 * list is taken and worth reading again.
 * @param text as printed; '' gives nothing
 * @example readTyreMarking('47-622').offers //=> [{ beadSeatMm: 622, widthMm: 47 }]
 */
export function readTyreMarking(text: string): TyreMarkingRead {
  if (text.trim() === '') return { offers: [] };
  const size = parseTyreSize(text, beadSeatNames, beadSeatsMm);
  if (!size.ok) return { offers: [], words: refusals[size.reason] };
  const offers = size.beadSeatsMm.map((beadSeatMm) => ({ beadSeatMm, widthMm: size.widthMm }));
  if (size.unusual) return { offers, words: 'Unusual. Read it again, then accept it.' };
  if (offers.length > 1)
    return { offers, words: 'Several rims bear this name. Which three-digit number is on the rim?' };
  return { offers };
}

const printed = (mm: number) => ({ typed: String(mm), unit: 'mm', printed: true }) as const;

/** The face with a size taken over; only a tyre has its width from the marking, a rim's is measured. */
export const withMarking = (face: FaceDraft, { beadSeatMm, widthMm }: SizeOffer): FaceDraft => ({
  ...face,
  sizes: {
    ...face.sizes,
    beadSeatMm: printed(beadSeatMm),
    ...(face.kind === 'tyre-bead' ? { widthMm: printed(widthMm) } : {}),
  },
});

/** Whether a bead seat, as typed, stands in no list. @example isUnusualSeat('585') //=> true */
export function isUnusualSeat(typed: string): boolean {
  const mm = Number(typed.replace(',', '.'));
  return typed.trim() !== '' && Number.isFinite(mm) && !beadSeatsMm.includes(mm);
}

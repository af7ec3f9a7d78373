/** One old name of a wheel size and the bead seat it stands for. */
export interface SizeName {
  /** Nominal wheel as written: '26', '27.5', '700'. */
  readonly wheel: string;
  /** 'decimal', a fraction such as '1 3/8', 'fraction' for any, or a French letter. */
  readonly width: string;
  readonly beadSeatMm: number;
}

export interface TyreSize {
  ok: true;
  widthMm: number;
  /** One, or all that bear the name: only the number on the rim tells them apart. */
  beadSeatsMm: readonly number[];
  /** ISO 5775 markings are exact; names come from a table, and their width is nominal. */
  read: 'iso-5775' | 'name';
  /** No list at hand has this bead seat: it is taken, and worth reading again. */
  unusual: boolean;
}

export type TyreSizeRefusal = 'not-a-size' | 'name-not-in-table' | 'no-such-bead-seat';

/** Bead seats between these exist or existed, mm: a child's 8 in wheel and a 36 in one. */
const SEATS_MM = [130, 800] as const;
const INCH_MM = 25.4;
const FRACTIONS: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** "1⅜", "1-3/8" and the run-together "13/8" of some charts all mean 1 3/8. */
function tidyFraction(text: string): string {
  const spaced = text.replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign]}`).replace(/(\d)-(\d)/, '$1 $2');
  return spaced
    .replace(/^(\d)(\d\/\d)$/, '$1 $2')
    .replace(/\s+/g, ' ')
    .trim();
}

function inches(fraction: string): number {
  const match = /^(\d+)?(?: ?(\d)\/(\d))?$/.exec(fraction);
  return Number(match?.[1] ?? 0) + (match?.[2] ? Number(match[2]) / Number(match[3]) : 0);
}

/**
 * Reads the size on a tyre's side wall.
 * @param text as written: '47-584', '700x28C', '26 x 1 3/8', '20"x1.75"'
 * @param names table of old names
 * @param beadSeatsMm bead seats that are listed; an ISO marking with another is taken and called unusual
 * @returns width and bead seats, mm; or why not. A fraction and a decimal of equal value are different rims, and a name may
 *   stand for several; of three numbers the second names the rim and the third the width
 * Source: ISO 5775-1 marking, width - bead seat diameter.
 * @example parseTyreSize('47-584', beadSeatNames, beadSeatsMm)
 *   //=> { ok: true, widthMm: 47, beadSeatsMm: [584], read: 'iso-5775', unusual: false }
 */
export function parseTyreSize(
  text: string,
  names: readonly SizeName[],
  beadSeatsMm: readonly number[],
): TyreSize | { ok: false; reason: TyreSizeRefusal } {
  const clean = text
    .replace(/["”″]|inch(es)?|\bin\b/gi, '')
    .replace(/,/g, '.')
    .replace(/[–—]/g, '-')
    .trim();
  const iso = /^(\d{2,3})\s*-\s*(\d{3})$/.exec(clean);
  if (iso) {
    const [widthMm, beadSeatMm] = [Number(iso[1]), Number(iso[2])];
    if (beadSeatMm < SEATS_MM[0] || beadSeatMm > SEATS_MM[1])
      return { ok: false, reason: 'no-such-bead-seat' };
    const unusual = !beadSeatsMm.includes(beadSeatMm);
    return { ok: true, widthMm, beadSeatsMm: [beadSeatMm], read: 'iso-5775', unusual };
  }
  const parts = /^([^x×*]+?)\s*[x×*]\s*([^x×*]+?)(?:\s*[x×*]\s*([^x×*]+?))?\s*([A-Da-d])?$/.exec(clean);
  if (!parts) return { ok: false, reason: 'not-a-size' };
  const wheel = tidyFraction(parts[1]!);
  const system = tidyFraction(parts[2]!);
  const width = tidyFraction(parts[3] ?? parts[2]!);
  const letter = parts[4]?.toUpperCase();
  const french = Number(wheel) >= 300;
  if (
    !/^\d+(\.\d+)?$|^\d+ \d\/\d$/.test(wheel) ||
    ![system, width].every((each) => /^\d+(\.\d+)?$|^(\d+ )?\d\/\d$/.test(each)) ||
    (letter && !french)
  )
    return { ok: false, reason: 'not-a-size' };
  const written = french ? (letter ?? '') : system.includes('.') ? 'decimal' : system;
  const fits = (row: SizeName) =>
    row.wheel === wheel &&
    (row.width === written ||
      (!french && row.width === system) ||
      (row.width === 'fraction' && system.includes('/')));
  const seats = [...new Set(names.filter(fits).map((row) => row.beadSeatMm))].sort((a, b) => a - b);
  if (seats.length === 0) return { ok: false, reason: 'name-not-in-table' };
  const widthMm = french ? Number(width) : (width.includes('.') ? Number(width) : inches(width)) * INCH_MM;
  return { ok: true, widthMm: Math.round(widthMm), beadSeatsMm: seats, read: 'name', unusual: false };
}

import type { Entry } from '../../journal/entries.ts';
import type { PartRow } from '../../journal/rows.ts';

/** What goes along when a bike is handed over; what does not is left out wherever it stands. */
export interface GoesAlong {
  /** Sums of money in what was written. */
  prices: boolean;
  serials: boolean;
  /** Where parts came from, are kept, and went: sellers, boxes, buyers. */
  places: boolean;
}

/** What stands in its place, so that it is not taken for unknown. */
export const LEFT_OUT = 'left out';

const MONEY =
  /(?:[€$£¥]|\b(?:CHF|EUR|USD|GBP|AUD|CAD|SEK|NOK|DKK|PLN|JPY))\s?\d[\d.,'’]*(?:[.,]-)?|\d[\d.,'’]*(?:[.,]-)?\s?(?:[€$£¥]|(?:CHF|EUR|USD|GBP|AUD|CAD|SEK|NOK|DKK|PLN|JPY|euros?|dollars?|francs?|quid)\b)/giu;

/** Shorter words than this stand in too many texts by chance; their own fields leave them out all the same. */
const LEAST_CHARS = 4;

const partFields = (entry: Entry): { serial?: string; originWords?: string } =>
  entry.type === 'part-added' || entry.type === 'part-described' ? entry : {};

/** Serials and places that were ever written down of the bike's parts, to be found again in other texts. */
function secretsOf(parts: readonly PartRow[], entries: readonly Entry[], along: GoesAlong): string[] {
  const words: (string | undefined)[] = [];
  const corrected = entries.map((entry) => (entry.type === 'entry-corrected' ? (entry.becomes ?? {}) : {}));
  const texts = [...parts, ...entries.map(partFields), ...corrected] as Record<string, unknown>[];
  for (const text of texts) {
    if (!along.serials) words.push(textIn(text, 'serial'));
    if (!along.places) words.push(textIn(text, 'originWords'));
  }
  if (!along.places)
    for (const entry of entries)
      for (const place of placesIn(entry)) words.push(textIn(place, 'tag'), textIn(place, 'to'));
  const known = words.map((word) => word?.trim() ?? '').filter((word) => word.length >= LEAST_CHARS);
  // The longest first: a serial may begin with another.
  return [...new Set(known)].sort((a, b) => b.length - a.length);
}

function textIn(holder: object, field: string): string | undefined {
  const value = (holder as Record<string, unknown>)[field];
  return typeof value === 'string' ? value : undefined;
}

function placesIn(entry: Entry): object[] {
  if (entry.type === 'part-added') return [entry.place];
  return entry.type === 'part-moved' ? [entry.from, entry.to] : [];
}

const pattern = (word: string): string => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');

/**
 * A function that takes out of a text what does not go along: sums of money, and every serial and place that the
 * parts of the bike were ever written down with, also where it was typed into a note.
 */
export function leavingOut(
  parts: readonly PartRow[],
  entries: readonly Entry[],
  along: GoesAlong,
): (text: string) => string {
  const secrets = secretsOf(parts, entries, along);
  const known = secrets.length > 0 ? new RegExp(secrets.map(pattern).join('|'), 'giu') : undefined;
  return (text) => {
    const without = known ? text.replaceAll(known, LEFT_OUT) : text;
    return along.prices ? without : without.replaceAll(MONEY, LEFT_OUT);
  };
}

/** A part whose own fields say no more than goes along. */
export function partLeavingOut<P extends { serial?: string; originWords?: string }>(
  part: P,
  along: GoesAlong,
): P {
  return {
    ...part,
    ...(along.serials || part.serial === undefined ? {} : { serial: LEFT_OUT }),
    ...(along.places || part.originWords === undefined ? {} : { originWords: LEFT_OUT }),
  };
}

/** An entry whose own fields say no more than goes along. For showing only: no journal takes it. */
export function entryLeavingOut(entry: Entry, along: GoesAlong): Entry {
  const hidden = (place: object): object => ({
    ...place,
    ...(along.places || textIn(place, 'tag') === undefined ? {} : { tag: LEFT_OUT }),
    ...(along.places || textIn(place, 'to') === undefined ? {} : { to: LEFT_OUT }),
  });
  switch (entry.type) {
    case 'part-added':
      return { ...partLeavingOut(entry, along), place: hidden(entry.place) } as Entry;
    case 'part-described':
      return partLeavingOut(entry, along);
    case 'part-moved':
      return { ...entry, from: hidden(entry.from), to: hidden(entry.to) } as Entry;
    case 'entry-corrected':
      return entry.becomes
        ? { ...entry, becomes: partLeavingOut(entry.becomes as { serial?: string }, along) }
        : entry;
    default:
      return entry;
  }
}

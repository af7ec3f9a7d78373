import type { BikeZone } from './shape.ts';

/** How a zone stands; each is drawn in a shape of its own. */
export type ZoneState = 'open' | 'done' | 'due' | 'wrong' | 'unknown' | 'bridged';

export interface ZoneMark {
  state: ZoneState;
  /** How many are meant; it stands in the mark. */
  count: number;
  /** Says the same in words: "2 of 5 joints not done". */
  words: string;
}

/** Zones without a mark have nothing that counts. */
export type ZoneMarks = Partial<Record<BikeZone, ZoneMark>>;

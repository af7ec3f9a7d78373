/** What the attacks did and what they found; printed as it comes, so that a run that hangs has told what it saw. */
export interface Tally {
  attacks: number;
  lost: number;
  wrong: number;
}

export class Finds implements Tally {
  attacks = 0;
  lost = 0;
  wrong = 0;
  readonly name: string;
  readonly #say: (line: string) => void;

  constructor(name: string, say: (line: string) => void) {
    this.name = name;
    this.#say = say;
  }

  /** One attack is over; what it found counts. */
  attacked(where: string, found: Verdict): void {
    this.attacks += 1;
    this.lost += found.lost.length;
    this.wrong += found.wrong.length;
    for (const what of found.lost.slice(0, MOST_LINES)) this.#say(`  LOST   ${this.name} ${where}: ${what}`);
    for (const what of found.wrong.slice(0, MOST_LINES)) this.#say(`  WRONG  ${this.name} ${where}: ${what}`);
    const rest = found.lost.length + found.wrong.length - 2 * MOST_LINES;
    if (rest > 0) this.#say(`         ${this.name} ${where}: and ${rest} more`);
  }

  say(line: string): void {
    this.#say(`  ${this.name}: ${line}`);
  }
}

/** Of one kind, this many finds of one attack are printed; all are counted. */
const MOST_LINES = 8;

/** What one look at the store found. */
export interface Verdict {
  /** Acknowledged and not there, or there and no longer what it was. */
  lost: string[];
  /** Half-written, rows that are not the fold of the journal, a screen that says what is not so. */
  wrong: string[];
}

export const nothingFound = (): Verdict => ({ lost: [], wrong: [] });

/** The finds of several looks as one. */
export function together(...verdicts: readonly Verdict[]): Verdict {
  return { lost: verdicts.flatMap(({ lost }) => lost), wrong: verdicts.flatMap(({ wrong }) => wrong) };
}

import { ENTRY_VERSION, type Entry, type EntryType, type Id } from '../../journal/entries.ts';
import type { Field } from '../../journal/kinds/kind.ts';
import { kinds } from '../../journal/kinds/kinds.ts';
import { upcast } from '../../journal/upcasts.ts';
import { LINE_CHARS } from '../archive/layout.ts';
import { refuseFile } from '../refusing.ts';
import { type Check, compile } from '../schema/conform.ts';
import { entryJson, schemaWords } from '../schema/entrySchema.ts';
import { entryShapes, shared } from '../schema/entryShapes.ts';
import { zonesTried } from './knownZone.ts';
import { implausibleField } from './plausibleEntry.ts';

const lineTrouble = compile(entryJson, { defs: shared });

/** The fields a correction may put anew, by kind of entry. A correction was never held to the limits of numbers. */
const correctableFields = new Map<string, Map<string, Check>>();

function bodyFields(type: EntryType): Map<string, Check> {
  let checks = correctableFields.get(type);
  if (!checks) {
    const fields = Object.entries(entryShapes[type]);
    checks = new Map(
      fields.map(([name, field]) => [
        name,
        compile('optional' in field ? field.optional.json : field.json, { defs: shared, loose: true }),
      ]),
    );
    checks.set('happenedAtMs', (value) =>
      typeof value === 'number' && Number.isFinite(value) ? undefined : '',
    );
    // What an entry is about is never corrected.
    for (const [name, { as }] of Object.entries<Field>(kinds[type].fields))
      if (as === 'fixed') checks.delete(name);
    correctableFields.set(type, checks);
  }
  return checks;
}

/** A correction, and the line it stands on. */
export interface CorrectionLine {
  where: string;
  corrects: Id;
  becomes: Record<string, unknown> | null;
}

/** The field of a correction that its kind of entry does not have, or has otherwise; undefined where all is well. */
export function wrongInCorrection(type: EntryType, becomes: CorrectionLine['becomes']): string | undefined {
  const fields = bodyFields(type);
  return Object.entries(becomes ?? {}).find(
    ([name, value]) => fields.get(name)?.(value) !== undefined || !fields.has(name),
  )?.[0];
}

/**
 * The lines of a journal as they come in from outside, one after the other: each is held against the schema and
 * the rules of plausibility, and at the end the corrections against what they correct.
 */
export class JournalCheck {
  /** Kinds by id: enough to see an id twice and to judge corrections, little enough for a journal of any size. */
  readonly #kinds = new Map<Id, EntryType>();
  readonly #corrections: CorrectionLine[] = [];
  readonly #zoneIsKnown = zonesTried();
  readonly #unknown: 'newer-entries' | 'entry-wrong';

  /** @param writersWords `schemaWords` of the app that wrote the lines, where the file says it */
  constructor(writersWords = 0) {
    this.#unknown = writersWords > schemaWords() ? 'newer-entries' : 'entry-wrong';
  }

  get count(): number {
    return this.#kinds.size;
  }

  /**
   * Takes one line.
   * @param line text of the line, without its end
   * @param where told in a refusal: the file and the number of the line
   * @returns the entry as it was stored, and as it reads today
   */
  take(line: string, where: string): { stored: Entry; today: Entry } {
    if (line.length > LINE_CHARS) refuseFile('too-large', where);
    const stored = parsed(line, where);
    const today = broughtUpToDate(stored, where);
    const fault = lineTrouble(today);
    if (fault !== undefined) refuseFile(this.#unknown, `${where} (${shown(fault)})`);
    const field = implausibleField(today);
    if (field !== undefined) refuseFile('entry-implausible', `${where} (${field})`);
    if (!this.#zoneIsKnown(today.zone)) refuseFile('zone-unknown', where);
    if (this.#kinds.has(today.id)) refuseFile('entry-twice', where);
    this.#kinds.set(today.id, today.type);
    if (today.type === 'entry-corrected') {
      const { corrects, becomes } = today;
      this.#corrections.push({ where, corrects, becomes });
    }
    return { stored, today };
  }

  /**
   * After the last line: every correction puts what the kind of entry it corrects can hold.
   * @returns corrections of entries that are not among the lines; they are to be judged where those are
   */
  finish(): CorrectionLine[] {
    const astray: CorrectionLine[] = [];
    for (const correction of this.#corrections) {
      const { where, corrects, becomes } = correction;
      const type = this.#kinds.get(corrects);
      if (type === undefined) astray.push(correction);
      else {
        const wrong = wrongInCorrection(type, becomes);
        if (wrong !== undefined) refuseFile(this.#unknown, `${where} (becomes.${shown(wrong)})`);
      }
    }
    return astray;
  }
}

/** A path of fields from outside, cut to what a sentence can hold. */
const shown = (path: string): string => path.replaceAll(/[^\x20-\x7e]/g, '?').slice(0, 60) || 'its shape';

function parsed(line: string, where: string): Entry {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return refuseFile('line-not-json', where);
  }
  const version = (value as { v?: unknown } | null)?.v;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refuseFile('entry-wrong', `${where} (v)`);
  if (version > ENTRY_VERSION) return refuseFile('newer-entries', where);
  return value as Entry;
}

/** An entry of an older version in today's shape; one that only says it is old may not even survive that. */
function broughtUpToDate(stored: Entry, where: string): Entry {
  try {
    return upcast(stored);
  } catch {
    return refuseFile('entry-wrong', where);
  }
}

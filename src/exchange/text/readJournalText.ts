import type { Entry } from '../../journal/entries.ts';
import { sha256 } from '../archive/digest.ts';
import { LINE_CHARS, PIECE_LINES } from '../archive/layout.ts';
import type { ByteSource } from '../byteSource.ts';
import type { Copy, Work } from '../copy/copy.ts';
import { JournalCheck } from '../entries/journalCheck.ts';
import { refuseFile } from '../refusing.ts';
import { JOURNAL_TEXT, NO_CHECK, TEXT_FORMAT, type TextCheck, type TextHead } from './journalText.ts';

const READ_BYTES = 1_048_576;

interface Line {
  text: string;
  number: number;
}

/** The lines of a source, one after the other; no more of it is held than the line that is being read. */
async function* linesIn(source: ByteSource): AsyncGenerator<Line> {
  const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  let rest = '';
  let number = 0;
  for (let at = 0; at < source.size; at += READ_BYTES) {
    const bytes = await source.read(at, at + READ_BYTES);
    const lines = (rest + decoded(decoder, bytes, number + 1)).split('\n');
    rest = lines.pop() ?? '';
    if (rest.length > LINE_CHARS) refuseFile('too-large', `Line ${number + 1}`);
    for (const text of lines) {
      number += 1;
      yield { text, number };
    }
  }
  if (rest !== '') refuseFile('cut-short');
}

function decoded(decoder: TextDecoder, bytes: Uint8Array, line: number): string {
  try {
    return decoder.decode(bytes, { stream: true });
  } catch {
    return refuseFile('damaged', `near line ${line}`);
  }
}

interface Piece {
  /** The lines between two check lines, with the number of the first. */
  lines: string[];
  first: number;
}

const bytesOf = new TextEncoder();

/** Pieces of the file, each held against the check line below it. */
async function* checkedPieces(source: ByteSource): AsyncGenerator<Piece> {
  let before = NO_CHECK;
  let ended = false;
  let above = -1;
  let lines: string[] = [];
  let first = 1;
  for await (const { text, number } of linesIn(source)) {
    if (ended) refuseFile('damaged', `line ${number} comes after the end`);
    const check = checkIn(text);
    if (!check) {
      lines.push(text);
      if (lines.length > PIECE_LINES) refuseFile('damaged', `near line ${number}`);
      continue;
    }
    const whole = lines.map((line) => `${line}\n`).join('');
    before = await sha256(bytesOf.encode(before + whole));
    // The head is a line, but not an entry.
    above += lines.length;
    ended = check.end === true;
    if (before !== check.sha256 || above !== check.entriesAbove)
      refuseFile('damaged', `lines ${first} to ${number}`);
    yield { lines, first };
    lines = [];
    first = number + 1;
  }
  if (!ended) refuseFile('cut-short');
}

/** The check line, or undefined for any other line. */
function checkIn(line: string): TextCheck | undefined {
  const [, above, sum, end] =
    /^\{"entriesAbove":(\d{1,15}),"sha256":"([0-9a-f]{64})"(,"end":true)?\}$/.exec(line) ?? [];
  if (above === undefined || sum === undefined) return undefined;
  return { entriesAbove: Number(above), sha256: sum, ...(end ? { end: true } : {}) };
}

function headIn({ lines: [line = ''], first }: Piece): TextHead {
  let head: Partial<TextHead> | null = null;
  try {
    head = JSON.parse(line) as Partial<TextHead> | null;
  } catch {
    // Falls through to the refusal.
  }
  const { what, format, madeAtMs } = head ?? {};
  if (what !== JOURNAL_TEXT || first !== 1) return refuseFile('not-a-copy');
  if (typeof format === 'number' && format > TEXT_FORMAT) return refuseFile('newer-format');
  const known = typeof format === 'number' && Number.isInteger(format) && format >= 1;
  if (!known || !Number.isInteger(madeAtMs)) return refuseFile('damaged', 'line 1');
  return head as TextHead;
}

/** Reads a journal in text through once; throws a refusal for the first line that is not as the app writes it. */
export async function readJournalText(source: ByteSource, { signal, onProgress }: Work): Promise<Copy> {
  let check = new JournalCheck();
  let head: TextHead | undefined;
  let bytes = 0;
  for await (const piece of checkedPieces(source)) {
    signal?.throwIfAborted();
    if (!head) {
      head = headIn(piece);
      check = new JournalCheck(head.schemaWords);
      continue;
    }
    piece.lines.forEach((line, at) => {
      check.take(line, `Line ${piece.first + at}`);
      bytes += line.length;
    });
    onProgress?.({ entries: check.count, photos: 0, bytes });
  }
  const astray = check.finish();
  return {
    madeAtMs: head?.madeAtMs ?? refuseFile('not-a-copy'),
    entries: check.count,
    photos: [],
    astray,
    readEntries: () => entriesOf(source),
    async *readPhotos() {},
  };
}

async function* entriesOf(source: ByteSource): AsyncGenerator<Entry[]> {
  let head = true;
  for await (const { lines } of checkedPieces(source)) {
    if (!head) yield lines.map((line) => JSON.parse(line) as Entry);
    head = false;
  }
}

import type { SheetLine } from '../documents/sheetLine.ts';
import { sheetLines } from '../documents/sheetLines.ts';
import type { AsBuilt } from '../journal/answers.ts';
import type { Entry } from '../journal/entries.ts';
import type { Names } from '../words/history/names.ts';
import { fileWord } from './archive/layout.ts';
import { ZipOut } from './archive/zipOut.ts';
import { sinkOf } from './byteSink.ts';
import { documentPage } from './documentPage.ts';
import { historyTable, jointsTable, partsTable, type Table } from './tables/bikeTables.ts';
import { csvText } from './tables/csv.ts';
import {
  entryLeavingOut,
  type GoesAlong,
  LEFT_OUT,
  leavingOut,
  partLeavingOut,
} from './tables/leavingOut.ts';

/** A bike to be handed over: as it is built, and what was done to it, oldest first. */
export interface HandOver {
  built: AsBuilt;
  entries: readonly Entry[];
  names: Names;
  zone: string;
}

const lineLeavingOut = (line: SheetLine, without: (text: string) => string): SheetLine => ({
  ...line,
  text: without(line.text),
});

/**
 * The files of one bike for the person who takes it over: the build sheet as a page, parts, joints and history as tables.
 * To be read, not to be restored from: an entry with something left out would no longer be that entry.
 * @param along what goes along; the rest is left out wherever it stands, and said to be
 * @returns files by name; empty when there is no such bike
 */
export function handOverFiles(
  { built, entries, names: allNames, zone }: HandOver,
  along: GoesAlong,
): Record<string, string> {
  if (!built.bike) return {};
  const { bikeId } = built.bike;
  // Another bike is where a part came from, or went.
  const names: Names = along.places
    ? allNames
    : { ...allNames, bike: (id) => (id === bikeId ? allNames.bike(id) : LEFT_OUT) };
  const without = leavingOut(built.parts, entries, along);
  const parts = built.parts.map((part) => partLeavingOut(part, along));
  const lines = sheetLines({ ...built, parts }, { zone, names });
  const table = (rows: Table): string => csvText(rows.map((row) => row.map(without)));
  const handedOver = entries.map((entry) => entryLeavingOut(entry, along));
  return {
    [`${fileWord(built.bike.name)}.html`]: documentPage(lines.map((line) => lineLeavingOut(line, without))),
    'parts.csv': table(partsTable(parts, names)),
    'joints.csv': table(jointsTable(built.joints, names, zone)),
    'history.csv': table(historyTable(handedOver, names)),
  };
}

/** Those files as one ZIP, with their checksums. */
export async function writeHandOver(
  files: Readonly<Record<string, string>>,
  stream: WritableStream<Uint8Array<ArrayBuffer>>,
  atMs: number,
): Promise<void> {
  const sink = sinkOf(stream);
  const zip = new ZipOut(sink, atMs);
  const encoder = new TextEncoder();
  for (const [path, text] of Object.entries(files)) await zip.addText(path, encoder.encode(text));
  await zip.end();
  await sink.close();
}

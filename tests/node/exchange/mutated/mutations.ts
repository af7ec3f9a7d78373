import { deflateRawSync, gzipSync } from 'node:zlib';
import type { Dice } from './dice.ts';
import type { Material } from './material.ts';
import { type Bytes, bytesOf, changed, type Files, joined, signed, textOf, zipOf } from './rebuilt.ts';

/** Whether the mutated copy must be refused, or may also be read as it was because nothing that counts was touched. */
type Mutation = (dice: Dice, material: Material) => { bytes: Bytes; must?: 'be-refused' };

const LINES = 'journal/00001.jsonl';

const whichOf = (dice: Dice, { archive, locked, text }: Material): Bytes =>
  // A locked one costs a slow key each time: one in twenty is enough.
  dice.pick([...Array(12).fill(archive), ...Array(7).fill(text), locked] as Bytes[]);

function bitsFlipped(dice: Dice, material: Material) {
  const bytes = whichOf(dice, material).slice();
  for (let flips = 1 + dice.below(6); flips > 0; flips -= 1) {
    const at = dice.below(bytes.length);
    bytes[at] = (bytes[at] ?? 0) ^ (1 << dice.below(8));
  }
  return { bytes };
}

function cut(dice: Dice, material: Material): { bytes: Bytes; must: 'be-refused' } {
  const bytes = whichOf(dice, material);
  const from = dice.below(bytes.length);
  const to = from + 1 + dice.below(bytes.length - from);
  const pieces: Bytes[] = dice.pick([
    [bytes.subarray(0, from)],
    [bytes.subarray(to)],
    [bytes.subarray(0, from), bytes.subarray(to)],
  ]);
  return { bytes: joined(pieces), must: 'be-refused' };
}

function added(dice: Dice, material: Material): { bytes: Bytes; must: 'be-refused' } {
  const bytes = whichOf(dice, material);
  const junk = Uint8Array.from({ length: 1 + dice.below(300) }, () => dice.below(256));
  const at = dice.pick([0, bytes.length, dice.below(bytes.length)]);
  return { bytes: joined([bytes.subarray(0, at), junk, bytes.subarray(at)]), must: 'be-refused' };
}

function rangesSwapped(dice: Dice, material: Material) {
  const bytes = whichOf(dice, material).slice();
  const length = 1 + dice.below(Math.min(2000, bytes.length >> 1));
  const one = dice.below((bytes.length >> 1) - length + 1);
  const other = (bytes.length >> 1) + dice.below((bytes.length >> 1) - length + 1);
  const kept = bytes.slice(one, one + length);
  bytes.copyWithin(one, other, other + length);
  bytes.set(kept, other);
  return { bytes };
}

/** Two files change their content, with and without new checksums; one is lost; one comes twice. */
function filesSwapped(dice: Dice, { files }: Material): { bytes: Bytes; must: 'be-refused' } {
  const one = dice.below(files.length);
  const other = (one + 1 + dice.below(files.length - 1)) % files.length;
  const swapped = files.map(([path, bytes], at): Files[number] => [
    path,
    files[at === one ? other : at === other ? one : at]?.[1] ?? bytes,
  ]);
  const lost = files.filter((_, at) => at !== one);
  const twice = [...files, files[one] as Files[number]];
  const [path] = files[one] as Files[number];
  // Sheets, read-me and schema are for people: with new checksums a loss among them cannot be told, and costs nothing.
  // New checksums in place of the checksums are no change at all.
  const forPeople = /^(sheets|README|entry\.schema|checksums)/;
  const spare = forPeople.test(path) || forPeople.test(files[other]?.[0] ?? '');
  const built = dice.pick([swapped, lost, twice, ...(spare ? [] : [signed(swapped), signed(lost)])]);
  return { bytes: zipOf(built), must: 'be-refused' };
}

const hostileValues = [
  ...['1e400', '-1e999', '123456789012345678901234567890', 'NaN', 'Infinity', '0x10', '1e15', '-1'],
  ...['null', 'true', '[]', '{}', '""', '{"__proto__":{"is":"bike"}}', '{"constructor":{"prototype":{}}}'],
  '['.repeat(40_000) + ']'.repeat(40_000),
  `${'{"a":'.repeat(30_000)}1${'}'.repeat(30_000)}`,
  '{"toString":null,"valueOf":null}',
  '"\\ud800"',
  '[1,2,3,{"length":1e9}]',
];

const hostileFields = [
  ...['__proto__', 'constructor', 'prototype', 'key', 'is', 'group', 'lastMs', 'toString', ''],
  ...['dueAtMs ', 'Type', 'seq'],
];

/** A field of one line gets a value that no entry has, or a line gets a field that none has; checksums are right again. */
function hostileJson(dice: Dice, { files, entries }: Material): { bytes: Bytes; must: 'be-refused' } {
  const at = dice.below(entries.length);
  const change = (text: string) => {
    const lines = text.split('\n');
    const line = lines[at] ?? '';
    const field = dice.pick(['id', 'v', 'writtenAtMs', 'happenedAtMs', 'zone', 'type']);
    const said = JSON.stringify((JSON.parse(line) as Record<string, unknown>)[field]);
    const value = dice.pick(hostileValues);
    const other = dice.pick([
      () =>
        line.replace(`"${field}":${said}`, `"${field}":${field.endsWith('Ms') ? badInstant(value) : value}`),
      () => line.replace(/\}$/, `,${JSON.stringify(dice.pick(hostileFields))}:${value}}`),
      () => line.slice(0, dice.below(line.length)),
      () => `${line}${line}`,
      () => `[${line}]`,
      () => value,
      () => '',
      () => `\ufeff${line}`,
      () => `${line}\n${line}`,
    ])();
    lines[at] = other;
    return lines.join('\n');
  };
  return { bytes: zipOf(signed(changed(files, LINES, change))), must: 'be-refused' };
}

/** Where a number would do, one that would not. */
const badInstant = (value: string): string => (value === '-1' || value === '1e15' ? '-5' : value);

const trickNames = [
  ...['../../evil.jsonl', '/etc/passwd', 'C:\\evil.txt', 'journal/../../evil', 'journal\\00002.jsonl'],
  ...['journal/00001.jsonl/', 'JOURNAL/00001.JSONL', 'photos/../archive.json', '__proto__', 'constructor'],
  ...['photos/a.jpg', 'sheets/..html', 'sheets/01-a.html\0.exe', '.', '', 'a'.repeat(60_000), 'журнал.jsonl'],
  ...['journal/00003.jsonl', 'aux', 'META-INF/MANIFEST.MF', '__MACOSX/._archive.json'],
];

function trickNamed(dice: Dice, { files }: Material): { bytes: Bytes; must: 'be-refused' } {
  const name = dice.pick(trickNames);
  const at = dice.below(files.length);
  const renamed = files.map(([path, bytes], index): Files[number] => [index === at ? name : path, bytes]);
  const extra: Files = [...files, [name, bytesOf('x\n')]];
  const built = dice.pick([renamed, extra, signed(renamed), signed(extra)]);
  return { bytes: zipOf(built), must: 'be-refused' };
}

/** A few bytes that say they are, or would become, very many. */
function bomb(dice: Dice, { files }: Material): { bytes: Bytes; must: 'be-refused' } {
  const mega = 1_000_000 * (33 + dice.below(30));
  const line = `${' '.repeat(mega)}\n`;
  const path = dice.pick([
    LINES,
    'photos.jsonl',
    'archive.json',
    'sheets/01-magpie.html',
    'checksums.sha256',
  ]);
  const honest = () =>
    zipOf(files.map(([name, bytes]): Files[number] => [name, name === path ? bytesOf(line) : bytes]));
  const lying = () => {
    const bytes = zipOf(files);
    const view = new DataView(bytes.buffer);
    const { listed } = placesOf(bytes, path);
    view.setUint32(listed + 24, dice.pick([mega, 0xffffffff, 0, 1, 1000]), true);
    return bytes;
  };
  const overlapping = () => {
    const bytes = zipOf(files);
    const view = new DataView(bytes.buffer);
    const [one, other] = [placesOf(bytes, LINES), placesOf(bytes, 'README.txt')];
    view.setUint32(one.listed + 42, view.getUint32(other.listed + 42, true), true);
    return bytes;
  };
  const packedTwice = () =>
    zipOf(
      files.map(([name, bytes]) => [name, name === path ? deflateRawSync(bytes) : bytes] as Files[number]),
    );
  return { bytes: dice.pick([honest, lying, lying, overlapping, packedTwice])(), must: 'be-refused' };
}

/** Where a file's line of the directory stands. */
function placesOf(bytes: Bytes, path: string): { listed: number } {
  const view = new DataView(bytes.buffer);
  let at = view.getUint32(bytes.length - 6, true);
  for (;;) {
    const length = view.getUint16(at + 28, true);
    if (textOf(bytes.slice(at + 46, at + 46 + length)) === path) return { listed: at };
    at += 46 + length;
  }
}

/** Numbers of the directory and of the end: sizes, counts, offsets, flags, methods. */
function directoryTampered(dice: Dice, { archive, files }: Material) {
  const bytes = archive.slice();
  const view = new DataView(bytes.buffer);
  const [path] = dice.pick(files);
  const { listed } = placesOf(bytes, path);
  const at = dice.pick([
    ...[8, 10, 16, 20, 24, 28, 30, 32, 34, 42].map((field) => listed + field),
    ...[2, 4, 6, 8, 10, 12, 16, 20].map((field) => bytes.length - 22 + field),
  ]);
  view.setUint16(at, dice.pick([0, 1, 8, 9, 99, 0x7fff, 0xffff, dice.below(65536)]), true);
  return { bytes };
}

function foreign(dice: Dice, { archive }: Material): { bytes: Bytes; must: 'be-refused' } {
  const noise = Uint8Array.from({ length: dice.below(4000) }, () => dice.below(256));
  const starts = [
    '\x89PNG\r\n\x1a\n',
    '%PDF-1.7\n',
    '7z\xbc\xaf\x27\x1c',
    'Rar!\x1a\x07',
    'SQLite format 3\0',
  ];
  const bytes = dice.pick([
    () => joined([Uint8Array.from(dice.pick(starts), (sign) => sign.charCodeAt(0)), noise]),
    () => noise,
    () => new Uint8Array(gzipSync(archive)),
    () =>
      zipOf([
        ['mimetype', bytesOf('application/x')],
        ['content.xml', noise],
      ]),
    () => bytesOf('<!doctype html><script>alert(1)</script>'),
    () =>
      bytesOf(dice.pick(['{}\n', '{"what":"Pinchbolt journal"}\n', '[]', 'null\n', '{"a":1}', ' ', '\n\n'])),
    () => joined([archive, archive]),
    () => zipOf([]),
  ])();
  return { bytes, must: 'be-refused' };
}

/** The head, the list of photos, the checksums: each with something that cannot be. */
function headTampered(dice: Dice, { files }: Material): { bytes: Bytes; must: 'be-refused' } {
  const heads: [string, (text: string) => string][] = [
    [
      'archive.json',
      (text) => text.replace(/"format": \d/, `"format": ${dice.pick([0, 3, 99, '"1"', 1.5, -1])}`),
    ],
    ['archive.json', (text) => text.replace('Pinchbolt archive', 'Other archive')],
    ['archive.json', (text) => text.replace(/"entries": \d+/, '"entries": 1e6')],
    ['archive.json', (text) => text.replace('{', '{"__proto__": {"entries": 5},')],
    ['archive.json', () => 'x\n'],
    ['photos.jsonl', (text) => text.replace('ph1', dice.pick(['ph2', '../ph1', '', '__proto__/']))],
    ['photos.jsonl', (text) => text.replace(/"bytes":\d+/, '"bytes":1')],
    [
      'photos.jsonl',
      (text) => text.replace('image/jpeg', dice.pick(['text/html', 'image/svg+xml', 'image/png'])),
    ],
    ['photos.jsonl', (text) => text.replace(/[0-9a-f]{64}/, 'f'.repeat(64))],
    ['photos.jsonl', (text) => text.split('\n').slice(1).join('\n')],
    [LINES, (text) => text.replace('"v":1', '"v":99')],
    [LINES, (text) => text.replace('"zone":"UTC"', '"zone":"Mars/Olympus"')],
    [LINES, (text) => text.split('\n').slice(1).join('\n')],
  ];
  const [path, change] = dice.pick(heads);
  return { bytes: zipOf(signed(changed(files, path, change))), must: 'be-refused' };
}

/** The lock's own line, and chunks that change places. */
function lockTampered(dice: Dice, { locked }: Material): { bytes: Bytes; must: 'be-refused' } {
  const end = locked.indexOf(10) + 1;
  const [header, body] = [textOf(locked.slice(0, end)), locked.subarray(end)];
  const CHUNK = 262_160;
  const told = (change: string) => joined([bytesOf(change), body]);
  const bytes = dice.pick([
    () =>
      told(header.replace('"iterations":600000', `"iterations":${dice.pick([1, 1e12, -1, 'null', 1.5])}`)),
    () => told(header.replace('"chunkBytes":262144', `"chunkBytes":${dice.pick([0, 1, 1e15, 'null'])}`)),
    () => told(header.replace('"format":1', '"format":2')),
    () => told(header.replace(/"salt":"../, '"salt":"zz')),
    () => told('pinchbolt-locked {"format":1}\n'),
    () => told(`pinchbolt-locked ${'['.repeat(400)}\n`),
    () => joined([locked.subarray(0, end), body.subarray(CHUNK)]),
    () =>
      joined([
        locked.subarray(0, end),
        body.subarray(CHUNK, 2 * CHUNK),
        body.subarray(0, CHUNK),
        body.subarray(2 * CHUNK),
      ]),
    () => locked.slice(0, end + CHUNK * (1 + dice.below(2))),
  ])();
  return { bytes, must: 'be-refused' };
}

/** Lines of the text moved, lost, doubled or changed. */
function textTampered(dice: Dice, { text }: Material): { bytes: Bytes; must: 'be-refused' } {
  const lines = textOf(text).split('\n').slice(0, -1);
  const one = dice.below(lines.length - 1);
  const swapped = lines.with(one, lines[one + 1] ?? '').with(one + 1, lines[one] ?? '');
  const made = dice.pick([
    swapped,
    lines.toSpliced(one, 1),
    lines.toSpliced(one, 0, lines[one] ?? ''),
    lines.with(one, (lines[one] ?? '').replace(/[a-z]/, 'X')),
    lines.slice(0, -1),
    lines.with(0, (lines[0] ?? '').replace(/"format":\d/, '"format":7')),
    lines.slice(1),
  ]);
  return { bytes: bytesOf(`${made.join('\n')}\n`), must: 'be-refused' };
}

/** Every way of changing a copy, and how often it is tried. */
export const mutations: readonly [name: string, weight: number, mutation: Mutation][] = [
  ['bits flipped', 25, bitsFlipped],
  ['cut', 12, cut],
  ['bytes added', 5, added],
  ['ranges swapped', 8, rangesSwapped],
  ['files swapped, lost or doubled', 9, filesSwapped],
  ['hostile JSON', 14, hostileJson],
  ['path tricks', 6, trickNamed],
  ['zip bombs', 2, bomb],
  ['directory tampered with', 8, directoryTampered],
  ['foreign formats', 5, foreign],
  ['head, photos, checksums tampered with', 6, headTampered],
  ['lock tampered with', 1, lockTampered],
  ['text tampered with', 5, textTampered],
];

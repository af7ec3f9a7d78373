import { describe, expect, test } from 'vitest';
import { JournalCheck, wrongInCorrection } from '../../../../src/exchange/entries/journalCheck.ts';
import { implausibleField } from '../../../../src/exchange/entries/plausibleEntry.ts';
import { RefusedWhileReading } from '../../../../src/exchange/refusing.ts';
import { decide } from '../../../../src/journal/decide.ts';
import type { Entry, EntryType } from '../../../../src/journal/entries.ts';
import { MemoryRows } from '../../../../src/journal/memoryRows.ts';
import { allEntries, idOf } from '../entriesOfEveryKind.ts';

const sound = (type: EntryType): Entry => allEntries.find((entry) => entry.type === type) as Entry;

const changed = (type: EntryType, change: object): Entry => ({ ...sound(type), ...change }) as Entry;

/** The refusal a line ends with, by name and what it speaks of. */
function refusedFor(entry: unknown): string {
  try {
    new JournalCheck().take(typeof entry === 'string' ? entry : JSON.stringify(entry), 'Line 3');
    return 'taken';
  } catch (thrown) {
    if (!(thrown instanceof RefusedWhileReading)) throw thrown;
    return thrown.message;
  }
}

const torque = (value: number, unit = 'N.m') => ({ value, unit, typed: String(value) });

describe('a line from outside', () => {
  test.each([
    ['a torque no bolt was given', changed('torque-applied', { applied: torque(5000) }), 'applied'],
    [
      'the same in inch-pounds',
      changed('torque-applied', { applied: torque(5900, '[in_i].[lbf_av]') }),
      'applied',
    ],
    ['a torque met that cannot be', changed('torque-found', { movedAt: torque(900) }), 'movedAt'],
    ['a cut longer than a bike', changed('part-changed', { after: torque(3100, 'mm') }), 'after'],
    ['a tool that begins above its end', changed('tool-added', { minNm: 50, maxNm: 20 }), 'minNm'],
    ['a ride of nothing', changed('ride-logged', { km: undefined, minutes: undefined }), 'km'],
    ['what is yet to happen', changed('note-added', { happenedAtMs: 9e12 }), 'happenedAtMs'],
  ])('[J5] %s', (_name, entry, field) => {
    const line = JSON.parse(JSON.stringify(entry));
    expect(implausibleField(line)).toBe(field);
    expect(refusedFor(line)).toBe(`entry-implausible: Line 3 (${field})`);
  });

  test.each([
    ['a thick axle tightened hard', changed('torque-applied', { applied: torque(400) })],
    ['a hub axle in foot-pounds', changed('torque-applied', { applied: torque(35, '[ft_i].[lbf_av]') })],
    [
      'a clock that ran a little ahead',
      changed('note-added', { happenedAtMs: sound('note-added').writtenAtMs + 59_000 }),
    ],
  ])('what the logbook itself takes is taken: %s', (_name, entry) => {
    expect(refusedFor(entry)).toBe('taken');
  });

  test.each([
    ['no JSON', '{"id":', 'line-not-json: Line 3'],
    ['an entry of a newer version', changed('note-added', { v: 99 }), 'newer-entries: Line 3'],
    ['no version', changed('note-added', { v: undefined }), 'entry-wrong: Line 3 (v)'],
    ['a zone no browser knows', changed('note-added', { zone: 'Mars/Olympus' }), 'zone-unknown: Line 3'],
    ['a depth no entry has', '['.repeat(200_000), 'line-not-json: Line 3'],
    ['a list of nothing', '[]', 'entry-wrong: Line 3 (v)'],
    ['null', 'null', 'entry-wrong: Line 3 (v)'],
  ])('%s is refused', (_name, line, refused) => {
    expect(refusedFor(line)).toBe(refused);
  });

  test('a correction deeper than any field is refused', () => {
    let becomes: unknown = 1;
    for (let depth = 0; depth < 20; depth += 1) becomes = { note: becomes };
    expect(refusedFor(changed('entry-corrected', { becomes }))).toMatch(/^entry-wrong/);
  });

  test('an id comes once', () => {
    const check = new JournalCheck();
    const line = JSON.stringify(sound('note-added'));
    check.take(line, 'Line 1');
    expect(() => check.take(line, 'Line 2')).toThrow('entry-twice: Line 2');
  });

  test.each([
    [{ km: 12.5 }, undefined],
    [{ noticed: 'creaks', happenedAtMs: 1_777_000_000_000 }, undefined],
    [{ km: 'far' }, 'becomes.km'],
    [{ rideId: 'other' }, 'becomes.rideId'],
    [{ zone: 'UTC' }, 'becomes.zone'],
    [{ torque: 5 }, 'becomes.torque'],
  ])('a correction puts what its kind of entry can hold: %j', (becomes, wrong) => {
    const check = new JournalCheck();
    check.take(JSON.stringify(changed('entry-corrected', { corrects: idOf(77), becomes })), 'Line 1');
    check.take(JSON.stringify(changed('ride-logged', { id: idOf(77) })), 'Line 2');
    if (wrong) expect(() => check.finish()).toThrow(`entry-wrong: Line 1 (${wrong})`);
    else expect(check.finish()).toEqual([]);
  });

  test('a correction may touch the very fields that the logbook lets it touch', () => {
    const ride = sound('ride-logged');
    const rows = new MemoryRows();
    rows.append(ride, []);
    const now = { nowMs: ride.writtenAtMs, zone: 'UTC', newId: () => idOf(1) };
    for (const [field, value] of Object.entries({ ...ride, by: 'the builder' })) {
      const command = {
        type: 'correct',
        entryId: ride.id,
        reason: 'x',
        becomes: { [field]: value },
      } as const;
      const decided = decide(rows, command, now);
      // What it reads already is no correction, but the field may be touched.
      const taken = Array.isArray(decided) || decided.refused === 'nothing-changes';
      expect([field, wrongInCorrection('ride-logged', { [field]: value })]).toEqual([
        field,
        taken ? undefined : field,
      ]);
    }
  });
});

import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import {
  type CalendarEvent,
  calendarText,
  sequenceAt,
  utcText,
} from '../../../../src/exchange/calendar/calendarText.ts';
import { contentLine, escapedText } from '../../../../src/exchange/calendar/contentLine.ts';
import { eventsOf } from '../../../../src/exchange/calendar/eventsOf.ts';
import type { Duty } from '../../../../src/journal/answers.ts';

const octets = (text: string) => new TextEncoder().encode(text).length;
const unfolded = (text: string) => text.replaceAll('\r\n ', '');

/** What a text is after what a calendar cannot hold has gone. */
const asHeld = (text: string) =>
  text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[^\P{Cc}\n]/gu, '')
    .replaceAll(/\p{Cs}/gu, '\ufffd');

function readBack(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    const [alarm] = component.getAllSubcomponents('valarm');
    return {
      uid: event.uid,
      atMs: event.startDate.toJSDate().getTime(),
      zone: event.startDate.zone.tzid,
      minutes: event.duration.toSeconds() / 60,
      sequence: event.sequence,
      stampMs: (component.getFirstPropertyValue('dtstamp') as ICAL.Time).toJSDate().getTime(),
      summary: event.summary,
      description: event.description,
      alarms: component.getAllSubcomponents('valarm').length,
      action: alarm?.getFirstPropertyValue('action'),
      triggerSeconds: (alarm?.getFirstPropertyValue('trigger') as ICAL.Duration | undefined)?.toSeconds(),
      alarmSays: alarm?.getFirstPropertyValue('description'),
    };
  });
}

const anyText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.string({ unit: 'binary', maxLength: 120 }),
  fc.string({
    unit: fc.constantFrom('\\', ';', ',', ':', '\n', '\r', '"', 'n', ' ', 'é', '車', '🚲'),
    maxLength: 150,
  }),
);
const second = fc
  .integer({ min: Date.UTC(1990, 0, 1) / 1000, max: Date.UTC(2060, 0, 1) / 1000 })
  .map((at) => at * 1000);
const anEvent: fc.Arbitrary<CalendarEvent> = fc.record({
  uid: fc.uuid(),
  atMs: second,
  summary: anyText.filter((text) => asHeld(text) !== ''),
  description: anyText,
});

describe('a content line', () => {
  test.each([
    ['VERSION', '2.0', 'VERSION:2.0\r\n'],
    // RFC 5545, 3.1: 75 octets, excluding the line break.
    ['X', 'a'.repeat(73), `X:${'a'.repeat(73)}\r\n`],
    ['X', 'a'.repeat(74), `X:${'a'.repeat(73)}\r\n a\r\n`],
    ['X', 'a'.repeat(73 + 74 + 1), `X:${'a'.repeat(73)}\r\n ${'a'.repeat(74)}\r\n a\r\n`],
    // Two octets that would end on the 76th.
    ['X', `${'a'.repeat(72)}é`, `X:${'a'.repeat(72)}\r\n é\r\n`],
    ['X', `${'a'.repeat(71)}é`, `X:${'a'.repeat(71)}é\r\n`],
    // Four octets, two halves of a pair.
    ['X', `${'a'.repeat(70)}🚲`, `X:${'a'.repeat(70)}\r\n 🚲\r\n`],
    // An escape stays in one piece.
    ['X', `${'a'.repeat(72)}\\n`, `X:${'a'.repeat(72)}\r\n \\n\r\n`],
  ])('%s:%s is folded by octets', (name, value, line) => {
    expect(contentLine(name, value)).toBe(line);
  });

  test('no line is longer than 75 octets, and unfolding gives what was written', () => {
    fc.assert(
      fc.property(anyText.map(escapedText), (value) => {
        const line = contentLine('SUMMARY', value);
        expect(unfolded(line)).toBe(`SUMMARY:${value}\r\n`);
        for (const piece of line.split('\r\n')) expect(octets(piece)).toBeLessThanOrEqual(75);
        // No sign is cut: each piece by itself is the same after encoding and decoding.
        for (const piece of line.split('\r\n'))
          expect(new TextDecoder().decode(new TextEncoder().encode(piece))).toBe(piece);
      }),
    );
  });

  test.each([
    // RFC 5545, 3.3.11: the example of a DESCRIPTION with its escapes.
    [
      'Project XYZ Final Review\nConference Room - 3B\nCome Prepared.',
      'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    ],
    ['Stem; bar, 5 N·m', 'Stem\\; bar\\, 5 N·m'],
    ['a\\n', 'a\\\\n'],
    ['14:00', '14:00'],
    ['a\u0000\u0007b\tc', 'abc'],
    ['\ud800x', '\ufffdx'],
    ['one\r\ntwo\rthree', 'one\\ntwo\\nthree'],
  ])('%j is escaped as %j', (text, escaped) => {
    expect(escapedText(text)).toBe(escaped);
  });
});

describe('a calendar file', () => {
  const look: CalendarEvent = {
    uid: '0190a6b2-1c2d-7000-8000-000000000001',
    atMs: Date.UTC(2026, 4, 3, 12, 30),
    summary: 'Magpie: look at the seal, rear',
    description: 'Look along the bead; read the pressure.',
  };

  test.each([
    [0, '19700101T000000Z'],
    [Date.UTC(2026, 4, 3, 12), '20260503T120000Z'],
    [Date.UTC(2026, 4, 3, 12) + 1, '20260503T120001Z'],
    [Date.UTC(2028, 1, 29, 23, 59, 59), '20280229T235959Z'],
  ])('%d is %s', (ms, text) => {
    expect(utcText(ms)).toBe(text);
  });

  test.each([
    [Date.UTC(2020, 0, 1, 0, 1), 60],
    [0, 0],
    // Days of the years 2020 to 2025 and to 3 May 2026: 2192 and 122.
    [Date.UTC(2026, 4, 3), 2314 * 86_400],
    [Number.MAX_SAFE_INTEGER, 2_147_483_647],
  ])('the sequence of one written at %d is %d', (made, sequence) => {
    expect(sequenceAt(made)).toBe(sequence);
  });

  test('an event has what RFC 5545 asks for, in lines ended by CR LF, the alarm last', () => {
    const text = calendarText([look], Date.UTC(2026, 4, 3, 12, 1));
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(unfolded(text).split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'VERSION:2.0',
      'PRODID:-//Pinchbolt//Workshop log//EN',
      'CALSCALE:GREGORIAN',
      'BEGIN:VEVENT',
      'UID:0190a6b2-1c2d-7000-8000-000000000001',
      'DTSTAMP:20260503T120100Z',
      `SEQUENCE:${2314 * 86_400 + 12 * 3600 + 60}`,
      'DTSTART:20260503T123000Z',
      'DURATION:PT15M',
      'SUMMARY:Magpie: look at the seal\\, rear',
      'DESCRIPTION:Look along the bead\\; read the pressure.',
      'TRANSP:TRANSPARENT',
      'BEGIN:VALARM',
      'ACTION:DISPLAY',
      'DESCRIPTION:Magpie: look at the seal\\, rear',
      'TRIGGER:PT0S',
      'END:VALARM',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  // Read back by ical.js, a parser of its own origin.
  test('another parser reads back every event as it was given', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(anEvent, { minLength: 1, maxLength: 5, selector: ({ uid }) => uid }),
        second,
        (events, madeAtMs) => {
          const text = calendarText(events, madeAtMs);
          for (const line of text.split('\r\n')) expect(octets(line)).toBeLessThanOrEqual(75);
          expect(readBack(text)).toEqual(
            events.map((event) => ({
              uid: event.uid,
              atMs: event.atMs,
              zone: 'UTC',
              minutes: 15,
              sequence: sequenceAt(madeAtMs),
              stampMs: madeAtMs,
              summary: asHeld(event.summary),
              description: asHeld(event.description),
              alarms: 1,
              action: 'DISPLAY',
              triggerSeconds: 0,
              alarmSays: asHeld(event.summary),
            })),
          );
        },
      ),
    );
  });

  test('one that is written later takes the place of the one before: same UID, higher SEQUENCE', () => {
    const [before] = readBack(calendarText([look], look.atMs - 2000));
    const [after] = readBack(calendarText([{ ...look, atMs: look.atMs + 3_600_000 }], look.atMs - 1000));
    expect(after?.uid).toBe(before?.uid);
    expect(after?.sequence).toBeGreaterThan(before?.sequence ?? Number.NaN);
    expect(after?.atMs).toBe((before?.atMs ?? 0) + 3_600_000);
  });

  test('[R10] a tool that was checked in between keeps its UID, and its SEQUENCE goes on growing', () => {
    const DAY_MS = 86_400_000;
    const firstMs = Date.UTC(2025, 4, 3);
    const checkOf = (lastCheckMs: number): Duty => ({
      ...{ key: 'tool/t', is: 'tool', id: 't', kind: 'tool-check', title: 'Click wrench', bikeName: '' },
      ...{ startedAtMs: lastCheckMs, left: {}, dueAtMs: lastCheckMs + 365 * DAY_MS },
      ...{ likelyMs: lastCheckMs + 365 * DAY_MS, latestByMs: lastCheckMs + 365 * DAY_MS },
    });
    const handed = (lastCheckMs: number, nowMs: number) =>
      readBack(calendarText(eventsOf([checkOf(lastCheckMs)], 'km', nowMs), nowMs))[0];
    const before = handed(firstMs, firstMs + 300 * DAY_MS);
    // Checked a day later, and handed over again the day after.
    const after = handed(firstMs + 301 * DAY_MS, firstMs + 302 * DAY_MS);
    expect(after?.uid).toBe(before?.uid);
    expect(after?.sequence).toBeGreaterThan(before?.sequence ?? Number.NaN);
  });

  test('a file without an event, or with one twice, is a mistake of the program', () => {
    expect(() => calendarText([], 0)).toThrow(RangeError);
    expect(() => calendarText([look, look], 0)).toThrow(RangeError);
  });
});

import { expect, test } from 'vitest';
import type { HistoryMark } from '../../../src/logbook.ts';
import { done, openTestLogbook } from './openTestLogbook.ts';

test.each([1, 2, 3, 7, 100])(
  'pages of %d lines give every line once, newest first, also where many were written in one millisecond',
  async (limit) => {
    const { logbook, clock } = await openTestLogbook();
    await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Heron' });
    for (let note = 0; note < 12; note += 1) {
      if (note % 5 === 4) clock.nowMs += 1;
      await done(logbook, { type: 'add-note', bikeId: 'b1', words: `note ${note}` });
    }
    await done(logbook, { type: 'start-bike', bikeId: 'b2', name: 'Wren' });
    const whole = await logbook.read('history', { place: 'b:b1', limit: 1000 });
    expect(whole.lines).toHaveLength(13);
    expect(whole.next).toBeUndefined();
    const seqs: number[] = [];
    let after: HistoryMark | undefined;
    do {
      const page = await logbook.read('history', { place: 'b:b1', limit, ...(after ? { after } : {}) });
      expect(page.lines.length).toBeGreaterThan(0);
      expect(page.lines.length).toBeLessThanOrEqual(limit);
      seqs.push(...page.lines.map(({ seq }) => seq));
      after = page.next;
    } while (after);
    expect(seqs).toEqual(whole.lines.map(({ seq }) => seq));
    const times = whole.lines.map(({ entry }) => entry.happenedAtMs);
    expect(times).toEqual([...times].sort((a, b) => b - a));
    // Nothing here was written late, so the newest is what was written last, to the single line.
    expect(seqs).toEqual([...seqs].sort((a, b) => b - a));
    logbook.close();
  },
);

test('what became of an entry stands with its line on whatever page it comes', async () => {
  const { logbook, clock } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Heron' });
  clock.nowMs += 60_000;
  const [note] = await done(logbook, { type: 'add-note', bikeId: 'b1', words: 'squeaks' });
  clock.nowMs += 60_000;
  await done(logbook, { type: 'add-note', bikeId: 'b1', words: 'quiet' });
  await done(logbook, { type: 'correct', entryId: note!.id, reason: 'other bike', becomes: null });
  const first = await logbook.read('history', { place: 'b:b1', limit: 2 });
  expect(first.lines.every(({ fixes }) => fixes.length === 0)).toBe(true);
  const second = await logbook.read('history', { place: 'b:b1', limit: 2, after: first.next! });
  expect(second.lines[0]?.entry.id).toBe(note?.id);
  expect(second.lines[0]?.fixes).toMatchObject([{ reason: 'other bike', becomes: null, undo: false }]);
  const nowhere = await logbook.read('history', { place: 'b:none', limit: 5 });
  expect(nowhere).toEqual({ lines: [], unread: [] });
  logbook.close();
});

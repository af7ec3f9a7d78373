import { expect, test } from 'vitest';
import type { Settings } from '../../../../src/journal/entries.ts';
import type { PartRow } from '../../../../src/journal/rows.ts';
import { emptyLine, type LineDraft, type LineKind } from '../../../../src/practice/log/lineDraft.ts';
import { lineTyped, mustStay, problemArea } from '../../../../src/practice/log/lines.ts';
import { picksFor, spotsOn } from '../../../../src/practice/log/picks.ts';
import { openTestLogbook } from '../../logbook/openTestLogbook.ts';

const nothing = { joints: [], parts: [], steps: [], tools: [] };
const HOUR_MS = 3_600_000;

/** A logbook, and a way to log a line as the screen does: from what the bike has now. */
async function bench() {
  const { logbook, clock } = await openTestLogbook();
  const settings: Settings = await logbook.read('settings', {});
  const log = async (kind: LineKind, typed: Partial<LineDraft>, sure = false) => {
    clock.nowMs += 60_000;
    const draft = { ...emptyLine, ...typed };
    const view = draft.bikeId ? await logbook.read('bike', { bikeId: draft.bikeId }) : undefined;
    const hand = { ...nothing, ...view, tools: await logbook.read('tools', {}) };
    const bikes = await logbook.read('bikes', {});
    const bikeNames = new Map(bikes.map(({ bikeId, name }) => [bikeId, name]));
    const newId = () => logbook.newId();
    const line = lineTyped(kind, draft, { bikeId: draft.bikeId, hand, settings, newId, sure, bikeNames });
    if (!line.ok) return line.wrong;
    const result = await logbook.run(line.commands);
    return 'refused' in result ? result : result.entries.map(({ type }) => type);
  };
  const bike = async (name: string) => {
    const bikeId = logbook.newId();
    await logbook.run({ type: 'start-bike', bikeId, name });
    clock.nowMs += 60_000;
    return bikeId;
  };
  const seen = async (bikeId: string) => {
    const view = await logbook.read('bike', { bikeId });
    if (!view) throw new Error(`no bike ${bikeId}`);
    return view;
  };
  return { logbook, clock, log, bike, seen };
}

test('[B7] a torque on the stem of a bike not in the logbook: bike, joint, tool and torque at once', async () => {
  const { logbook, log, seen } = await bench();
  const typed = { bikeName: 'Wren', where: 'stem', figure: '5', toolName: 'click wrench' };
  expect(await log('torque', typed)).toEqual(['bike-started', 'joint-made', 'tool-added', 'torque-applied']);
  const [bike] = await logbook.read('bikes', {});
  const bikeId = bike?.bikeId ?? '';
  const { joints } = await seen(bikeId);
  expect(joints).toMatchObject([
    { name: 'Stem', kind: 'stem-steerer', matters: true, note: 'From a logged line', state: 'torqued' },
  ]);
  expect(joints[0]?.applied).toMatchObject({
    bolts: 2,
    applied: { value: 5 },
    tool: { name: 'Click wrench' },
  });
  // The second time nothing is made anew, whatever the case of its name.
  expect(await log('torque', { ...typed, bikeName: '', bikeId, where: 'STEM ' })).toEqual(['torque-applied']);
  logbook.close();
});

test('what a torque line lacks is said by field, a doubt is asked once', async () => {
  const { logbook, log } = await bench();
  expect(await log('torque', {})).toEqual({
    where: 'Say which joint.',
    figure: 'Enter the torque you applied.',
    bikeName: 'Choose the bike, or name a new one.',
  });
  const wild = { bikeName: 'Wren', where: 'stem', figure: '5000' };
  expect(await log('torque', wild)).toMatchObject({ figure: expect.stringMatching(/tap again/) });
  // Where no hand can have done it, the logbook refuses and nothing is made, the bike neither.
  expect(await log('torque', wild, true)).toMatchObject({ refused: expect.any(String) });
  expect(await logbook.read('bikes', {})).toEqual([]);
  logbook.close();
});

test('[T1] a line ticks off the step of the plan that asks for it', async () => {
  const { logbook, log, bike, seen } = await bench();
  const bikeId = await bike('Wren');
  await log('note', { bikeId, where: 'stem', words: 'new bolts' });
  await logbook.run({ type: 'plan-steps', bikeId });
  const torqueStep = async () => (await seen(bikeId)).steps.find(({ kind }) => kind === 'torque');
  expect((await torqueStep())?.state).toBe('open');
  await log('torque', { bikeId, where: 'stem', figure: '5' });
  expect((await torqueStep())?.state).toBe('done');
  logbook.close();
});

test('[T7] threadlocker on rotor bolts starts its cure of a day and more', async () => {
  const { logbook, clock, log, bike, seen } = await bench();
  const bikeId = await bike('Wren');
  expect(await log('locker', { bikeId, where: 'Rotor on hub' })).toEqual({ grade: 'Choose the grade.' });
  const put = { bikeId, where: 'Rotor on hub', grade: 'medium' } as const;
  expect(await log('locker', put)).toEqual(['joint-made', 'locker-applied']);
  const [cure] = (await seen(bikeId)).waits;
  expect(cure?.dueAtMs).toBeGreaterThanOrEqual(clock.nowMs + 24 * HOUR_MS);
  // Put on again, the cure before it ends.
  expect(await log('locker', put)).toEqual(['wait-ended', 'locker-applied']);
  expect(await log('locker', { ...put, surface: 'carbon' })).toEqual({
    surface: 'It does not cure on this surface.',
  });
  logbook.close();
});

test('sealant in a tyre, a look in 20 minutes; a pressure needs its figure', async () => {
  const { logbook, clock, log, bike, seen } = await bench();
  const bikeId = await bike('Wren');
  const made = await log('tyre', { bikeId, where: 'rear', lookAgainMs: 20 * 60_000 });
  expect(made).toEqual(['joint-made', 'seal-marked', 'wait-started']);
  expect((await seen(bikeId)).waits.map(({ dueAtMs }) => dueAtMs)).toEqual([clock.nowMs + 20 * 60_000]);
  const rear = { bikeId, where: 'rear tyre' };
  expect(await log('tyre', { ...rear, mark: 'reading' })).toEqual({ figure: 'Enter the pressure.' });
  expect(await log('tyre', { ...rear, mark: 'reading', figure: '2,4' })).toEqual([
    ...['seal-marked', 'wait-ended'],
  ]);
  expect(await log('tyre', { ...rear, mark: 'burped' })).toEqual(['seal-marked']);
  expect((await seen(bikeId)).joints.map(({ name, kind }) => [name, kind])).toEqual([['Rear tyre', 'bead']]);
  logbook.close();
});

test('[P6] two millimetres filed off a dropout; the frame is made once', async () => {
  const { logbook, log, bike, seen } = await bench();
  const bikeId = await bike('Wren');
  const line = { bikeId, where: 'Frame', spot: 'Dropout', figure: '2' };
  expect(await log('cut', { ...line, spot: '', figure: 'some' })).toEqual({
    spot: 'Say where on the part.',
    figure: 'Enter a size: 2 mm off, or 48 to 46 mm.',
  });
  expect(await log('cut', line)).toEqual(['part-added', 'part-changed']);
  expect(await log('cut', { ...line, figure: '12 to 14 mm' })).toEqual(['part-changed']);
  const { parts } = await seen(bikeId);
  expect(parts).toMatchObject([{ name: 'Frame', kind: 'frame', originWords: 'from a logged line' }]);
  expect(parts[0]?.changes).toMatchObject([{ amount: { value: 2 } }, { before: {}, after: {} }]);
  logbook.close();
});

test('[P1] a used saddle off another bike: one the logbook has is moved, one it has not is made', async () => {
  const { logbook, log, bike, seen } = await bench();
  const [wren, rook] = [await bike('Wren'), await bike('Rook')];
  const off = { bikeId: wren, where: 'Saddle', origin: 'off-a-bike', fromBikeId: rook } as const;
  expect(await log('part', off)).toEqual(['part-added']);
  const { parts } = await seen(wren);
  expect(parts).toMatchObject([
    { kind: 'saddle', origin: 'off-a-bike', originWords: 'off Rook, from a logged line' },
  ]);
  const fromPartId = parts[0]?.partId ?? '';
  expect(await log('part', { ...off, bikeId: rook, fromBikeId: wren, fromPartId })).toEqual(['part-moved']);
  expect((await seen(wren)).parts).toEqual([]);
  expect(await log('part', { where: 'spare stem' })).toEqual(['part-added']);
  expect(await logbook.read('parts', { at: 'shelf' })).toMatchObject([{ name: 'Spare stem', kind: 'stem' }]);
  logbook.close();
});

test('[L4] came loose: do not ride; at what matters no distance makes it ridable', async () => {
  const { logbook, log, bike } = await bench();
  const bikeId = await bike('Wren');
  expect(await log('problem', { bikeId, words: 'Came loose' })).toEqual(['defect-found']);
  const limited = { bikeId, words: 'Creaks', decision: 'ride-limited' } as const;
  expect(await log('problem', limited)).toEqual({ figure: 'Enter how far it may be ridden.' });
  expect(await log('problem', { ...limited, figure: '20' })).toEqual(['defect-found']);
  const slips = { ...limited, words: 'Slips', where: 'stem' };
  expect(await log('problem', slips)).toEqual(['joint-made', 'defect-found']);
  const [row] = await logbook.read('bikes', {});
  expect(row?.grave.map(({ words }) => words)).toEqual(['Came loose', 'Slips']);
  logbook.close();
});

test('[L4] a joint that was tapped is meant, not the part of its name; a tube of the frame is no tyre', async () => {
  const { logbook, log, bike, seen } = await bench();
  const bikeId = await bike('Wren');
  await log('part', { bikeId, where: 'Stem' });
  await log('torque', { bikeId, where: 'stem', figure: '5' });
  const [stem] = (await seen(bikeId)).joints;
  const limited = { bikeId, words: 'Slips', decision: 'ride-limited', figure: '20' } as const;
  await log('problem', { ...limited, where: 'Stem', whereId: stem?.jointId ?? '' });
  await log('problem', { ...limited, words: 'Bent', where: 'Head tube' });
  const { defects, joints, parts } = await seen(bikeId);
  expect(defects.map(({ words, decision }) => `${words}: ${decision}`).toSorted()).toEqual([
    'Bent: ride-limited',
    'Slips: do-not-ride',
  ]);
  expect(joints.map(({ kind }) => kind)).toEqual(['stem-steerer']);
  expect(parts.map(({ kind }) => kind).toSorted()).toEqual(['frame', 'stem']);
  logbook.close();
});

test('[T9] threadlocker that cannot fill the measured gap of a joint starts no cure', async () => {
  const { logbook, log, bike, seen } = await bench();
  const bikeId = await bike('Wren');
  await log('torque', { bikeId, where: 'rack', figure: '5' });
  const [rack] = (await seen(bikeId)).joints;
  const mm = (value: number) => ({ value, unit: 'mm' as const, typed: String(value) });
  const wide = { bore: mm(10), outside: mm(9) };
  await logbook.run({ type: 'describe-joint', jointId: rack?.jointId ?? '', diameters: wide });
  expect(await log('locker', { bikeId, where: 'rack', grade: 'medium' })).toEqual({
    surface: 'The gap of this joint is too wide.',
  });
  logbook.close();
});

test('a ride and a note', async () => {
  const { logbook, log, bike } = await bench();
  const bikeId = await bike('Wren');
  expect(await log('ride', { bikeId })).toMatchObject({ refused: 'ride-empty' });
  expect(await log('ride', { bikeId, minutes: '38', figure: 'far' })).toMatchObject({
    figure: expect.any(String),
  });
  expect(await log('ride', { bikeId, minutes: '38', figure: '12,5' })).toContain('ride-logged');
  expect(await log('note', { bikeId, words: ' ' })).toEqual({ words: 'Write a word or two.' });
  expect(await log('note', { bikeId, words: 'bell bought' })).toEqual(['note-added']);
  logbook.close();
});

// Common practice, no source: what each joint is to the rider.
test.each([
  ['Crack in the weld', undefined, false, 'crack'],
  ['Came loose', 'stem-steerer', true, 'steering'],
  ['Came loose', 'rotor', true, 'brake'],
  ['Came loose', 'rear-axle', true, 'wheel-retention'],
  ['Slow leak', 'bead', true, 'tyre-or-rim'],
  ['Came loose', 'rack', false, 'other'],
  ['Rattles', undefined, false, 'other'],
] as const)('%s at %s, matters %s: %s', (words, kind, matters, area) => {
  expect(problemArea(words, kind, matters)).toBe(area);
});

test('a crack, and whatever is at the stem, must stay', () => {
  const withWhat = { bikeId: 'b', hand: nothing, settings: {} as Settings, newId: () => 'n' };
  expect(mustStay({ ...emptyLine, words: 'Cracked' }, withWhat)).toBe(true);
  expect(mustStay({ ...emptyLine, words: 'Creaks', where: 'stem' }, withWhat)).toBe(true);
  expect(mustStay({ ...emptyLine, words: 'Creaks', where: 'rack' }, withWhat)).toBe(false);
});

test('of the parts a bike has, those that are usually cut are offered first, and none twice', () => {
  const part = (partId: string, kind: string, name: string) => ({ partId, kind, name }) as PartRow;
  const parts = [
    part('s', 'saddle', 'Saddle, sprung'),
    part('h', 'rear-hub', 'Hub'),
    part('f', 'frame', 'Frame'),
  ];
  const picks = picksFor('cut', { ...nothing, parts }, '');
  expect(picks.slice(0, 3).map(({ id }) => id)).toEqual(['f', 'h', 's']);
  expect(picks.map(({ words }) => words)).not.toContain('Rear hub');
});

test('what is tapped in place of typing', () => {
  expect(picksFor('torque', nothing, 'stem')[0]).toEqual({ words: 'Stem on steerer', id: '' });
  expect(picksFor('locker', nothing, '')[0]?.words).toBe('Rotor on hub');
  expect(picksFor('tyre', nothing, '').map(({ words }) => words)).toEqual(['Rear tyre', 'Front tyre']);
  expect(picksFor('cut', nothing, '')[0]?.words).toBe('Frame');
  expect(picksFor('torque', nothing, 'zzz')).toEqual([]);
  expect(spotsOn('Frame')[0]).toBe('Dropout');
  expect(spotsOn('Bell')).not.toEqual([]);
});

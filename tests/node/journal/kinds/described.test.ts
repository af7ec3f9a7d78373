import { describe, expect, test } from 'vitest';
import { described } from '../../../../src/journal/kinds/described.ts';
import { aBike, mm } from '../../logbook/aBike.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';

const about = { kind: 'fork', origin: 'found' as const, label: 'red', name: 'Fork' };
const shelf = { on: 'shelf' as const };

test('what is cleared is gone: the example of its description', () => {
  type Fork = { name: string; massG?: number };
  const fork = { name: 'Fork', massG: 8200 };
  expect(described<Fork, Fork>(fork, { cleared: ['massG'] }, ['name', 'massG'])).toEqual({ name: 'Fork' });
});

describe('what was written by mistake can be emptied', () => {
  test('[J7] of a part: the field is gone, the rest stays, the history tells it', async () => {
    const { logbook } = await openTestLogbook();
    await done(logbook, { type: 'add-part', partId: 'p', place: shelf, ...about, massG: 8200, serial: '47' });
    const [entry] = await done(logbook, { type: 'describe-part', partId: 'p', cleared: ['massG'] });
    expect(entry).toMatchObject({ type: 'part-described', cleared: ['massG'] });
    const part = (await logbook.read('part', { partId: 'p' }))?.part;
    expect(part).toMatchObject({ ...about, serial: '47' });
    expect(part).not.toHaveProperty('massG');
    logbook.close();
  });

  test('[J7] of a tool and of a joint', async () => {
    const { logbook } = await openTestLogbook();
    const bar = { rise: mm(60), reach: mm(-40) };
    const { jointId } = await aBike(logbook, 'b1', { bar, note: 'creaks' });
    await done(logbook, { type: 'describe-joint', jointId, cleared: ['bar'] });
    const joint = (await logbook.read('joint', { jointId }))?.joint;
    expect(joint).toMatchObject({ note: 'creaks', fasteners: [{ thread: 'M5' }] });
    expect(joint).not.toHaveProperty('bar');
    await done(logbook, {
      type: 'add-tool',
      toolId: 't',
      name: 'small',
      minNm: 2,
      maxNm: 24,
      lever: mm(210),
    });
    await done(logbook, { type: 'describe-tool', toolId: 't', cleared: ['lever', 'minNm'] });
    const [tool] = await logbook.read('tools', {});
    expect(tool).toMatchObject({ name: 'small', maxNm: 24 });
    expect(tool).not.toHaveProperty('lever');
    expect(tool).not.toHaveProperty('minNm');
    logbook.close();
  });

  test('[J7] what says a field anew does not clear it, and what held nothing is not told as emptied', async () => {
    const { logbook } = await openTestLogbook();
    await done(logbook, { type: 'add-part', partId: 'p', place: shelf, ...about, massG: 8200 });
    const [entry] = await done(logbook, {
      ...{ type: 'describe-part', partId: 'p', massG: 820, cleared: ['massG', 'serial'] },
    });
    expect(entry).not.toHaveProperty('cleared');
    expect((await logbook.read('part', { partId: 'p' }))?.part.massG).toBe(820);
    logbook.close();
  });

  test('[J7] [C1] [C3] undone it is back; emptied late, what was said after it stands', async () => {
    const { logbook, clock } = await openTestLogbook();
    await done(logbook, { type: 'add-part', partId: 'p', place: shelf, ...about, massG: 8200 });
    const massOf = async () => (await logbook.read('part', { partId: 'p' }))?.part.massG;
    const thenMs = clock.nowMs + 1000;
    clock.nowMs += 60_000;
    const [entry] = await done(logbook, { type: 'describe-part', partId: 'p', cleared: ['massG'] });
    expect(await massOf()).toBeUndefined();
    await done(logbook, { type: 'undo', entryIds: [entry!.id] });
    expect(await massOf()).toBe(8200);
    await done(logbook, { type: 'describe-part', partId: 'p', massG: 820 });
    await done(logbook, { type: 'describe-part', partId: 'p', cleared: ['massG'], happenedAtMs: thenMs });
    expect(await massOf()).toBe(820);
    logbook.close();
  });

  test('[J5] one end of a scale is judged by the other end that is known', async () => {
    const { logbook } = await openTestLogbook();
    await done(logbook, { type: 'add-tool', toolId: 't', name: 'small', minNm: 10, maxNm: 60 });
    const less = { type: 'describe-tool' as const, toolId: 't', maxNm: 8 };
    expect(await logbook.run(less)).toMatchObject({ refused: 'absurd-value' });
    expect(await logbook.run({ ...less, cleared: ['minNm'] })).toHaveProperty('entries');
    logbook.close();
  });

  test.each([
    ['massG', Number.NaN, 'not-a-number'],
    ['massG', 0, 'not-positive'],
    ['massG', 1e9, 'absurd-value'],
    ['kmBefore', Number.POSITIVE_INFINITY, 'not-a-number'],
    ['kmBefore', -1, 'not-positive'],
  ])('[J5] a part with %s %d never enters the journal', async (field, value, refused) => {
    const { logbook } = await openTestLogbook();
    const part = { type: 'add-part' as const, partId: 'p', place: shelf, ...about };
    expect(await logbook.run({ ...part, [field]: value })).toMatchObject({ refused });
    await done(logbook, { ...part, kmBefore: 0 });
    expect(await logbook.run({ type: 'describe-part', partId: 'p', [field]: value })).toMatchObject({
      refused,
    });
    logbook.close();
  });

  test.each(['before', 'after', 'left'])(
    '[J5] a change whose size %s is 4 m never enters the journal',
    async (field) => {
      const { logbook } = await openTestLogbook();
      await done(logbook, {
        ...{ type: 'add-part', partId: 'p1', label: '', name: 'Fork', kind: 'fork' },
        ...{ origin: 'found', place: { on: 'shelf' } },
      });
      const mm = (value: number) => ({ value, unit: 'mm' as const, typed: String(value) });
      expect(
        await logbook.run({
          ...{ type: 'change-part', partId: 'p1', cut: 'file', where: 'seat', how: 'file', why: 'race' },
          ...{ before: mm(27), after: mm(26.4), left: mm(3) },
          [field]: { value: 400, unit: 'cm', typed: '400 cm' },
        }),
      ).toEqual({ refused: 'absurd-value', about: '400 cm' });
      logbook.close();
    },
  );
});

import { expect, test } from 'vitest';
import { sheetOfJoint } from '../../../src/documents/sheetOfJoint.ts';
import type { SealMark } from '../../../src/journal/entries.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const bar = (value: number) => ({ value, unit: 'bar', typed: value.toFixed(2) }) as const;
const riding = (value: number): SealMark => ({
  mark: 'riding',
  pressure: bar(value),
  temperature: { value: 5, unit: 'Cel', typed: '5' },
});

async function aSeal() {
  const opened = await openTestLogbook();
  const { logbook } = opened;
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Dabchick' });
  await done(logbook, {
    ...{ type: 'add-part', partId: 't', label: 't', name: 'Tyre', kind: 'tyre', origin: 'found' },
    place: { on: 'bike', bikeId: 'b1' },
    faces: [
      { faceId: 't', kind: 'tyre-bead', standard: null, nominal: { maxPressureBar: 3.5 }, measured: {} },
    ],
  });
  await done(logbook, {
    ...{ type: 'make-joint', jointId: 'j', bikeId: 'b1', name: 'Rear tyre', kind: 'bead', partIds: ['t'] },
    ...{ between: [], fasteners: [], targets: [] },
  });
  const mark = async (one: SealMark) => {
    opened.clock.nowMs += 60_000;
    return done(logbook, { type: 'mark-seal', jointId: 'j', mark: one });
  };
  return { ...opened, mark };
}

test('the riding pressure is kept with the cold it is meant for, changes nothing on the wheel, and ends no look', async () => {
  const { logbook, clock, mark } = await aSeal();
  await done(logbook, {
    ...{ type: 'mark-seal', jointId: 'j', mark: { mark: 'spun-and-shaken' } },
    lookAgainMs: 3_600_000,
  });
  const entries = await mark(riding(1.8));
  expect(entries).toHaveLength(1);
  expect(entries[0]).toMatchObject({ type: 'seal-marked', mark: riding(1.8), matters: false });
  const joint = await logbook.read('joint', { jointId: 'j' });
  expect(joint?.waits.filter(({ endedAtMs }) => endedAtMs === undefined)).toHaveLength(1);
  expect(clock.nowMs).toBeGreaterThan(0);
});

test('[W4] a riding pressure above the limit is asked about like any other', async () => {
  const { logbook } = await aSeal();
  const command = { type: 'mark-seal', jointId: 'j', mark: riding(4) } as const;
  expect(await logbook.run(command)).toMatchObject({ refused: 'above-the-limit' });
});

test('the sheet carries every reading, dose and verdict of a seal, in the order they were made', async () => {
  const { logbook, mark } = await aSeal();
  await mark({ mark: 'sealant', sealantKind: 'latex', amount: { value: 60, unit: 'mL', typed: '60' } });
  for (const value of [2.5, 2.4, 2.3]) await mark({ mark: 'reading', reading: { pressure: bar(value) } });
  await mark({ mark: 'verdict', verdict: 'leaks' });
  const view = (await logbook.read('joint', { jointId: 'j' }))!;
  const lines = sheetOfJoint(
    view.joint,
    { seals: view.seal ? [view.seal] : [], waits: [] } as unknown as Parameters<typeof sheetOfJoint>[1],
    { bike: () => 'Dabchick', part: () => 'Tyre', joint: () => 'Rear tyre', tool: () => undefined },
    { zone: 'UTC' } as Parameters<typeof sheetOfJoint>[3],
  );
  const told = JSON.stringify(lines.filter((line) => 'label' in line && line.label === 'Seal'));
  for (const part of ['60 mL of sealant', '2.50 bar', '2.40 bar', '2.30 bar', 'judged: it leaks'])
    expect(told).toContain(part);
  expect(told.indexOf('2.50 bar')).toBeLessThan(told.indexOf('2.30 bar'));
});

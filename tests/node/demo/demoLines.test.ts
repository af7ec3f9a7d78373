import { expect, test } from 'vitest';
import { demoLines } from '../../../src/demo/demoLines.ts';
import { loadDemo } from '../../../src/demo/loadDemo.ts';
import { openTestLogbook } from '../logbook/openTestLogbook.ts';

const NOW_MS = Date.UTC(2026, 10, 25, 15);

test('the demo is plain data: the same for the same instant, and it survives being written out', () => {
  const lines = demoLines(NOW_MS);
  expect(lines[2]?.command.type).toBe('start-bike');
  expect(demoLines(NOW_MS)).toEqual(lines);
  expect(JSON.parse(JSON.stringify(lines))).toEqual(lines);
  expect(lines.every(({ atMs }) => atMs <= NOW_MS)).toBe(true);
});

test('whatever a line of the demo names, an earlier line has made', () => {
  const made = new Set<string>();
  const strays: string[] = [];
  for (const { command } of demoLines(NOW_MS)) {
    const { type } = command;
    const fields: Record<string, unknown> = { ...command };
    const { stepId, waitId, defectId, recheckId } = fields;
    const makes = type === 'add-step' || type === 'apply-locker' || type === 'find-defect';
    for (const named of [recheckId, ...(makes ? [] : [stepId, waitId, defectId])])
      if (typeof named === 'string' && !made.has(named)) strays.push(`${type} ${named}`);
    const ids = [stepId, waitId, defectId, fields.nextRecheckId, ...Object.values(fields.recheckIds ?? {})];
    for (const id of ids) if (typeof id === 'string') made.add(id);
  }
  expect(strays).toEqual([]);
});

test('the steps of the demo are those that planning from its joints would give', async () => {
  const { logbook } = await openTestLogbook(NOW_MS);
  await loadDemo(logbook);
  for (const bikeId of ['demo-magpie', 'demo-ferry']) {
    // The second rotor came months after the build and was never a step.
    const planned = await logbook.run({ type: 'plan-steps', bikeId });
    const added = 'entries' in planned ? planned.entries : [];
    expect(added.filter((entry) => !('jointId' in entry) || entry.jointId !== 'demo-f-j-rotor-2')).toEqual(
      [],
    );
  }
  logbook.close();
}, 60_000);

test('every re-check that was due on the two days of checking was answered', async () => {
  const { logbook } = await openTestLogbook(NOW_MS);
  await loadDemo(logbook);
  const open = await logbook.read('rechecks', { bikeId: 'demo-ferry' });
  const sixtyDaysAgo = NOW_MS - 60 * 86_400_000;
  expect(open.filter(({ setAtMs }) => setAtMs < sixtyDaysAgo - 86_400_000)).toEqual([]);
  expect(open.length).toBeGreaterThan(10);
  logbook.close();
}, 60_000);

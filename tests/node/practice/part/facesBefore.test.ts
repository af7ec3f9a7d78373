import { expect, test } from 'vitest';
import type { Face } from '../../../../src/fit/faces/face.ts';
import { facesBefore } from '../../../../src/practice/part/facesBefore.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';

const mm = (value: number) => ({ value, unit: 'mm' as const, typed: String(value) });
const ends = (value: number): Face => ({
  ...{ faceId: 'f1', kind: 'end-spacing', standard: null, nominal: {} },
  measured: { spacingMm: { ...mm(value), uncertaintyMm: 0.1 } },
});

test('with no face there is none to be old', () => {
  expect(facesBefore([], mm(130), [])).toBe(false);
});

test('after a change the faces are old until they are written anew, or say the new size', async () => {
  const { logbook } = await openTestLogbook();
  const lines = async () => (await logbook.read('history', { place: 'p:p1', limit: 50 })).lines;
  await done(logbook, {
    ...{ type: 'add-part', partId: 'p1', label: '', name: 'Frame', kind: 'frame', origin: 'found' },
    ...{ place: { on: 'shelf' }, faces: [ends(120)] },
  });
  expect(facesBefore([ends(120)], mm(130), await lines())).toBe(false);
  const [changed] = await done(logbook, {
    ...{ type: 'change-part', partId: 'p1', cut: 'cold-set', where: 'ends', how: 'rod', why: 'hub' },
    ...{ before: mm(120), after: mm(130) },
  });
  await done(logbook, { type: 'describe-part', partId: 'p1', note: 'straight' });
  expect(facesBefore([ends(120)], mm(130), await lines())).toBe(true);
  expect(facesBefore([ends(130)], { value: 13, unit: 'cm', typed: '13' }, await lines())).toBe(false);
  await done(logbook, { type: 'describe-part', partId: 'p1', faces: [ends(129.6)] });
  expect(facesBefore([ends(129.6)], mm(130), await lines())).toBe(false);
  expect(changed).toMatchObject({ type: 'part-changed' });
  logbook.close();
});

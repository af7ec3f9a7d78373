import { expect, test } from 'vitest';
import { threadRow } from '../../../../src/standards/screws/threads.ts';
import { bearingFaces } from '../../../../src/standards/screws/threadsBearing.ts';

test.each(bearingFaces)('$thread: screw < hole < hexagon < socket head', (row) => {
  const { diameterMm } = threadRow(row.thread);
  expect(row.holeMm).toBeGreaterThan(diameterMm);
  expect(row.hexHeadMm).toBeGreaterThan(row.holeMm);
  expect(row.socketHeadMm).toBeGreaterThan(row.hexHeadMm);
  expect(row.socketHeadMm).toBeLessThan(2 * diameterMm);
});

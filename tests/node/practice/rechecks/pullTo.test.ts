import { expect, test } from 'vitest';
import type { Applied } from '../../../../src/journal/rows.ts';
import { pullToApplied } from '../../../../src/practice/rechecks/pullTo.ts';
import { nm } from '../../logbook/aBike.ts';

const applied: Applied = { entryId: 'e', atMs: 0, applied: nm(12), bolts: 1, passes: 1, marked: false };
const one = [{ source: 'printed-on-the-part' as const, torque: nm(14) }];
const range = [{ source: 'printed-on-the-part' as const, torque: nm(12), upTo: nm(14) }];

test('[R7] a joint with a range is met at what was applied, one with a single target at that', () => {
  expect(pullToApplied({ targets: range, state: 'torqued', applied })).toEqual(nm(12));
  expect(pullToApplied({ targets: one, state: 'torqued', applied })).toBeUndefined();
  expect(pullToApplied({ targets: [], state: 'torqued', applied })).toEqual(nm(12));
  expect(pullToApplied({ targets: range, state: 'hand-tight', applied })).toBeUndefined();
});

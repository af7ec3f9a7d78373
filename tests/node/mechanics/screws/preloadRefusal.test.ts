import { expect, test } from 'vitest';
import { preloadAllowed } from '../../../../src/mechanics/screws/preloadRefusal.ts';

// Common practice, no source; the galling range of dry stainless is in a fastener distributor's nut factor table.
test.each([
  ['titanium', 'aluminium', 'grease', 'titanium-screw'],
  ['titanium', 'titanium', 'none', 'titanium-on-titanium'],
  ['titanium', 'titanium', 'anti-seize', 'titanium-screw'],
  ['aluminium', 'aluminium', 'grease', 'aluminium-screw'],
  ['unknown', 'steel', 'grease', 'unknown-screw'],
  ['stainless', 'stainless', 'none', 'dry-stainless-on-stainless'],
  ['stainless', 'stainless', 'unknown', 'dry-stainless-on-stainless'],
  ['steel', 'plastic', 'none', 'plastic-thread'],
] as const)('%s screw in %s, %s: %s', (screw, female, lubricant, reason) => {
  expect(preloadAllowed({ screw, female, lubricant })).toEqual({ ok: false, reason });
});

test.each([
  ['steel', 'aluminium', 'none'],
  ['steel', 'unknown', 'unknown'],
  ['stainless', 'aluminium', 'none'],
  ['stainless', 'stainless', 'anti-seize'],
] as const)('%s screw in %s, %s is computed', (screw, female, lubricant) => {
  expect(preloadAllowed({ screw, female, lubricant })).toEqual({ ok: true });
});

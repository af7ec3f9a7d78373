import { describe, expect, test } from 'vitest';
import type { Lubricant } from '../../../src/mechanics/screws/preloadRefusal.ts';
import { type RecheckSpan, recheckRows } from '../../../src/standards/checks/recheckSchedule.ts';
import { type JointKind, jointKinds } from '../../../src/standards/jointKinds.ts';
import { type ClampSurface, clampFriction } from '../../../src/standards/screws/friction.ts';
import { nutFactorFor, type ScrewSurface } from '../../../src/standards/screws/nutFactors.ts';
import { engagementRule } from '../../../src/standards/screws/threadEngagement.ts';

// Figures this project decided on, typed again: a decision changes here and there, a slip of the finger only there.

describe('nut factors to reckon with', () => {
  test.each<[ScrewSurface, Lubricant, number, number, number]>([
    ['zinc', 'none', 0.17, 0.22, 0.35],
    ['zinc-flake', 'none', 0.16, 0.22, 0.32],
    ['cadmium', 'none', 0.15, 0.17, 0.2],
    ['black', 'none', 0.17, 0.2, 0.3],
    ['stainless', 'grease', 0.13, 0.18, 0.23],
    ['stainless', 'oil', 0.13, 0.18, 0.26],
    ['stainless', 'anti-seize', 0.13, 0.18, 0.23],
    ['stainless', 'none', 0.3, 0.4, 0.5],
    ['unknown', 'none', 0.17, 0.2, 0.27],
    ['unknown', 'oil', 0.11, 0.16, 0.22],
    ['unknown', 'grease', 0.12, 0.16, 0.2],
    ['unknown', 'anti-seize', 0.12, 0.15, 0.18],
    ['unknown', 'moly', 0.1, 0.14, 0.18],
    ['unknown', 'wax', 0.1, 0.12, 0.15],
    ['unknown', 'threadlocker-wet', 0.12, 0.17, 0.22],
    ['unknown', 'unknown', 0.12, 0.19, 0.3],
  ])('%s, %s', (surface, lubricant, lo, mid, hi) =>
    expect(nutFactorFor(surface, lubricant).nutFactor).toEqual({ lo, mid, hi }),
  );
});

test.each<[ClampSurface, number, number, number]>([
  ['metal-dry', 0.12, 0.16, 0.2],
  ['metal-greased', 0.08, 0.1, 0.15],
  ['carbon-dry', 0.1, 0.15, 0.25],
  ['carbon-paste', 0.2, 0.25, 0.4],
])('friction of a clamp, %s', (face, lo, mid, hi) =>
  expect(clampFriction[face].friction).toEqual({ lo, mid, hi }),
);

test.each([
  ['steel', 1, 500, 1],
  ['stainless', 1, 500, 1],
  ['cast-iron', 1.25, 250, 1],
  ['brass', 1.5, 350, 1],
  ['aluminium', 2, 250, 0.7],
  ['magnesium', 2.5, 200, 0.6],
  ['titanium', 1, 500, 1],
] as const)('thread engagement in %s', (female, diameters, tensileMPa, torqueShare) =>
  expect(engagementRule(female)).toMatchObject({ diameters, tensileMPa, torqueShare }),
);

const first: RecheckSpan = { afterRides: 1, km: 10, hours: 1, days: 30 };
const ten: RecheckSpan = { afterRides: 3, hours: 10, km: 150, days: 60 };
const service: RecheckSpan = { hours: 20, km: 500, days: 90 };
const ride: RecheckSpan = { afterRides: 1 };
const month: RecheckSpan = { km: 75, days: 30 };

test.each<[JointKind, RecheckSpan, RecheckSpan | null, RecheckSpan | null]>([
  ['headset', { ...first, days: 14 }, ten, service],
  ['crown-race', first, ten, service],
  ['fork', first, service, service],
  ['stem-steerer', first, ten, service],
  ['stem-quill', first, ten, service],
  ['bar-clamp', first, ten, service],
  ['grip', first, ten, service],
  ['lever-clamp', first, ten, service],
  ['cable-anchor', first, { days: 14, km: 100 }, service],
  ['brake-mount', first, { afterRides: 4, km: 100, days: 30 }, service],
  ['caliper', first, ten, service],
  ['rotor', { afterRides: 0 }, null, null],
  ['bottom-bracket', first, service, service],
  ['crank', first, month, service],
  ['crank-pinch', first, month, service],
  ['chainring', first, month, service],
  ['pedal', first, month, service],
  ['sprocket', first, service, service],
  ['freewheel', first, service, service],
  ['lockring', first, ten, service],
  ['chain', { afterRides: 1, km: 50, days: 30 }, service, service],
  ['seatpost', first, ten, service],
  ['saddle-rails', first, ten, service],
  ['front-axle', first, ride, ride],
  ['rear-axle', first, ride, ride],
  ['thru-axle', first, ride, ride],
  ['bead', { afterRides: 1, days: 1 }, { afterRides: 1, days: 7 }, { days: 90 }],
  ['spokes', { afterRides: 1, km: 20, days: 14 }, { km: 100, days: 30 }, service],
  ['mudguard', first, service, service],
  ['rack', first, ten, service],
  ['other', first, service, service],
])('re-checks of %s', (kind, whenFirst, then, afterwards) =>
  expect(recheckRows(kind, false)[0]).toMatchObject({ whenFirst, then, afterwards }),
);

test('fasteners to expect, and the order of a build', () => {
  expect(jointKinds.map(({ kind, defaultFastenerCount }) => `${kind} ${defaultFastenerCount}`)).toEqual([
    ...['spokes 32', 'bead 0', 'rotor 6', 'freewheel 0', 'sprocket 1', 'lockring 1', 'crown-race 0'],
    ...['headset 1', 'fork 0', 'stem-quill 1', 'stem-steerer 2', 'bottom-bracket 2', 'brake-mount 2'],
    ...['seatpost 1', 'saddle-rails 2', 'front-axle 2', 'thru-axle 1', 'rear-axle 2', 'chainring 5'],
    ...['crank 1', 'crank-pinch 2', 'pedal 2', 'chain 0', 'bar-clamp 4', 'lever-clamp 1', 'grip 1'],
    ...['caliper 2', 'cable-anchor 1', 'mudguard 4', 'rack 4', 'other 1'],
  ]);
  // Listed as they are built, and a gap stands between two: the order of the list is the order of the build.
  const order = jointKinds.map(({ buildOrder }) => buildOrder);
  expect([...order].sort((a, b) => a - b)).toEqual(order);
  expect(order.slice(0, 12)).toEqual([10, 20, 30, 40, 42, 44, 50, 60, 70, 80, 82, 90]);
  expect(order.slice(12)).toEqual([
    ...[100, 110, 115, 120, 122, 124, 130, 140, 142, 150, 160, 170, 180, 185, 190, 200, 210, 220, 230],
  ]);
});

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mates } from '../../../../src/fit/bridges/mates.ts';
import type { Face } from '../../../../src/fit/faces/face.ts';
import type { FitOutcome } from '../../../../src/fit/verdict.ts';
import { caliper, face, named } from '../../../fixtures/pileParts.ts';

type Row = [why: string, one: Face, other: Face, outcome: FitOutcome, bridgeId?: string];

const clamp = (boreMm: number) => face('bar-clamp', { boreMm });
const bar = (diameterMm: number) => face('bar-centre', { diameterMm });
const tube = (boreMm: number, material?: string) =>
  face('seat-tube', { boreMm }, material ? { traits: { material } } : {});
const post = (diameterMm: number) => face('post', { diameterMm });
const slot = (widthMm: number, traits: Record<string, string> = {}) =>
  face('axle-slot', { widthMm }, { traits });
const axle = (diameterMm: number, traits: Record<string, string> = {}) =>
  face('axle', { diameterMm }, { traits });
const ends = (spacingMm: number, traits: Record<string, string> = {}) =>
  face('end-spacing', { spacingMm }, { traits });
const hub = (spacingMm: number) => face('hub-spacing', { spacingMm });
const chain = (chainWidthMm: number) => face('chain', { chainWidthMm });
const teeth = (chainWidthMm: number) => face('ring-teeth', { teethCount: 36, chainWidthMm });
const is = (end: string) => named('disc-mount', 'is', { traits: { end } });
const caliperOver = (standard: string, rotorMm: number) =>
  named('caliper-mount', standard, { nominal: { rotorMm } });
const postMount = (nativeRotorMm: number) => named('disc-mount', 'post', { nominal: { nativeRotorMm } });

const cap = (pulls: string) => face('steerer-cap', {}, { traits: { pulls } });
const steerer = (traits: Record<string, string>) => face('steerer', { diameterMm: 28.6 }, { traits });

const parts = 'bar and stem size articles (a parts maker; forum thread on 25.8 and 26.0)';
const isAdapters = 'Q&A on IS adapters: a front 180 adapter is a rear 160 adapter';

const rows: Row[] = [
  [
    'a fork allowed 160 takes no 180, whatever the adapter',
    named('disc-mount', 'is', { nominal: { largestRotorMm: 160 }, traits: { end: 'front' } }),
    caliperOver('post', 180),
    'does-not-fit',
  ],
  [
    'and takes its 160',
    named('disc-mount', 'is', { nominal: { largestRotorMm: 160 }, traits: { end: 'front' } }),
    caliperOver('post', 160),
    'fits-with',
    'is-post-160-160',
  ],
  [
    'no extender turns the hand of a pedal',
    named('pedal-hole', '9/16x20', { traits: { side: 'right' } }),
    named('pedal-spindle', '1/2x20', { traits: { side: 'left' } }),
    'does-not-fit',
  ],
  [
    'an extender of the right hand, end to end, if it must be',
    named('pedal-hole', '9/16x20', { traits: { side: 'right' } }),
    named('pedal-spindle', '1/2x20', { traits: { side: 'right' } }),
    'fits-with',
    'pedal-extender-9/16-1/2',
  ],
  [
    'five bolts on four',
    face('spider', { boltCircleMm: 104, boltsCount: 4 }),
    face('ring-mount', { boltCircleMm: 104, boltsCount: 5 }),
    'does-not-fit',
  ],
  [
    '110 on 104',
    face('spider', { boltCircleMm: 104, boltsCount: 4 }),
    face('ring-mount', { boltCircleMm: 110, boltsCount: 4 }),
    'does-not-fit',
  ],
  [
    'a 55 tyre where 50 has room',
    face('tyre-room', { widthMm: 50 }),
    face('tyre-bead', { widthMm: 55 }),
    'does-not-fit',
  ],
  [
    'a bearing of 41 in a threaded shell',
    named('shell', 'iso'),
    face('bb-cup', { diameterMm: 41 }),
    'does-not-fit',
  ],
  [
    'cups of 34.8 in a threaded shell: which thread?',
    named('shell', 'iso'),
    face('bb-cup', { diameterMm: 34.8 }),
    'not-known',
  ],
  [
    'a shell 0.8 too wide is faced',
    face('shell', { widthMm: 68.8 }),
    face('bb-bore', { systemWidthMm: 86.5 }),
    'one-way-only',
    'one-way:face-shell',
  ],
  [
    'a press of 0.4: the tube can be reamed, for good',
    face('head-tube-lower', { boreMm: 30.1 }),
    face('headset-cup-lower', { diameterMm: 30.5 }),
    'one-way-only',
    'one-way:ream-bore',
  ],
  [
    'a press of 2 is another size altogether',
    face('head-tube-lower', { boreMm: 30.1 }),
    face('headset-cup-lower', { diameterMm: 32.1 }),
    'does-not-fit',
  ],
  ['20 mm of washers is not a wheel', ends(130), hub(110), 'does-not-fit'],
  [
    'a fork is not cold-set here',
    ends(100, { material: 'steel', end: 'front' }),
    hub(104),
    'one-way-only',
    'one-way:cut-hub',
  ],
  [
    '15 mm is more than cold-setting gives',
    ends(120, { material: 'steel', end: 'rear' }),
    hub(135),
    'one-way-only',
    'one-way:cut-hub',
  ],
  [
    '10 slots filed to 14: steel only, the last resort',
    slot(10, { material: 'steel', end: 'rear' }),
    axle(14),
    'one-way-only',
    'one-way:file-slot',
  ],
  [
    '8 slots filed to 14 leave nothing',
    slot(8, { material: 'steel', end: 'rear' }),
    axle(14),
    'does-not-fit',
  ],
  [
    'forum archive on axles: a 15 through hub in open 9 slots by its end caps',
    slot(9, { shape: 'open' }),
    axle(15, { type: 'through' }),
    'fits-with',
    'end-caps-15-9',
  ],
  [
    'forum archive on axles: not the reverse',
    slot(15, { shape: 'closed' }),
    axle(9, { type: 'hollow' }),
    'does-not-fit',
  ],
  [
    'seller’s article on saddle rails: 7 × 9 rails in a clamp for 7',
    named('post-head', 'two-rail', { nominal: { railMm: 7, railHeightMm: 7 } }),
    named('saddle-mount', 'two-rail', { nominal: { railHeightMm: 9 } }),
    'does-not-fit',
  ],
  [
    'named oval against round',
    named('post-head', 'two-rail'),
    named('saddle-mount', 'two-rail-oval'),
    'does-not-fit',
  ],
  [
    'page of a frame maker: never a star nut in carbon',
    cap('star-nut'),
    steerer({ material: 'carbon', inside: 'plain' }),
    'does-not-fit',
  ],
  [
    'a star nut in a plain steel steerer',
    cap('star-nut'),
    steerer({ material: 'steel', inside: 'plain' }),
    'fits',
  ],
  [
    'a star nut in a steerer threaded inside',
    cap('star-nut'),
    steerer({ material: 'steel', inside: 'threaded' }),
    'does-not-fit',
  ],
  [
    'a screw-in cap on a plain steerer',
    cap('thread'),
    steerer({ material: 'steel', inside: 'plain' }),
    'does-not-fit',
  ],
  [
    'a screw-in cap in its own thread',
    cap('thread'),
    steerer({ material: 'steel', inside: 'threaded' }),
    'fits',
  ],
  ['an expander in carbon', cap('expander'), steerer({ material: 'carbon' }), 'fits'],
  ['the inside was not looked at', cap('star-nut'), steerer({ material: 'steel' }), 'not-known'],
  [
    'quill article: 22.2 in a 1 in steerer',
    face('steerer-inside', { boreMm: 22.2 }),
    face('quill', { diameterMm: 22.2 }),
    'fits',
  ],
  [
    '22.2 in an old French steerer of 22.0',
    face('steerer-inside', { boreMm: 22 }),
    face('quill', { diameterMm: 22.2 }),
    'does-not-fit',
  ],
  ['inch and metric names of one size: 31.75 is 31.8', clamp(31.8), bar(31.75), 'fits'],
  ['7/8 in is 22.225', clamp(22.2), bar(22.225), 'fits'],
  [`${parts}: 25.8 and 26.0 share clamps`, clamp(25.8), bar(26), 'fits'],
  [`${parts}: and the other way`, clamp(26), bar(25.8), 'fits'],
  [`${parts}: never 26.0 in 25.4`, clamp(25.4), bar(26), 'does-not-fit'],
  [`${parts}: 25.4 in 26.0 with a shim`, clamp(26), bar(25.4), 'fits-with', 'bar-shim-26-25.4'],
  [
    'forum of old bicycles quoting an encyclopaedia: shim 31.8 to 25.4',
    clamp(31.8),
    bar(25.4),
    'fits-with',
    'bar-shim-31.8-25.4',
  ],
  [
    'forum of old bicycles quoting an encyclopaedia: shim 31.8 to 26.0',
    clamp(31.8),
    bar(26),
    'fits-with',
    'bar-shim-31.8-26',
  ],
  [
    'forum thread on stem shims: 1 in steerer in a 1-1/8 stem with a shim',
    face('steerer-clamp', { boreMm: 28.6 }),
    face('steerer', { diameterMm: 25.4 }),
    'fits-with',
    'steerer-shim-28.6-25.4',
  ],
  [
    'a 1-1/8 steerer in a 1 in stem: never',
    face('steerer-clamp', { boreMm: 25.4 }),
    face('steerer', { diameterMm: 28.6 }),
    'does-not-fit',
  ],
  [
    'seat post article: shims go from big to small only',
    tube(30.9),
    post(27.2),
    'fits-with',
    'seatpost-shim-30.9-27.2',
  ],
  ['seat post article: a thicker post never', tube(27.2), post(30.9), 'does-not-fit'],
  [
    'one step of 0.2 can be reamed, and never undone',
    tube(27.2, 'steel'),
    post(27.4),
    'one-way-only',
    'one-way:ream-bore',
  ],
  ['carbon is not reamed', tube(27.2, 'carbon'), post(27.4), 'does-not-fit'],
  [
    'blog on a 14 mm slot frame: 10 axle in 14 slots with bushes',
    slot(14),
    axle(10),
    'fits-with',
    'axle-bush-14-10',
  ],
  ['3/8 in (9.525) in a 10 slot', slot(10), axle(9.525), 'fits'],
  [
    '10 axle in a 9.6 slot: a few strokes of the file',
    slot(9.6, { material: 'steel', end: 'rear' }),
    axle(10),
    'one-way-only',
    'one-way:file-slot',
  ],
  ['the same on a fork: no', slot(9.6, { material: 'steel', end: 'front' }), axle(10), 'does-not-fit'],
  ['the same on aluminium: no', slot(9.6, { material: 'aluminium', end: 'rear' }), axle(10), 'does-not-fit'],
  ['a nutted hub in closed ends', slot(12, { shape: 'closed' }), axle(12, { type: 'solid' }), 'does-not-fit'],
  [
    'hub column on frame ends: 108 hubs in 110 frames, a washer on each side',
    ends(110),
    hub(108),
    'fits-with',
    'axle-washer:1+1x1',
  ],
  ['109 in 110 by hand', ends(110), hub(109), 'fits'],
  [
    '126 steel set to 130',
    ends(126, { material: 'steel', end: 'rear' }),
    hub(130),
    'one-way-only',
    'one-way:cold-set',
  ],
  [
    '126 aluminium to 130: only the hub can give',
    ends(126, { material: 'aluminium' }),
    hub(130),
    'one-way-only',
    'one-way:cut-hub',
  ],
  ['wiki book’s page on chain sizes: 1/8 chain on 3/32 teeth works', chain(3.175), teeth(2.38), 'fits'],
  [
    'wiki book’s page on chain sizes: 3/32 chain on 1/8 teeth does not',
    chain(2.38),
    teeth(3.175),
    'does-not-fit',
  ],
  [
    'article on the compatibility of chains: one for more speeds runs on teeth for fewer, 2.18 on 2.38',
    chain(2.18),
    teeth(2.38),
    'fits',
  ],
  ['the same by name', named('chain', 'chain-11/128'), named('ring-teeth', 'chain-3/32'), 'fits'],
  ['and not on 1/8 teeth', named('chain', 'chain-11/128'), named('ring-teeth', 'chain-1/8'), 'does-not-fit'],
  [
    'catalogue of half-inch chains: 08B rolls on 8.51 mm',
    named('chain', 'chain-08b'),
    teeth(2.38),
    'does-not-fit',
  ],
  ['the same chain, only measured', chain(7.75), teeth(2.38), 'does-not-fit'],
  [
    'chains by name: 1/8 on 3/32 teeth',
    named('chain', 'chain-1/8'),
    named('ring-teeth', 'chain-3/32'),
    'fits',
  ],
  [
    'chains by name: 3/32 on 1/8 teeth',
    named('chain', 'chain-3/32'),
    named('ring-teeth', 'chain-1/8'),
    'does-not-fit',
  ],
  [isAdapters, is('front'), caliperOver('post', 180), 'fits-with', 'is-post-160-180'],
  [isAdapters, is('rear'), caliperOver('post', 160), 'fits-with', 'is-post-140-160'],
  [
    'article on post mounts: posts for 180 take no 160 rotor',
    postMount(180),
    caliperOver('post', 160),
    'does-not-fit',
  ],
  [
    'posts for 160 and a 203 rotor: the 43 step',
    postMount(160),
    caliperOver('post', 203),
    'fits-with',
    'post-post-160-203',
  ],
  ['a 74 post caliper on posts of its rotor', postMount(160), caliperOver('post', 160), 'fits'],
  [
    'rider’s page comparing rotor mounts: six-bolt rotor on a centre-lock hub by adapter',
    named('rotor-seat', 'centre-lock'),
    named('rotor-mount', 'six-bolt'),
    'fits-with',
    'rotor-six-bolt-on-centre-lock',
  ],
  [
    'from memory: not the other way',
    named('rotor-seat', 'six-bolt'),
    named('rotor-mount', 'centre-lock'),
    'does-not-fit',
  ],
  [
    'workshop write-up: ISO cups in an American shell by plates',
    named('shell', 'american'),
    named('bb-cup', 'iso'),
    'fits-with',
    'shell-american-iso',
  ],
  [
    'write-up of one conversion: ISO cups in a Mid shell by a sleeve',
    named('shell', 'mid'),
    named('bb-cup', 'iso'),
    'fits-with',
    'shell-mid-iso',
  ],
  [
    'workshop article on conversion sleeves: ISO cups in a BB30 shell by a bonded sleeve, for good',
    named('shell', 'bb30'),
    named('bb-cup', 'iso'),
    'one-way-only',
    'shell-bb30-iso',
  ],
  ['a 41.0 press cup in a Mid bore', named('shell', 'mid'), named('bb-cup', 'pf41'), 'does-not-fit'],
  ['a Mid bearing in a 41.0 press shell', named('shell', 'pf41'), named('bb-cup', 'mid'), 'does-not-fit'],
  ['Italian cups in an ISO shell', named('shell', 'iso'), named('bb-cup', 'italian'), 'does-not-fit'],
  [
    'shop’s page on headsets: integrated bearings of 41 and 42 are not exchanged',
    named('head-tube-lower', 'IS42/28.6'),
    named('headset-cup-lower', 'IS41/28.6'),
    'does-not-fit',
  ],
  [
    'page of a BMX shop: a race machined on the fork wants an integrated headset',
    named('crown-race', 'EC34/28.6'),
    face('crown-seat', { diameterMm: 30 }, { traits: { race: 'machined-45' } }),
    'does-not-fit',
  ],
  [
    'of the angle of its bearing',
    named('crown-race', 'IS42/28.6'),
    face('crown-seat', { diameterMm: 30 }, { traits: { race: 'machined-45' } }),
    'fits',
  ],
  [
    'a JIS fork in an ISO race: file the seat',
    face('crown-race', { boreMm: 26.4 }),
    face('crown-seat', { diameterMm: 27 }),
    'one-way-only',
    'one-way:file-seat',
  ],
  [
    'a left pedal in a right crank',
    named('pedal-hole', '9/16x20', { traits: { side: 'right' } }),
    named('pedal-spindle', '9/16x20', { traits: { side: 'left' } }),
    'does-not-fit',
  ],
  [
    'a 9/16 pedal in a 1/2 crank',
    named('pedal-hole', '1/2x20'),
    named('pedal-spindle', '9/16x20'),
    'does-not-fit',
  ],
  [
    'freewheel page: 30 × 1 never on 1.375',
    named('driver-mount', '1.375x24'),
    named('sprocket-mount', '30x1'),
    'does-not-fit',
  ],
  [
    'freewheel page: 1.375 and 1.370 are neighbours',
    named('driver-mount', '1.375x24'),
    named('sprocket-mount', '1.370x24'),
    'not-known',
  ],
  ['JIS crank on ISO square', named('taper-hole', 'jis-taper'), named('taper', 'iso-taper'), 'fits'],
  [
    'ISO 5775 page: 26 in decimal and fractional are two sizes',
    face('rim-seat', { beadSeatMm: 559 }),
    face('tyre-bead', { beadSeatMm: 584, widthMm: 38 }),
    'does-not-fit',
  ],
  [
    'rider’s page on saddle mounts: a pivotal saddle wants its own post',
    named('post-head', 'two-rail'),
    named('saddle-mount', 'pivotal'),
    'does-not-fit',
  ],
  [
    'a rail clamp on a plain 7/8 post',
    named('post-head', 'plain-7/8'),
    named('saddle-mount', 'two-rail'),
    'fits-with',
    'rail-clamp-plain-7/8',
  ],
  [
    'three 2.5 spacers on 68, from memory',
    face('shell', { widthMm: 68 }),
    face('bb-bore', { systemWidthMm: 91.5 }),
    'fits-with',
    'cup-spacer:2+1x2.5',
  ],
  [
    'one 2.5 spacer on 73, from memory',
    face('shell', { widthMm: 73 }),
    face('bb-bore', { systemWidthMm: 91.5 }),
    'fits-with',
    'cup-spacer:1+0x2.5',
  ],
  [
    'the same crank by the width measured over its bearings',
    face('shell', { widthMm: 73 }),
    face('bb-bore', { systemWidthMm: 94 }),
    'fits-with',
    'cup-spacer:1+0x2.5',
  ],
  ['none on 68 for 86.5', face('shell', { widthMm: 68 }), face('bb-bore', { systemWidthMm: 86.5 }), 'fits'],
  [
    'a 73 shell is too wide for 86.5',
    face('shell', { widthMm: 73 }),
    face('bb-bore', { systemWidthMm: 86.5 }),
    'does-not-fit',
  ],
  [
    'shop’s guide to BMX bottom brackets: a 24 spindle does not go into a 22 bearing',
    face('bb-bore', { boreMm: 22 }),
    face('spindle', { diameterMm: 24 }),
    'does-not-fit',
  ],
  [
    'a 19 spindle in a 22 bearing by a sleeve of 1.5',
    face('bb-bore', { boreMm: 22 }),
    face('spindle', { diameterMm: 19 }),
    'fits-with',
    'spindle-sleeve-22-19',
  ],
  [
    'valve pages: 6 mm valve in an 8.3 hole wants a sleeve',
    face('valve-hole', { diameterMm: 8.3 }),
    face('valve-stem', { diameterMm: 6 }),
    'fits-with',
    'valve-sleeve-8-6.4',
  ],
  [
    'valve pages: 6 mm valve in a 6.4 hole',
    face('valve-hole', { diameterMm: 6.4 }),
    face('valve-stem', { diameterMm: 6 }),
    'fits',
  ],
  [
    'valve pages: an 8 mm valve in a 6.4 hole is refused',
    face('valve-hole', { diameterMm: 6.4 }),
    face('valve-stem', { diameterMm: 8 }),
    'does-not-fit',
  ],
];

test.each(rows)('%s', (...[, one, other, outcome, bridgeId]: Row) => {
  for (const verdict of [mates(one, other), mates(other, one)]) {
    expect(verdict?.outcome).toBe(outcome);
    expect(verdict?.bridges[0]?.bridgeId).toBe(bridgeId);
  }
});

test('a head tube and a saddle never meet', () => {
  expect(mates(named('head-tube-upper', 'EC30/25.4'), named('saddle-mount', 'two-rail'))).toBeUndefined();
});

const rim = (innerWidthMm: number, bead = 'hooked') =>
  face('rim-seat', { beadSeatMm: 622, innerWidthMm }, { traits: { bead } });
const tyre = (widthMm: number, tubeless = 'yes') =>
  face('tyre-bead', { beadSeatMm: 622, widthMm }, { traits: { tubeless } });
const etrto = 'German cycling FAQ, table as of 2006';

test.each([
  [`${etrto}: 28 on 19`, rim(19), tyre(28), 'fits', 0],
  [`${etrto}: 25 on 19 is outside`, rim(19), tyre(25), 'not-known', 0],
  [`${etrto}: 50 on 17 is inside, but more than twice the rim`, rim(17), tyre(50), 'fits', 1],
  [`${etrto}: 35 on 25 is outside`, rim(25), tyre(35), 'not-known', 0],
  ["tyre seller's article: 38 on 17 to 27, later than 2006", rim(25), tyre(38), 'fits', 0],
  ['straight walls and a tyre not marked for them', rim(23, 'straight'), tyre(47, 'no'), 'does-not-fit', 0],
  ['magazine: 28 on 25 straight walls; 29 is the least', rim(25, 'straight'), tyre(28), 'does-not-fit', 0],
] as const)('%s', (_, one, other, outcome, notes) => {
  const verdict = mates(one, other);
  expect(verdict?.outcome).toBe(outcome);
  expect(verdict?.notes.length).toBe(notes);
});

describe('measured beats printed, within the band of the caliper', () => {
  const measuredBar = (value: number, uncertaintyMm?: number) =>
    face('bar-centre', { diameterMm: 31.8 }, { measured: { diameterMm: caliper(value, uncertaintyMm) } });

  test('a measurement that agrees confirms the printed size', () => {
    expect(mates(clamp(31.8), measuredBar(31.76))?.outcome).toBe('fits');
  });

  test('a bar printed 31.8 that measures 26.0 is a 26.0 bar', () => {
    const verdict = mates(clamp(31.8), measuredBar(26));
    expect(verdict?.bridges[0]?.bridgeId).toBe('bar-shim-31.8-26');
  });

  test('a size on the limit is not known, and asks for the same place again', () => {
    const verdict = mates(clamp(31.8), measuredBar(31.9));
    expect(verdict?.outcome).toBe('not-known');
    expect(verdict?.asks.map(({ kind, key }) => [kind, key])).toEqual([['bar-centre', 'diameterMm']]);
    expect(mates(clamp(31.8), measuredBar(31.89, 0.005))?.outcome).toBe('fits');
  });

  test('inches are read as inches', () => {
    const inch = face(
      'bar-centre',
      {},
      {
        measured: { diameterMm: { value: 1, unit: '[in_i]', typed: '1 in', uncertaintyMm: 0.05 } },
      },
    );
    expect(mates(clamp(25.4), inch)?.gapMm?.mid).toBeCloseTo(0, 9);
  });

  test('a finer caliper never turns a settled answer round', () => {
    const near = fc.double({ min: -0.4, max: 0.4, noNaN: true });
    const spread = fc.double({ min: 0.005, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(near, spread, (offMm, uncertaintyMm) => {
        const at = (half: number) =>
          mates(
            clamp(31.8),
            face('bar-centre', {}, { measured: { diameterMm: caliper(31.8 + offMm, half) } }),
          )?.outcome;
        const coarse = at(uncertaintyMm);
        if (coarse !== 'not-known') expect(at(uncertaintyMm / 2)).toBe(coarse);
      }),
    );
  });

  test('nothing known: asked for what is missing', () => {
    const verdict = mates(face('bar-clamp'), bar(31.8));
    expect(verdict?.outcome).toBe('not-known');
    expect(verdict?.asks[0]?.how).toContain('Face plate on');
  });

  test('a table size from memory is used, and said to be so', () => {
    const verdict = mates(named('axle-slot', 'axle-14'), named('axle', 'axle-14'));
    expect(verdict?.notes[0]).toContain('unverified');
  });

  test('a plain shell and a bearing, both measured to hundredths', () => {
    const bore = (value: number) => face('shell', {}, { measured: { boreMm: caliper(value, 0.01) } });
    const bearing = (value: number) => face('bb-cup', {}, { measured: { diameterMm: caliper(value, 0.01) } });
    expect(mates(bore(41.2), bearing(41.275))?.outcome).toBe('fits');
    expect(mates(bore(41.2), bearing(41))?.outcome).toBe('does-not-fit');
    expect(mates(bore(41), bearing(41.275))?.outcome).toBe('does-not-fit');
    expect(mates(bore(41.2), bearing(41.2))?.outcome).toBe('not-known');
  });
});

test('a slot is never filed for a through axle: end caps or nothing', () => {
  const steel = slot(10, { material: 'steel', end: 'rear' });
  const ways = mates(steel, axle(12, { type: 'through' }))?.bridges.map(({ bridgeId }) => bridgeId);
  expect(ways).toEqual(['end-caps-12-10']);
});

import { describe, expect, test } from 'vitest';
import type { Band } from '../../../../src/mechanics/band.ts';
import type { JointFacts } from '../../../../src/workings/joint/jointFacts.ts';
import { jointWorkings } from '../../../../src/workings/joint/jointWorkings.ts';
import {
  asksOf,
  bandText,
  lackText,
  missing,
  plainly,
  weakest,
} from '../../../../src/workings/joint/line.ts';
import { barInStem, joint, NOW } from './facts.ts';

const DAY = 86_400_000;
const line = (facts: JointFacts, id: string) => jointWorkings(facts).find((each) => each.id === id);
/** The band of a line that was computed. */
function bandOf(facts: JointFacts, id: string): Band {
  const working = line(facts, id)?.working;
  if (!working || typeof working.result === 'number') throw new Error(`no band for ${id}`);
  return working.result;
}
const screwed = (change: Partial<JointFacts['screws'][number]>) =>
  joint({ screws: [{ thread: 'M5', count: 4, screw: 'steel', ...change }] });

describe('the lines of a joint', () => {
  test('come in the order a hand needs them', () => {
    expect(jointWorkings(barInStem).map(({ id }) => id)).toEqual([
      'target',
      'wrench',
      'preload',
      'proof',
      'slip',
      'rider',
      'margin',
      'settling',
      'published',
    ]);
  });

  test('name what is missing once, with where to measure it', () => {
    const bare = joint({
      ...{ screws: [{ thread: 'M5', count: 4, screw: 'steel' }], onThread: undefined, clamp: undefined },
      ...{ tubeMm: undefined, boreMm: undefined, bar: undefined, tool: undefined },
    });
    const asks = asksOf(jointWorkings(bare));
    expect(asks.map(({ key }) => key)).toEqual([
      'tool',
      'on-thread',
      'property-class',
      'clamp',
      'tube',
      'grip',
    ]);
    for (const { what, whereToMeasure } of asks) {
      expect(what).toMatch(/\S/);
      expect(whereToMeasure).toMatch(/\S/);
    }
  });

  test('a joint without screws has no line of screws', () => {
    expect(jointWorkings(joint({ kind: 'chain', screws: [], target: undefined }))).toEqual([]);
  });
});

describe('preload', () => {
  // Short form with K 0.2 in the middle: 5 N·m on M5 raise 5 kN; published pairs of torque and preload use it.
  test('5 N·m on dry M5 raise about 5 kN', () => {
    const { mid, lo, hi } = bandOf(barInStem, 'preload');
    expect(mid).toBeCloseTo(5000, 6);
    expect(lo).toBeLessThan(4000);
    expect(hi).toBeGreaterThan(5500);
  });

  // ISO 898-1 proof load table, public copy: M5 in 8.8 carries 8230 N.
  test('the share of the proof load is that of ISO 898-1 (M5, 8.8: 8230 N)', () => {
    const proof = line(barInStem, 'proof');
    expect(bandOf(barInStem, 'proof').mid).toBeCloseTo(5000 / 8230, 2);
    expect(proof?.verdict?.word).toBe('Ordinary');
  });

  test.each([
    ['an aluminium screw', screwed({ screw: 'aluminium' }), /aluminium screws/],
    ['a titanium screw', screwed({ screw: 'titanium' }), /titanium screws/],
    [
      'dry stainless in stainless',
      screwed({ screw: 'stainless', female: 'stainless' }),
      /dry stainless in stainless/i,
    ],
    ['a screw of unknown make', screwed({ screw: undefined }), /Bolt material/],
    ['a thread in plastic', screwed({ female: 'plastic' }), /plastic creeps/],
    ['a thread of no table', screwed({ thread: 'own' }), /not in the table/],
    ['a cup', screwed({ thread: 'M36-24' }), /solid screws/],
  ])('%s is refused with the reason, in every line that would need it', (_name, facts, why) => {
    expect(line(facts, 'preload')?.text).toMatch(why);
    expect(line(facts, 'preload')?.working).toBeUndefined();
    expect(line(facts, 'slip')?.text).toMatch(why);
    expect(line(facts, 'proof')).toBeUndefined();
    expect(line(facts, 'settling')).toBeUndefined();
  });

  test('screws of two sizes are refused', () => {
    const two = joint({ screws: [...barInStem.screws, { thread: 'M6', count: 1, screw: 'steel' }] });
    expect(line(two, 'preload')?.text).toMatch(/several sizes/);
  });

  test('before anything was applied, the target stands in and says so', () => {
    expect(line(joint({ appliedNm: undefined }), 'preload')?.text).toMatch(/once the target is applied/);
    expect(line(joint({ appliedNm: undefined, target: undefined }), 'preload')?.missing?.[0]?.key).toBe(
      'torque',
    );
  });

  // ISO 898-1: 8.8 and above bear their mark. Unmarked steel was taken for 8.8 and stood green.
  test.each([
    ['steel', /4\.6 to 5\.8/],
    ['stainless', /A2-50/],
  ] as const)('a %s screw that was not identified is asked about and never green', (screw, classes) => {
    const one = screwed({ screw, female: 'aluminium', propertyClass: undefined });
    for (const appliedNm of [0.5, 1, 2, 3, 5]) {
      const proof = line({ ...one, appliedNm }, 'proof');
      expect(proof?.text).toMatch(classes);
      expect(proof?.verdict).toEqual({ tone: 'care', word: 'Grade on the head not known' });
      expect(proof?.missing?.map(({ key }) => key)).toEqual(['property-class']);
    }
  });

  // 5.8 carries 380 MPa × 14.2 mm² = 5.4 kN on M5 (ISO 898-1); 8 N·m raise 6 to 10 kN.
  test('one that was looked at and has no mark is red where even 5.8 is mostly beyond, and never green', () => {
    const none = screwed({ propertyClass: 'none' });
    expect(line({ ...none, appliedNm: 8 }, 'proof')?.verdict?.tone).toBe('stop');
    for (const appliedNm of [0.5, 1, 2, 3])
      expect(line({ ...none, appliedNm }, 'proof')?.verdict?.tone).toBe('care');
    expect(line(none, 'proof')?.missing).toBeUndefined();
  });

  // An everyday joint: it stood red as "perhaps beyond its proof load".
  test('5 N·m on a greased M5 of 8.8 is no stop, and says how much of the band is beyond', () => {
    const greased = { ...screwed({ propertyClass: '8.8' }), onThread: 'grease' as const };
    expect(line(greased, 'proof')?.verdict).toEqual({ tone: 'care', word: 'Partly beyond its proof load' });
    expect(line(greased, 'proof')?.text).toMatch(/; \d+ % of that band is beyond it/);
    expect(line({ ...greased, appliedNm: 12 }, 'proof')?.verdict?.tone).toBe('stop');
  });
});

describe('slip', () => {
  // Statics: two halves, four screws, ΣF = 4 F; c = 1 at the low end, the thinner face of equal friction slips first.
  test('the low end is µ·ΣF·d of the tube, not of the clamp round the shim', () => {
    const preload = bandOf(barInStem, 'preload');
    const slip = bandOf(barInStem, 'slip');
    expect(slip.lo).toBeCloseTo((0.12 * 4 * preload.lo * 26) / 1000, 6);
  });

  test('a bonded shim carries the tube out to the diameter of the clamp', () => {
    const bonded = joint({ clamp: { construction: 'two-piece', shim: 'bonded' } });
    const at = (facts: JointFacts) => bandOf(facts, 'slip').mid;
    expect(at(bonded) / at(barInStem)).toBeCloseTo(31.8 / 26, 6);
  });

  test('a closed shim is given no figure', () => {
    const closed = joint({ clamp: { construction: 'two-piece', shim: 'closed' } });
    expect(line(closed, 'slip')?.working).toBeUndefined();
    expect(line(closed, 'slip')?.raises?.[0]).toMatch(/^Slit the shim/);
    expect(line(closed, 'margin')).toBeUndefined();
  });

  test('the same screws in one slit pull twice as hard as between two halves', () => {
    const slit = joint({ clamp: { construction: 'one-slit-flexible', shim: 'slit' } });
    const at = (facts: JointFacts) => bandOf(facts, 'slip').lo;
    expect(at(slit) / at(barInStem)).toBeCloseTo(2, 9);
  });

  // ISO 4210-5, industry copy: 80 N·m on a mountain bike's bar, 50 on its stem.
  test.each([
    ['bar-clamp' as const, 80],
    ['stem-steerer' as const, 50],
  ])('%s is held against the %d N·m of ISO 4210-5, hardest column', (kind, nm) => {
    const margin = line(joint({ kind, bar: undefined }), 'margin');
    expect(margin?.working?.inputs.find(({ name }) => name === 'Mdemand')?.value).toBe(nm);
  });

  test('a rider who pulls harder than the test is what counts', () => {
    const tall = joint({ bar: { riseMm: 250, reachMm: 0 } });
    expect(line(tall, 'rider')?.working?.result).toBe(100);
    expect(line(tall, 'margin')?.text).toMatch(/100 N·m/);
  });

  test('what would raise it stands strongest first, and more torque than marked is never advised', () => {
    const greasy = joint({ appliedNm: 4, clampFace: 'metal-greased' });
    const raises = line(greasy, 'margin')?.raises ?? [];
    const gains = raises.flatMap((words) => /: (\d+) % more/.exec(words)?.[1] ?? []).map(Number);
    expect(gains.length).toBeGreaterThan(2);
    expect(gains).toEqual(gains.toSorted((a, b) => b - a));
    expect(raises.at(-1)).toMatch(/never/);
  });

  test('a stiff clamp asks for its arms', () => {
    const stiff = joint({ clamp: { construction: 'one-slit-stiff' } });
    expect(line(stiff, 'slip')?.missing?.map(({ key }) => key)).toEqual(['clamp-arms']);
  });
});

// Bands of a kind were pooled: each of these stood green as "inside a printed band".
describe('printed elsewhere', () => {
  const published = (kind: JointFacts['kind'], nm: number, screw: Partial<JointFacts['screws'][number]>) =>
    line(joint({ kind, appliedNm: nm, screws: [{ thread: '', count: 1, ...screw }] }), 'published');

  test.each([
    [
      '15 on an M5 titanium bar clamp',
      'bar-clamp',
      15,
      { thread: 'M5', screw: 'titanium' },
      'Above the printed band',
    ],
    ['40 on six M5 rotor bolts', 'rotor', 40, { thread: 'M5' }, 'Above the printed band'],
    [
      '22 on a square taper',
      'crank',
      22,
      { thread: 'M8', variant: 'square taper or spline, M8' },
      'Below the printed band',
    ],
    [
      '5 on an M6 caliper',
      'caliper',
      5,
      { thread: 'M6', variant: 'disc brake on M6' },
      'Below the printed band',
    ],
  ] as const)('%s is not inside a band', (_what, kind, nm, screw, word) =>
    expect(published(kind, nm, screw)?.verdict).toEqual({ tone: 'care', word }),
  );

  test.each([
    [
      '12 on M6 of a disc brake',
      'caliper',
      12,
      { thread: 'M6', variant: 'disc brake on M6' },
      'one document',
    ],
    ['30 on 3/8 in nuts', 'rear-axle', 30, { thread: '3/8-26' }, 'two documents'],
  ] as const)('%s is, and it says how many documents print it', (_what, kind, nm, screw, word) => {
    expect(published(kind, nm, screw)?.verdict?.tone).toBe('good');
    expect(published(kind, nm, screw)?.verdict?.word).toContain(word);
  });

  test.each([
    ['a page without sources', 'bar-clamp', 5, { thread: 'M5' }, 'Inside a band that is advice only'],
    [
      'such a page for a through axle',
      'thru-axle',
      12,
      { thread: 'M12' },
      'Inside a band that is advice only',
    ],
    [
      'a band that names no thread',
      'crank-pinch',
      13,
      { thread: 'M6', variant: 'two bolts, in turns' },
      'names no thread',
    ],
    ['a titanium screw', 'rotor', 6, { thread: 'M5', screw: 'titanium' }, 'for steel screws'],
  ] as const)('%s never makes it green', (_what, kind, nm, screw, word) => {
    expect(published(kind, nm, screw)?.verdict?.tone).toBe('care');
    expect(published(kind, nm, screw)?.verdict?.word).toContain(word);
  });

  test.each([
    ['the make', 'caliper', { thread: 'M6' }, 'variant'],
    ['the thread', 'pedal', {}, 'thread'],
  ] as const)('without %s it asks and gives no verdict', (_what, kind, screw, key) => {
    expect(published(kind, 38, screw)?.verdict).toBeUndefined();
    expect(published(kind, 38, screw)?.missing?.map((ask) => ask.key)).toEqual([key]);
  });

  test('a thread of no band, and screws of several sizes, have no verdict', () => {
    expect(published('bar-clamp', 8, { thread: 'M10' })?.verdict).toBeUndefined();
    const two = joint({ screws: [...barInStem.screws, { thread: 'M6', count: 1 }] });
    expect(line(two, 'published')?.verdict).toBeUndefined();
    expect(line(joint({ kind: 'rotor', screws: [] }), 'published')?.missing?.[0]?.key).toBe('thread');
  });
});

describe('a part that was changed for good', () => {
  const filed = joint({ changed: ['Stem'], appliedNm: 4 });
  test.each(['target', 'wrench'])('the line of the %s names no torque', (id) => {
    expect(line(filed, id)?.text).toMatch(/no torque is offered/);
    expect(line(filed, id)?.text).not.toMatch(/N·m/);
    expect(line(filed, id)?.working).toBeUndefined();
  });
  test('no printed band and no marked torque is held out to it', () => {
    expect(line(filed, 'published')).toBeUndefined();
    expect(line(filed, 'margin')?.raises?.join()).not.toMatch(/bring it to the marked torque/i);
  });
});

describe('the wrench', () => {
  // Aircraft maintenance manuals: S = T·L/(L + E·cos θ).
  test('an extension of 15 at 45° on 100 mm turns 10 N·m into a setting of 9.04', () => {
    const facts = joint({
      target: { loNm: 10, hiNm: 10, source: 'printed on the part', byMaker: true, othersNm: [] },
      tool: { ...barInStem.tool, name: 'small', leverMm: 100 },
      extension: { lengthMm: 15, angleDeg: 45 },
    });
    expect(line(facts, 'wrench')?.working?.result).toBeCloseTo(9.041, 3);
  });

  test('an extension without the length to the hand asks for it', () => {
    const facts = joint({ extension: { lengthMm: 15, angleDeg: 45 } });
    expect(line(facts, 'wrench')?.missing?.map(({ key }) => key)).toEqual(['lever']);
  });

  test('an extension that reaches back to the hand is refused', () => {
    const back = { tool: { name: 'small', leverMm: 100 }, extension: { lengthMm: 100, angleDeg: 180 } };
    expect(line(joint(back), 'wrench')?.text).toMatch(/back to the hand/);
  });

  const tool = barInStem.tool ?? { name: '' };
  // ISO 6789 (from memory): promised from 20 % of full scale up; 12 months or 5000 cycles between checks.
  test.each([
    ['under a fifth', { ...tool, minNm: 2, maxNm: 60 }, /fifth/],
    ['below its scale', { ...tool, minNm: 10, maxNm: 60 }, /begins/],
    ['above its scale', { ...tool, minNm: 1, maxNm: 4 }, /More than its scale/],
    ['a check a year old', { ...tool, lastCheckMs: NOW - 400 * DAY }, /overdue/],
    ['5000 uses since', { ...tool, cyclesSinceCheck: 5000 }, /overdue/],
    ['never checked', { ...tool, lastCheckMs: undefined }, /never checked/],
    ['dropped', { ...tool, dropped: true }, /dropped/],
    ['found out', { ...tool, foundOut: true }, /out of calibration/],
    ['by hand', { name: 'hand', toolClass: 'by-hand' as const }, /By hand/],
  ])('%s is warned of', (_name, given, words) => {
    expect(line(joint({ tool: given }), 'wrench')?.warnings?.join(' ')).toMatch(words);
  });

  test('a sound tool on its scale has no warning', () => {
    expect(line(barInStem, 'wrench')).toMatchObject({
      text: '5 N·m on small wrench',
      verdict: { tone: 'good' },
    });
    expect(line(barInStem, 'wrench')?.warnings).toBeUndefined();
  });
});

describe('cure, settling, re-check, rotor', () => {
  const locker = { grade: 'medium', surface: 'steel', primer: false };
  test('a cure never asks for less than a day, and names the temperature it took', () => {
    const cure = line(joint({ kind: 'rotor', locker }), 'cure');
    expect(cure?.text).toMatch(/^Wait 24 h/);
    expect(cure?.text).toMatch(/20 °C taken/);
    expect(cure?.missing?.map(({ key }) => key)).toEqual(['temperature']);
    expect(line(joint({ locker: { ...locker, temperatureC: 2 } }), 'cure')?.text).toMatch(/under 5/);
    expect(line(joint({ lockerMeant: true }), 'cure')?.text).toMatch(/not applied yet/);
    expect(line(joint({ locker: { ...locker, grade: 'own mix' } }), 'cure')?.text).toMatch(/no table/);
  });

  test('a short grip with pieces between settles more, and is said to be looked at after the first ride', () => {
    const share = (facts: JointFacts) => {
      const inputs = line(facts, 'settling')?.working?.inputs ?? [];
      return bandOf(facts, 'settling').mid / (inputs.find(({ name }) => name === 'preload')?.value as number);
    };
    const long = joint({ screws: [{ ...barInStem.screws[0]!, gripMm: 40 }], piecesBetween: 0 });
    expect(share(barInStem)).toBeGreaterThan(share(long));
    expect(line(barInStem, 'settling')?.text).toMatch(/short and hardly stretches/);
    expect(line(barInStem, 'settling')?.text).toMatch(/after 1 ride or 10 km/);
    expect(
      line(joint({ screws: [{ thread: 'M5', count: 4, screw: 'steel' }] }), 'settling')?.missing?.[0]?.key,
    ).toBe('grip');
  });

  test.each([
    ['held', { way: 'tightening', outcome: 'held' }, 'OK'],
    ['settled', { way: 'tightening', outcome: 'moved', movedAtNm: 4.5 }, 'Settled'],
    ['loosened', { way: 'tightening', outcome: 'moved', movedAtNm: 3 }, 'Loosened'],
    ['failed', { way: 'tightening', outcome: 'turned' }, 'Failed'],
    ['mark in line', { way: 'mark', outcome: 'held' }, 'OK'],
    ['mark moved', { way: 'mark', outcome: 'turned' }, 'Failed'],
  ] as const)('a re-check that %s', (_name, found, word) => {
    expect(line(joint({ found }), 'recheck')?.verdict?.word).toMatch(word);
  });

  test('a re-check of a joint of unknown torque is not read', () => {
    const facts = joint({ appliedNm: undefined, found: { way: 'tightening', outcome: 'held' } });
    expect(line(facts, 'recheck')?.missing?.map(({ key }) => key)).toEqual(['applied']);
  });

  // Q&A on IS adapters: a front 180 adapter stands the caliper 10 mm further out than the bare 160 mount.
  // 25 km/h at 6 m/s², the most before a bicycle goes over its front wheel (press report on bicycle brake tests): 4.02 m.
  test('stands beside what bikes on sale stop in', () => {
    const line = jointWorkings(joint({ kind: 'caliper' })).find(({ id }) => id === 'stopping');
    expect(line?.text).toContain('within 6 to 7 m from 25 km/h');
    expect(line?.working?.result).toBeCloseTo(4.019, 3);
    expect(jointWorkings(joint({ kind: 'pedal' })).some(({ id }) => id === 'stopping')).toBe(false);
  });

  test('a rotor of 180 on a mount for 160 wants +20 and 10 mm of radius', () => {
    const facts = joint({ kind: 'brake-mount', rotorMm: 180, nativeRotorMm: 160 });
    expect(line(facts, 'rotor')?.working?.result).toBe(10);
    expect(line(facts, 'rotor')?.text).toMatch(/\+20/);
    expect(line(joint({ kind: 'caliper', rotorMm: 140, nativeRotorMm: 160 }), 'rotor')?.verdict?.tone).toBe(
      'stop',
    );
    expect(line(joint({ kind: 'caliper' }), 'rotor')).toBeUndefined();
  });
});

describe('words', () => {
  test('a band whose ends read alike is one figure', () => {
    expect(bandText({ lo: 3.5, mid: 5, hi: 6.5 }, plainly)).toBe('3.5 to 6.5');
    expect(bandText({ lo: 1.001, mid: 1.002, hi: 1.003 }, plainly)).toBe('1');
    expect(lackText([missing('tube')])).toBe('diameter of the tube');
    expect(weakest('seen', 'proposal', 'exact')).toBe('proposal');
  });
});

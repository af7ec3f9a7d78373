import { describe, expect, test } from 'vitest';
import { torqueNm } from '../../../../src/mechanics/units.ts';
import { jointKinds } from '../../../../src/standards/jointKinds.ts';
import { threadRow } from '../../../../src/standards/screws/threads.ts';
import {
  bandFor,
  bandsFor,
  bandsThatFit,
  placeIn,
  strengthOf,
  torqueBands,
} from '../../../../src/standards/screws/torqueBands.ts';

const rowOf = (joint: Parameters<typeof bandFor>[0], variant: string) =>
  bandsFor(joint).find((row) => row.variant === variant)!;

test('examples', () => {
  const [pedal] = bandsFor('pedal');
  expect(bandsFor('pedal').length).toBe(1);
  expect(strengthOf(pedal!)).toBe('B');
  expect(placeIn(pedal!, 38)).toEqual({ place: 'inside', strength: 'B' });
  expect(bandsThatFit('rotor', { thread: 'M5' }).length).toBe(1);
  expect(bandFor('rotor', { thread: 'M5' })).toMatchObject({ is: 'one', row: { variant: 'six bolts' } });
});

// The manuals print inch-pounds; our newton metres must be those, not a rounded conversion of them.
describe('bands printed in in·lbf', () => {
  test.each([
    ['bar-clamp', 'heavy stem, two bolts', 174, 260, 'bicycle manual 3667378 p. 77'],
    ['stem-steerer', 'older steel stem', 120, 144, 'bicycle manual 3667378 p. 77'],
    ['stem-quill', 'wedge bolt', 174, 260, 'bicycle manual 3667378 p. 77'],
    ['headset', 'threaded headset, locknut', 130, 150, 'bicycle manual 3667378 p. 77'],
    ['pedal', 'pedal in the crank', 307, 350, 'bicycle manual 3667378 p. 77'],
    ['front-axle', 'axle nuts', 180, 240, 'bicycle manual 771343 p. 36'],
    ['rear-axle', 'axle nuts, 3/8 in', 240, 300, 'bicycle manual, 7th edition p. 20'],
    ['seatpost', 'collar, carbon post', 65, 80, 'seatpost manual 2787556 p. 2'],
    ['saddle-rails', 'one bolt, 6 mm key', 150, 250, 'user guide of 2002 p. 24'],
    ['bottom-bracket', 'threaded cups', 300, 360, 'torque list, which misprints 300 in·lbf as 32.9 N·m'],
    ['rotor', 'six bolts', 45, 55, 'torque list of a bicycle house'],
    ['caliper', 'disc brake on M6', 100, 110, 'torque list of a bicycle house'],
    ['caliper', 'disc brake on M5', 60, 65, 'torque list of a bicycle house'],
    ['caliper', 'rim brake, one bolt in the fork', 53, 62, 'torque list of a bicycle house'],
  ] as const)('%s, %s: %d to %d (%s)', (joint, variant, lo, hi, _source) => {
    const [print] = rowOf(joint, variant).prints;
    expect(Math.abs(print!.loNm - torqueNm(lo, '[in_i].[lbf_av]'))).toBeLessThan(0.06);
    expect(Math.abs(print!.hiNm - torqueNm(hi, '[in_i].[lbf_av]'))).toBeLessThan(0.06);
  });
});

// Each stood as "inside a printed band" while the bands of a kind were pooled.
describe('a torque is judged by the band of its own thread and make', () => {
  test.each([
    ['15 on an M5 bar clamp', 'bar-clamp', { thread: 'M5' }, 15, 'above'],
    ['40 on six M5 rotor bolts', 'rotor', { thread: 'M5' }, 40, 'above'],
    ['22 on a square taper', 'crank', { thread: 'M8', variant: 'square taper or spline, M8' }, 22, 'below'],
    ['5 on an M6 caliper', 'caliper', { thread: 'M6', variant: 'disc brake on M6' }, 5, 'below'],
    ['a gap between two documents', 'chainring', { thread: 'M8', variant: 'steel bolts' }, 11.5, 'between'],
  ] as const)('%s', (_what, joint, question, nm, place) => {
    const match = bandFor(joint, question);
    expect(match.is === 'one' && placeIn(match.row, nm).place).toBe(place);
  });

  // A right torque of a through axle was "above every band" while its pinch bolts had the only one.
  test('12 on a through axle is inside, and only advised', () => {
    const match = bandFor('thru-axle', { thread: 'M12 × 1.5' });
    expect(match.is === 'one' && placeIn(match.row, 12)).toEqual({ place: 'inside', strength: 'C' });
  });
});

describe('what is not known is asked for', () => {
  test.each([
    ['the make, where two share a thread', 'bar-clamp', { thread: 'M8' }, 'variant'],
    ['the make, where nothing is known', 'rotor', {}, 'variant'],
    ['the make, where the thread is in no table', 'rotor', { thread: 'own' }, 'variant'],
    ['the make, where a pad and a brake share the kind', 'caliper', { thread: 'M6' }, 'variant'],
    ['the thread, where only the make is known', 'rotor', { variant: 'six bolts' }, 'thread'],
    ['the thread, where there is one make', 'pedal', {}, 'thread'],
  ] as const)('%s', (_what, joint, question, what) =>
    expect(bandFor(joint, question)).toMatchObject({ is: 'ask', what }),
  );

  test.each([
    ['a joint without bands', 'spokes', {}],
    ['a thread without one', 'bar-clamp', { thread: 'M10' }],
    ['a make on the thread of another', 'rotor', { thread: 'M5', variant: 'splined, lockring' }],
    ['screws of a material it is not for', 'chainring', { screw: 'steel', variant: 'aluminium bolts' }],
  ] as const)('nothing fits %s', (_what, joint, question) =>
    expect(bandFor(joint, question)).toEqual({ is: 'none' }),
  );

  test('the material of a chainring bolt tells its make', () =>
    expect(bandFor('chainring', { thread: 'M8', screw: 'aluminium' })).toMatchObject({
      is: 'one',
      row: { variant: 'aluminium bolts' },
    }));
});

test.each([0, -5, Number.NaN])('%d N·m is refused', (nm) => {
  expect(() => placeIn(rowOf('pedal', 'pedal in the crank'), nm)).toThrow('nm');
});

describe('how well a band is founded', () => {
  test('figures of one house are one origin, however many papers repeat them', () => {
    expect(strengthOf(rowOf('chainring', 'steel bolts'))).toBe('A');
    expect(strengthOf(rowOf('rear-axle', 'axle nuts, 3/8 in'))).toBe('A');
    expect(strengthOf(rowOf('seatpost', 'collar, metal post'))).toBe('B');
    expect(strengthOf(rowOf('bar-clamp', 'light face plate'))).toBe('C');
  });

  test('inside the figures of a page without sources alone, the grade is that page’s', () => {
    const disc = rowOf('caliper', 'disc brake on M6');
    expect(placeIn(disc, 7)).toEqual({ place: 'inside', strength: 'C' });
    expect(placeIn(disc, 12)).toEqual({ place: 'inside', strength: 'B' });
  });

  test('memory is no document, and no document is memory', () => {
    for (const { prints, variant } of torqueBands)
      for (const { origin } of prints) {
        if (origin.known === 'memory') expect(origin.document, variant).toBe(false);
        expect(/from memory/.test(origin.source), variant).toBe(origin.known === 'memory');
      }
  });
});

// Machine manual 1384811 p. 99: what a lightly oiled 12.9 screw takes, N·m. No band may ask more of its thread.
const mostOf12_9: Record<string, number> = { M5: 10, M6: 18, M8: 43, M10: 84 };
test.each(
  torqueBands.flatMap(({ joint, variant, threads, prints }) =>
    Array.isArray(threads)
      ? threads.flatMap((thread: string) =>
          prints
            .filter(({ origin }) => origin.document && mostOf12_9[thread])
            .map(({ hiNm }) => ({ joint, variant, thread, hiNm })),
        )
      : [],
  ),
)('$joint, $variant: $hiNm N·m is not beyond the strongest $thread', ({ thread, hiNm }) =>
  expect(hiNm).toBeLessThanOrEqual(mostOf12_9[thread]! * 1.03),
);

test('a joint names each of its makes once, for threads that exist', () => {
  const names = torqueBands.map((row) => `${row.joint}/${row.variant}`);
  expect(new Set(names).size).toBe(names.length);
  for (const { threads, prints, joint } of torqueBands) {
    expect(jointKinds.some(({ kind }) => kind === joint)).toBe(true);
    if (Array.isArray(threads)) for (const id of threads) expect(threadRow(id).id).toBe(id);
    for (const { loNm, hiNm } of prints) expect(hiNm).toBeGreaterThan(loNm);
  }
});

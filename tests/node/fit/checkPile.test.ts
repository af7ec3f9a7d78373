import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../src/fit/checkPile.ts';
import type { PilePart } from '../../../src/fit/pile.ts';
import { magpie } from '../../fixtures/magpie.ts';

const check = checkPile(magpie);
const short = check.findings.map(({ topic, outcome, faces, bridges }) => [
  topic,
  outcome,
  faces.map(({ partId }) => partId).join(' + '),
  bridges[0]?.bridgeId ?? null,
]);

describe('the invented pile of a track frame and what was in the boxes', () => {
  test('needs exactly these bridges, one one-way change, and one hub left out', () => {
    expect(short).toEqual([
      ['crank-width', 'fits-with', 'frame + bottom-bracket', 'cup-spacer:2+1x2.5'],
      ['hub-between-ends', 'one-way-only', 'frame + rear-hub', 'one-way:cold-set'],
      ['post-in-seat-tube', 'fits-with', 'frame + seatpost', 'seatpost-shim-27.2-25.4'],
      ['stem-on-steerer', 'fits-with', 'fork + stem', 'steerer-shim-28.6-25.4'],
      ['caliper-on-mount', 'fits-with', 'fork + caliper', 'is-post-160-180'],
      ['bar-in-stem', 'fits-with', 'stem + bar', 'bar-shim-31.8-26'],
      ['spokes-hub-rim', 'does-not-fit', 'front-hub-a + rim-front', null],
      ['valve-in-rim', 'fits-with', 'rim-front + valve-front', 'valve-sleeve-8-6.4'],
      ['valve-in-rim', 'fits-with', 'rim-rear + valve-rear', 'valve-sleeve-8-6.4'],
    ]);
  });

  test('leaves two things to be measured, and says with what', () => {
    expect(check.toMeasure.map(({ topic, asks }) => [topic, asks.map(({ key }) => key)])).toEqual([
      ['steerer-length', ['lengthMm', 'lengthMm', 'stackMm', 'stackMm', 'heightMm']],
      ['chainline', ['chainlineMm', 'toothCentreMm']],
    ]);
    for (const { asks } of check.toMeasure) for (const ask of asks) expect(ask.how).not.toBe('');
  });

  test('every finding carries a source and a stable id of its own', () => {
    const all = [...check.findings, ...check.fitting, ...check.toMeasure];
    expect(new Set(all.map(({ findingId }) => findingId)).size).toBe(all.length);
    for (const finding of all) expect(finding.source).not.toBe('');
    const again = checkPile([...magpie].reverse());
    expect(again.findings.map(({ findingId }) => findingId).sort()).toEqual(
      check.findings.map(({ findingId }) => findingId).sort(),
    );
  });
});

const without = (partId: string): PilePart[] => magpie.filter((part) => part.partId !== partId);
const changed = (partId: string, kind: string, nominal: Record<string, number>): PilePart[] =>
  magpie.map((part) =>
    part.partId !== partId
      ? part
      : {
          ...part,
          faces: part.faces.map((face) =>
            face.kind === kind ? { ...face, nominal: { ...face.nominal, ...nominal } } : face,
          ),
        },
  );
const outcomeOf = (parts: readonly PilePart[], topic: string) => {
  const { findings, fitting, toMeasure } = checkPile(parts);
  return [...findings, ...fitting, ...toMeasure].filter((finding) => finding.topic === topic);
};

describe('what follows from several parts together', () => {
  test('a shim in the pile is offered before one to buy', () => {
    const own: PilePart = {
      partId: 'own-shim',
      kind: 'shim',
      name: 'shim from the drawer',
      faces: [
        { faceId: 'in', kind: 'bar-clamp', standard: null, nominal: { boreMm: 26 }, measured: {} },
        { faceId: 'out', kind: 'bar-centre', standard: null, nominal: { diameterMm: 31.8 }, measured: {} },
      ],
    };
    const [bar] = outcomeOf([...magpie, own], 'bar-in-stem');
    expect(bar?.bridges.map(({ bridgeId }) => bridgeId)).toEqual(['part:own-shim', 'bar-shim-31.8-26']);
  });

  test('without a rotor the caliper still needs its adapter', () => {
    expect(outcomeOf(without('rotor'), 'caliper-on-mount')[0]?.outcome).toBe('fits-with');
  });

  test('chainline: front 42, rear 135/2 − 16.5 = 51 (worked example of a cycling forum) is too far', () => {
    const parts = changed('cranks', 'spider', { chainlineMm: 42 }).map((part) =>
      part.partId !== 'rear-hub'
        ? part
        : {
            ...part,
            faces: part.faces.map((face) =>
              face.kind === 'driver-mount'
                ? { ...face, nominal: { toothCentreMm: 16.5 } }
                : face.kind === 'hub-spacing'
                  ? { ...face, standard: 'rear-135' }
                  : face,
            ),
          },
    );
    const [line] = outcomeOf(parts, 'chainline');
    expect(line?.outcome).toBe('does-not-fit');
    expect(line?.because).toContain('the sprocket 51 mm: 9 mm apart, 1.26°');
  });

  test('steerer: a stack of 202.9 wants 199.9 (builder’s blog, worked example)', () => {
    const stack: readonly [string, string, Record<string, number>][] = [
      ['fork', 'steerer', { lengthMm: 200 }],
      ['frame', 'head-tube-upper', { lengthMm: 110.2 }],
      ['headset', 'headset-cup-upper', { stackMm: 16.5 }],
      ['headset', 'headset-cup-lower', { stackMm: 10.9 }],
      ['stem', 'steerer-clamp', { heightMm: 40 + 25.3 }],
    ];
    const withStack = (lengthMm: number): PilePart[] =>
      magpie.map((part) => ({
        ...part,
        faces: part.faces.map((face) => {
          const [, kind, nominal] = stack.find(([id, of]) => id === part.partId && of === face.kind) ?? [];
          if (!nominal) return face;
          return {
            ...face,
            nominal: { ...face.nominal, ...nominal, ...(kind === 'steerer' ? { lengthMm } : {}) },
          };
        }),
      }));
    expect(outcomeOf(withStack(200), 'steerer-length')[0]?.outcome).toBe('fits');
    expect(outcomeOf(withStack(200), 'steerer-length')[0]?.because).toContain('199.9 mm are needed');
    expect(outcomeOf(withStack(190), 'steerer-length')[0]?.outcome).toBe('does-not-fit');
    expect(outcomeOf(withStack(215), 'steerer-length')[0]?.notes[0]).toContain('15.1 mm of spacers');
  });

  test('a ring of 29 on 104 would run on its bolts (bolt circle pages: 32 is the least as a rule)', () => {
    const ringOf = (teethCount: number) =>
      outcomeOf(changed('chainring', 'ring-teeth', { teethCount }), 'ring-teeth')[0];
    expect(ringOf(29)?.outcome).toBe('does-not-fit');
    expect(ringOf(30)?.notes.join()).toMatch(/Unusual/);
  });

  test('no freewheel of 12 teeth on the 1.375 thread (freewheel threads page, rear hub guide)', () => {
    expect(
      outcomeOf(changed('sprocket', 'sprocket-teeth', { teethCount: 12 }), 'sprocket-teeth')[0]?.outcome,
    ).toBe('does-not-fit');
  });

  test('a hub cut from 135 to 120 with a rotor 7 mm from the end: off the left it meets the frame', () => {
    const parts = magpie.map((part) =>
      part.partId !== 'rear-hub'
        ? part
        : {
            ...part,
            faces: [
              ...part.faces.map((face) =>
                face.kind === 'hub-spacing' ? { ...face, standard: 'rear-135' } : face,
              ),
              {
                faceId: 'rotor-seat',
                kind: 'rotor-seat' as const,
                standard: 'six-bolt',
                nominal: { rotorGapMm: 7 },
                measured: {},
              },
            ],
          },
    );
    const [hub] = outcomeOf(parts, 'hub-between-ends').filter(({ outcome }) => outcome !== 'fits');
    expect(hub?.bridges.map(({ bridgeId }) => bridgeId)).toEqual(['one-way:cut-hub']);
    expect(hub?.notes[0]).toContain('At most 5 mm may come off the left end');
    expect(hub?.notes[1]).toContain('the rotor keeps 7 mm');
    expect(hub?.notes[2]).toContain('the rotor would hit the frame');
  });

  test('pressure: 40 psi (2.75 bar) rules a tyre not marked tubeless, below the printed 3.5 and 4.0', () => {
    const [front] = outcomeOf(magpie, 'pressure-ceiling');
    expect(front?.because).toContain('At most 2.75 bar');
    const printedNothing = magpie.map((part) => ({
      ...part,
      faces: part.faces.map((face) => {
        const { maxPressureBar: _, ...nominal } = face.nominal;
        return { ...face, nominal };
      }),
    }));
    expect(outcomeOf(printedNothing, 'pressure-ceiling')[0]?.outcome).toBe('not-known');
  });

  test('a rim that was not measured leaves the tyre width open', () => {
    const parts = magpie.map((part) => ({
      ...part,
      faces: part.faces.map((face) => {
        const { innerWidthMm: _, ...nominal } = face.nominal;
        return { ...face, nominal };
      }),
    }));
    expect(outcomeOf(parts, 'tyre-on-rim')[0]).toMatchObject({
      outcome: 'not-known',
      asks: [{ kind: 'rim-seat', key: 'innerWidthMm' }],
    });
  });

  test('a rear disc on a sliding axle is said to need a look after each change of the chain', () => {
    const rear: PilePart[] = [
      ...magpie.map((part) =>
        part.partId === 'frame'
          ? {
              ...part,
              faces: [
                ...part.faces,
                { faceId: 'disc', kind: 'disc-mount' as const, standard: 'is', nominal: {}, measured: {} },
              ],
            }
          : part,
      ),
      {
        partId: 'rear-caliper',
        kind: 'caliper',
        name: 'rear caliper',
        position: 'rear',
        faces: [{ faceId: 'mount', kind: 'caliper-mount', standard: 'is', nominal: {}, measured: {} }],
      },
    ];
    expect(outcomeOf(rear, 'disc-on-sliding-axle')[0]?.because).toContain('slides 22 mm');
    expect(outcomeOf(magpie, 'disc-on-sliding-axle')).toEqual([]);
  });

  // Worked slot of the chain pages: 383 to 396 behind the spindle takes 88 links of 36/15, and 87 with a half-link.
  test.each([
    [383, 396, 'fits', '88 links', undefined],
    [386, 392, 'fits-with', '87 with a half-link', 'half-link'],
    [384, 387, 'one-way-only', 'No number of links', 'one-way:file-slot'],
    [398, 420, 'fits', '90 links', undefined],
  ])('regression: a slot from %f to %f: %s', (nearestMm, farthestMm, outcome, words, bridgeId) => {
    const [length] = outcomeOf(changed('frame', 'axle-slot', { nearestMm, farthestMm }), 'chain-length');
    expect(length?.outcome).toBe(outcome);
    expect(length?.because).toContain(words);
    expect(length?.bridges[0]?.bridgeId).toBe(bridgeId);
  });

  test('a chain of 80 links is too short for 90', () => {
    const [length] = outcomeOf(changed('chain', 'chain', { pitchesCount: 80 }), 'chain-length');
    expect(length?.outcome).toBe('does-not-fit');
  });

  test('twins are refused', () => {
    const [frame] = magpie;
    if (!frame) throw new Error('the pile is empty');
    expect(() => checkPile([frame, frame])).toThrow(RangeError);
  });
});

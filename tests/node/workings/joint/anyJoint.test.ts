import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type JointKind, jointKinds } from '../../../../src/standards/jointKinds.ts';
import { cureGrid } from '../../../../src/standards/screws/cureGrid.ts';
import { lockers } from '../../../../src/standards/screws/lockers.ts';
import { propertyClasses } from '../../../../src/standards/screws/propertyClasses.ts';
import { threads } from '../../../../src/standards/screws/threads.ts';
import { toolClasses } from '../../../../src/standards/screws/toolClasses.ts';
import type { JointFacts } from '../../../../src/workings/joint/jointFacts.ts';
import { jointWorkings } from '../../../../src/workings/joint/jointWorkings.ts';
import { NOW } from './facts.ts';

const DAY = 86_400_000;
const size = (max: number) => fc.option(fc.double({ min: 0.5, max, noNaN: true }), { nil: undefined });
const some = <T>(...values: readonly T[]) => fc.constantFrom(...values);
const materials = ['steel', 'stainless', 'aluminium', 'titanium', 'unknown', undefined] as const;

const anyJoint: fc.Arbitrary<JointFacts> = fc.record({
  kind: some<JointKind>(...jointKinds.map(({ kind }) => kind)),
  screws: fc.array(
    fc.record({
      thread: some(...threads.map(({ id }) => id), 'own', ''),
      count: fc.integer({ min: 1, max: 72 }),
      screw: some(...materials),
      propertyClass: some(...propertyClasses.map(({ propertyClass }) => propertyClass), 'own', undefined),
      female: some(
        'steel' as const,
        'aluminium' as const,
        'plastic' as const,
        'cast-iron' as const,
        undefined,
      ),
      gripMm: size(200),
    }),
    { maxLength: 2 },
  ),
  changed: some<string[]>([], ['Frame']),
  target: fc.option(
    fc
      .tuple(fc.double({ min: 0.01, max: 400, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true }))
      .map(([loNm, more]) => ({
        loNm,
        hiNm: loNm + more,
        source: 'own',
        byMaker: more > 3,
        othersNm: [loNm],
      })),
    { nil: undefined },
  ),
  appliedNm: size(400),
  onThread: some('none' as const, 'grease' as const, 'threadlocker-wet' as const, undefined),
  clampFace: some('metal-dry' as const, 'metal-greased' as const, 'carbon-dry' as const, undefined),
  clamp: fc.option(
    fc.record({
      construction: some('two-piece' as const, 'one-slit-flexible' as const, 'one-slit-stiff' as const),
      tubeArmMm: size(80),
      boltArmMm: size(80),
      shim: some('slit' as const, 'closed' as const, 'bonded' as const, undefined),
    }),
    { nil: undefined },
  ),
  tubeMm: size(60),
  boreMm: size(60),
  bar: fc.option(
    fc.record({
      riseMm: fc.double({ min: -400, max: 400, noNaN: true }),
      reachMm: fc.double({ min: -400, max: 400, noNaN: true }),
    }),
    { nil: undefined },
  ),
  piecesBetween: fc.integer({ min: 0, max: 5 }),
  softLayer: fc.boolean(),
  tool: fc.option(
    fc.record({
      name: some('w'),
      toolClass: some(...toolClasses.map(({ toolClass }) => toolClass), undefined),
      minNm: fc.option(fc.double({ min: 0, max: 300, noNaN: true }), { nil: undefined }),
      maxNm: fc.option(fc.double({ min: 0, max: 300, noNaN: true }), { nil: undefined }),
      tolerancePercent: fc.option(fc.double({ min: 0, max: 200, noNaN: true }), { nil: undefined }),
      lastCheckMs: fc.option(fc.integer({ min: 0, max: NOW + DAY }), { nil: undefined }),
      checkEveryDays: fc.option(fc.integer({ min: 0, max: 900 }), { nil: undefined }),
      cyclesSinceCheck: fc.option(fc.integer({ min: 0, max: 9000 }), { nil: undefined }),
      dropped: fc.boolean(),
      foundOut: fc.boolean(),
      leverMm: size(800),
    }),
    { nil: undefined },
  ),
  extension: fc.option(
    fc.record({
      lengthMm: fc.double({ min: 0.5, max: 800, noNaN: true }),
      angleDeg: fc.double({ min: -360, max: 360, noNaN: true }),
    }),
    { nil: undefined },
  ),
  locker: fc.option(
    fc.record({
      grade: some(...lockers.map(({ grade }) => grade as string), 'own'),
      surface: some(...Object.keys(cureGrid.surfaces), 'own'),
      primer: fc.boolean(),
      temperatureC: fc.option(fc.double({ min: -30, max: 60, noNaN: true }), { nil: undefined }),
    }),
    { nil: undefined },
  ),
  lockerMeant: fc.boolean(),
  found: fc.option(
    fc.record({
      way: some('tightening' as const, 'mark' as const),
      outcome: some('held' as const, 'moved' as const, 'turned' as const),
      movedAtNm: size(400),
    }),
    { nil: undefined },
  ),
  rotorMm: size(230),
  nativeRotorMm: size(230),
  nowMs: some(NOW),
});

const numbersOf = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : value && typeof value === 'object'
      ? Object.values(value).flatMap(numbersOf)
      : [];

test('no joint a person can write down gives a line with a number that is none (property)', () => {
  fc.assert(
    fc.property(anyJoint, (facts) => {
      const lines = jointWorkings(facts);
      for (const { text, working, warnings = [], raises = [] } of lines) {
        expect([text, ...warnings, ...raises].join()).not.toMatch(/NaN|undefined|Infinity|\[object/);
        expect(numbersOf([working?.result, working?.inputs]).every(Number.isFinite)).toBe(true);
      }
      expect(new Set(lines.map(({ id }) => id)).size).toBe(lines.length);
      // A changed part is never offered a torque.
      const offers = lines.filter(({ id }) => ['target', 'wrench', 'published'].includes(id));
      if (facts.changed.length > 0) expect(offers.map(({ text }) => text).join()).not.toMatch(/N·m/);
    }),
    { numRuns: 400 },
  );
});

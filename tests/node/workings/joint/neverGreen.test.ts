import { describe, expect, test } from 'vitest';
import { clampFriction } from '../../../../src/standards/screws/friction.ts';
import { nutFactorDefaults } from '../../../../src/standards/screws/nutFactors.ts';
import { propertyClassRow } from '../../../../src/standards/screws/propertyClasses.ts';
import { toolClasses } from '../../../../src/standards/screws/toolClasses.ts';
import type { JointFacts, ScrewFacts } from '../../../../src/workings/joint/jointFacts.ts';
import { jointWorkings } from '../../../../src/workings/joint/jointWorkings.ts';
import { barInStem, joint } from './facts.ts';

const line = (facts: JointFacts, id: string) => jointWorkings(facts).find((each) => each.id === id);
const [screw] = barInStem.screws as [ScrewFacts];
const screws = (...each: Partial<ScrewFacts>[]) =>
  joint({ screws: each.map((one) => ({ ...screw, count: 2, ...one })) });

// Two lines of screws of one thread: the first alone was judged, and the second took its green.
describe('a joint is as good as its least known screw', () => {
  test.each([
    ['was not looked at', { propertyClass: undefined }, 'Grade on the head not known'],
    ['has no mark', { propertyClass: 'none' }, 'No grade on it: its class is a guess'],
    ['is steel and marked as stainless', { propertyClass: 'A2-80' }, 'Grade and material disagree'],
  ])('one that %s is not green beside an 8.8', (_what, other, word) => {
    for (const facts of [screws({}, other), screws(other, {})])
      expect(line({ ...facts, appliedNm: 2 }, 'proof')?.verdict).toEqual({ tone: 'care', word });
  });

  test('of two classes the weaker counts, in either order', () => {
    const strong = { propertyClass: '12.9' };
    const weak = { propertyClass: '4.6' };
    const alone = line(screws(weak), 'proof')?.text;
    expect(line(screws(strong, weak), 'proof')?.text).toBe(alone);
    expect(line(screws(weak, strong), 'proof')?.text).toBe(alone);
    expect(line(screws(strong), 'proof')?.text).not.toBe(alone);
  });

  test.each([
    ['material', { screw: 'titanium' }],
    ['thread they go into', { female: 'plastic' }],
  ] as const)(
    'screws that differ in %s have no preload, no proof load and no printed band',
    (_what, other) => {
      for (const facts of [screws({}, other), screws(other, {})]) {
        expect(line(facts, 'preload')?.text).toMatch(/several kinds/);
        expect(line(facts, 'proof')).toBeUndefined();
        expect(line(facts, 'margin')).toBeUndefined();
        expect(line(facts, 'published')?.verdict).toBeUndefined();
      }
    },
  );

  test('screws of two makes are not compared with the band of the first', () => {
    const chosen = { thread: 'M6', variant: 'disc brake on M6', screw: 'steel' } as const;
    const facts = (other: Partial<ScrewFacts>) =>
      joint({
        kind: 'caliper',
        appliedNm: 12,
        screws: [chosen, { ...chosen, ...other }].map((one) => ({ ...one, count: 1 })),
      });
    expect(line(facts({}), 'published')?.verdict?.tone).toBe('good');
    expect(line(facts({ variant: 'pad of a brake on studs' }), 'published')?.verdict).toBeUndefined();
    expect(line(facts({ variant: undefined }), 'published')?.verdict).toBeUndefined();
  });

  test('the shortest grip settles most, and one that was not measured is asked for', () => {
    const share = (...gripMm: (number | undefined)[]) =>
      line(screws(...gripMm.map((one) => ({ gripMm: one }))), 'settling');
    expect(share(8, 40)?.text).toBe(share(8)?.text);
    expect(share(40, 8)?.text).toBe(share(8)?.text);
    expect(share(8, undefined)?.missing?.map(({ key }) => key)).toEqual(['grip']);
  });
});

// A mark of stainless on a screw written down as steel, or the other way: one of the two is wrong.
test.each([
  ['steel', 'A2-70'],
  ['stainless', '8.8'],
] as const)('a %s screw marked %s contradicts itself and is not green', (material, propertyClass) => {
  const proof = line(
    { ...screws({ screw: material, propertyClass, female: 'aluminium' }), appliedNm: 2.5 },
    'proof',
  );
  expect(proof?.verdict).toEqual({ tone: 'care', word: 'Grade and material disagree' });
  expect(proof?.missing?.map(({ key }) => key)).toEqual(['screw', 'property-class']);
});

const byMemory = 'figures no document prints';

describe('a figure that no document prints never makes a verdict green', () => {
  const care = (id: string, facts: JointFacts) => {
    expect(line(facts, id)?.verdict?.tone).toBe('care');
    expect(line(facts, id)?.verdict?.word).toContain(byMemory);
  };

  test('with printed figures throughout it is green', () => {
    expect(line(barInStem, 'proof')?.verdict).toEqual({ tone: 'good', word: 'Ordinary' });
    expect(
      line(joint({ bar: undefined, appliedNm: 11, onThread: 'oil', tubeMm: 31.8 }), 'margin')?.verdict?.tone,
    ).toBe('good');
    expect(line(barInStem, 'wrench')?.verdict?.tone).toBe('good');
  });

  test.each(
    nutFactorDefaults
      .filter(({ origins }) => origins === 0)
      .map((row) => [row.surface, row.lubricant] as const),
  )('the nut factor of %s with %s', (surface, lubricant) => {
    const material = surface === 'stainless' ? 'stainless' : 'steel';
    const facts = joint({
      screws: [
        {
          ...screw,
          screw: material,
          propertyClass: material === 'steel' ? '8.8' : 'A2-80',
          female: 'aluminium',
        },
      ],
      onThread: lubricant,
    });
    care('proof', { ...facts, appliedNm: 2.2 });
  });

  test('what is on the threads was not looked at', () =>
    care('proof', joint({ onThread: undefined, appliedNm: 2.5 })));
  test('no tool is named', () => care('proof', joint({ tool: undefined, appliedNm: 4 })));

  test.each(toolClasses.filter(({ origins }) => origins === 0).map(({ toolClass }) => toolClass))(
    'the class of a %s tool, unless its papers say what it holds',
    (toolClass) => {
      const tool = { ...barInStem.tool, name: 'tool', maxNm: 10, toolClass };
      care('proof', joint({ tool, appliedNm: 4 }));
      care('wrench', joint({ tool }));
      const papers = joint({ tool: { ...tool, tolerancePercent: 4 }, appliedNm: 4 });
      expect(line(papers, 'proof')?.verdict?.tone).toBe('good');
      expect(line(papers, 'wrench')?.verdict?.tone).toBe('good');
    },
  );

  test('grit paste in the clamp', () => {
    expect(clampFriction['carbon-paste'].origins).toBe(0);
    care(
      'margin',
      joint({ bar: undefined, appliedNm: 11, onThread: 'oil', tubeMm: 31.8, clampFace: 'carbon-paste' }),
    );
  });

  test('the load of a rider’s hands, which no document prints', () => {
    const bar = { riseMm: 150, reachMm: 150 };
    care('margin', joint({ bar, appliedNm: 40, onThread: 'oil', tubeMm: 31.8 }));
  });

  test('red and amber stay what they are', () => {
    const odd = joint({ appliedNm: 14, screws: [{ ...screw, propertyClass: 'A2-50' }] });
    expect(line(odd, 'proof')?.verdict?.tone).toBe('stop');
    const loose = line(joint({ onThread: undefined, appliedNm: 0.2 }), 'margin');
    expect(loose?.verdict).toEqual({ tone: 'stop', word: 'Slips even at the high end' });
    expect(line(joint({ onThread: undefined, appliedNm: 12 }), 'proof')?.verdict?.tone).toBe('stop');
  });
});

// ISO 3506-1, mechanical properties: a supplier's page of the table and a fastener seller's chart print the same figures.
test.each([
  ['A2-50', 210, 500],
  ['A2-70', 450, 700],
  ['A4-70', 450, 700],
  ['A2-80', 600, 800],
  ['A4-80', 600, 800],
])('%s yields at %d and breaks at %d MPa', (propertyClass, yieldMPa, tensileMPa) =>
  expect(propertyClassRow(propertyClass)).toMatchObject({ yieldMPa, tensileMPa, known: 'seen' }),
);

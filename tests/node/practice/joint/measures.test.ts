import { describe, expect, test } from 'vitest';
import { describedAnew } from '../../../../src/drafts/describedAnew.ts';
import type { JointAbout } from '../../../../src/journal/entries.ts';
import type { JointRow, PartRow, ToolRow } from '../../../../src/journal/rows.ts';
import { jointFactsOf, toolFacts } from '../../../../src/practice/joint/jointFactsOf.ts';
import { measuresOf, readMeasures, rowsFor } from '../../../../src/practice/joint/measures.ts';

const mm = (typed: string) => ({ value: Number(typed.replace(',', '.')), unit: 'mm' as const, typed });
const nm = (value: number) => ({ value, unit: 'N.m' as const, typed: String(value) });
const m5 = { thread: 'M5', count: 4, hand: 'right' as const, words: 'face plate' };

/** The bar in its stem, as the logbook holds it. */
const joint = {
  ...{ key: 'joint/j1', is: 'joint', jointId: 'j1', bikeId: 'b1', name: 'Bar in stem', kind: 'bar-clamp' },
  ...{
    partIds: ['stem', 'bar'],
    between: [{ kind: 'shim', partId: 'shim' }],
    matters: true,
    state: 'torqued',
  },
  fasteners: [m5],
  targets: [
    { source: 'printed-on-the-part', torque: nm(5), partId: 'stem' },
    { source: 'general-table', torque: nm(4) },
  ],
  applied: { entryId: 'e1', atMs: 1, applied: nm(5), bolts: 4, passes: 2, marked: false, between: 'grease' },
  ...{ appliedTimes: 1, moved: 0, madeAtMs: 0, lastMs: 1, lastId: '' },
} as JointRow;

const part = (partId: string, change: Partial<PartRow>) =>
  ({ partId, name: partId, kind: 'other', changes: [], faces: [], ...change }) as unknown as PartRow;
const face = (kind: string, measured: object, traits = {}) =>
  ({ faceId: kind, kind, standard: null, nominal: {}, measured, traits }) as never;
const size = (typed: string) => ({ ...mm(typed), uncertaintyMm: 0.05 });
const parts = [
  part('stem', { faces: [face('bar-clamp', { boreMm: size('31,8') })] }),
  part('bar', { faces: [face('bar-centre', { diameterMm: size('26') })] }),
  part('shim', { kind: 'shim' }),
];
const small = {
  ...{ toolId: 't1', name: 'small wrench', toolClass: 'click', minNm: 2, maxNm: 24, lever: mm('210') },
  ...{ lastCheckMs: 1000, droppedAtMs: 2000 },
} as unknown as ToolRow;

describe('a joint as the computations see it', () => {
  const facts = jointFactsOf(joint, parts, parts, small, 5000);
  test('has its sizes from the faces of its parts, and the ruling target', () => {
    expect(facts).toMatchObject({
      ...{ tubeMm: 26, boreMm: 31.8, appliedNm: 5, piecesBetween: 1, clampFace: 'metal-dry' },
      target: {
        loNm: 5,
        hiNm: 5,
        byMaker: true,
        othersNm: [4],
        source: 'Stem: printed on the part',
      },
      // What was logged with the torque is on the threads; it lies in no clamp.
      onThread: 'grease',
    });
  });
  test('knows the tool in the hand, and that it fell since its check', () => {
    expect(facts.tool).toMatchObject({ leverMm: 210, dropped: true, foundOut: false });
    expect(toolFacts({ ...small, foundOut: { atMs: 1500, why: 'late' } }).foundOut).toBe(true);
    expect(toolFacts({ ...small, foundOut: { atMs: 500, why: 'late' } }).foundOut).toBe(false);
  });
  test('names parts that were changed for good, and only those that meet in it', () => {
    const cut = { changes: [{ cut: 'file' }] } as unknown as Partial<PartRow>;
    const [stem, bar, shim] = parts;
    if (!stem || !bar || !shim) throw new Error('three parts');
    expect(jointFactsOf(joint, [{ ...stem, ...cut }, bar, shim], parts, small, 0).changed).toEqual(['stem']);
    expect(jointFactsOf(joint, [stem, bar, { ...shim, ...cut }], parts, small, 0).changed).toEqual([]);
  });
  test('grease between tube and clamp makes the clamp slippery and says nothing of its screws', () => {
    const { applied: _applied, ...open } = joint;
    const greased = { ...open, between: [{ kind: 'grease' as const }] };
    expect(jointFactsOf(greased, parts, parts, undefined, 0)).toMatchObject({ clampFace: 'metal-greased' });
    expect(jointFactsOf(greased, parts, parts, undefined, 0).onThread).toBeUndefined();
    const rotor = { ...greased, kind: 'rotor' as const };
    expect(jointFactsOf(rotor, parts, parts, undefined, 0).onThread).toBe('grease');
  });
  test('a carbon bar is known by its material', () => {
    const carbon = [parts[0], part('bar', { faces: [face('bar-centre', {}, { material: 'carbon' })] })];
    expect(jointFactsOf(joint, carbon as PartRow[], parts, undefined, 0).clampFace).toBe('carbon-dry');
  });
  test('the bare mount of a fork and the rotor of the bike meet at the brake mount', () => {
    const fork = part('fork', {
      kind: 'fork',
      faces: [{ ...(face('disc-mount', {}) as object), standard: 'is' }] as never,
    });
    const rotor = part('rotor', { faces: [face('rotor-size', { diameterMm: size('180') })] });
    const mount = { ...joint, kind: 'brake-mount' as const, partIds: ['fork'] };
    expect(jointFactsOf(mount, [fork], [fork, rotor], undefined, 0)).toMatchObject({
      rotorMm: 180,
      nativeRotorMm: 160,
    });
  });
});

describe('measures written down with a joint', () => {
  const empty = measuresOf(joint);
  test('are kept as typed, with comma and unit, and complete what is known of the screws', () => {
    const read = readMeasures(
      { ...empty, screw: 'steel', propertyClass: '8.8', grip: '8,5', rise: '2 in', reach: '-40' },
      joint,
    );
    expect(read).toEqual({
      ok: true,
      about: {
        fasteners: [{ ...m5, screw: 'steel', propertyClass: '8.8', grip: mm('8,5') }],
        bar: { rise: { value: 2, unit: '[in_i]', typed: '2 in' }, reach: { ...mm('-40') } },
      },
    });
  });
  test('come back into the form as they were', () => {
    const filled = {
      ...empty,
      screw: 'stainless',
      grip: '8,5',
      extension: '30',
      angle: '45',
      construction: 'two-piece',
    };
    const read = readMeasures(filled, joint);
    if (!read.ok) throw new Error('not read');
    const again = measuresOf({ ...joint, ...read.about } as JointRow);
    expect(again).toMatchObject({ screw: 'stainless', grip: '8,5 mm', extension: '30 mm', angle: '45' });
    expect(readMeasures(again, joint)).toMatchObject({
      about: { extension: { length: { value: 30 }, angleDeg: 45 }, clamp: { construction: 'two-piece' } },
    });
  });
  test('what is emptied is not known of the screws any more', () => {
    const known = { ...joint, fasteners: [{ ...m5, screw: 'steel' as const }] };
    expect(readMeasures({ ...measuresOf(known), screw: '' }, known)).toMatchObject({
      about: { fasteners: [m5] },
    });
  });
  test('[J7] a place of the hands and an extension that are emptied are cleared from the joint', () => {
    const known = {
      ...joint,
      bar: { rise: mm('60'), reach: mm('-40') },
      extension: { length: mm('30'), angleDeg: 90 },
    };
    const read = readMeasures({ ...measuresOf(known), rise: '', reach: '', extension: '', angle: '' }, known);
    if (!read.ok) throw new Error('not read');
    expect(describedAnew<JointAbout>(known, read.about, ['clamp', 'bar', 'extension'])).toEqual({
      cleared: ['bar', 'extension'],
    });
  });
  test.each([
    ['words', { grip: 'eight' }, { grip: 'not-a-number' }],
    ['less than nothing', { grip: '-8' }, { grip: 'negative' }],
    ['half a place of the hands', { reach: '10' }, { rise: 'empty' }],
    ['a shim in no clamp', { shim: 'slit' }, { construction: 'empty' }],
    ['an angle of no extension', { angle: '90' }, { extension: 'empty' }],
  ])('%s is said at the field', (_name, change, wrong) => {
    expect(readMeasures({ ...empty, ...change }, joint)).toEqual({ ok: false, wrong });
  });
  test('only what makes sense for the joint is asked', () => {
    const keys = (kind: JointRow['kind'], construction = '') =>
      rowsFor({ ...joint, kind }, construction).map(({ key }) => key);
    expect(keys('bar-clamp')).toContain('rise');
    expect(keys('pedal')).not.toContain('construction');
    expect(keys('seatpost', 'one-slit-stiff')).toContain('tubeArm');
    expect(keys('seatpost')).not.toContain('tubeArm');
    expect(rowsFor({ ...joint, fasteners: [] }, '')).toEqual([]);
  });
});

describe('the make of a joint', () => {
  test('is asked for where printed torques tell several apart, and kept with its screws', () => {
    const make = rowsFor(joint, '').find(({ key }) => key === 'variant');
    expect(make && 'options' in make && make.options.length).toBeGreaterThan(1);
    const read = readMeasures({ ...measuresOf(joint), variant: 'light face plate' }, joint);
    expect(read.ok && read.about.fasteners[0]?.variant).toBe('light face plate');
    const kept = { ...joint, fasteners: [{ ...m5, variant: 'light face plate' }] } as JointRow;
    expect(measuresOf(kept).variant).toBe('light face plate');
    expect(jointFactsOf(kept, parts, parts, small, 5000).screws[0]?.variant).toBe('light face plate');
  });

  test('is not asked for where there is one band', () =>
    expect(rowsFor({ ...joint, kind: 'pedal' } as JointRow, '').some(({ key }) => key === 'variant')).toBe(
      false,
    ));
});

import { describe, expect, test } from 'vitest';
import { acceptBridge } from '../../../../src/fit/bridges/acceptBridge.ts';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import type { Finding } from '../../../../src/fit/finding.ts';
import { magpie } from '../../../fixtures/magpie.ts';
import { face, named, part } from '../../../fixtures/pileParts.ts';

const findings = checkPile(magpie).findings;
const about = (topic: string): Finding => {
  const found = findings.find((finding) => finding.topic === topic);
  if (!found) throw new Error(`no finding about ${topic}`);
  return found;
};
const planOf = (finding: Finding, bridgeId?: string) => {
  const accepted = acceptBridge(finding, bridgeId);
  if (!accepted.ok) throw new Error(accepted.reason);
  return accepted.plan;
};

describe('what an accepted bridge asks to be entered', () => {
  test('a shim: one part, two joints, nothing one-way', () => {
    const plan = planOf(about('bar-in-stem'));
    expect(plan.parts.map(({ name, kind, count }) => [name, kind, count])).toEqual([
      ['bar shim 31.8 → 26', 'shim', 1],
    ]);
    expect(plan.joints.map(({ one, other }) => [one, other])).toEqual([
      [
        { partId: 'stem', faceId: 'bar-clamp' },
        { planId: 'bar-shim-31.8-26', faceId: 'bar-shim-31.8-26#0' },
      ],
      [
        { planId: 'bar-shim-31.8-26', faceId: 'bar-shim-31.8-26#1' },
        { partId: 'bar', faceId: 'bar-centre' },
      ],
    ]);
    expect(plan.oneWayChanges).toEqual([]);
  });

  test('spacers: three of them, one joint that says which side', () => {
    const plan = planOf(about('crank-width'));
    expect(plan.parts.map(({ name, count }) => [name, count])).toEqual([['cup spacer 2.5 mm', 3]]);
    expect(plan.joints.length).toBe(1);
    expect(plan.joints[0]?.between).toEqual(['2 on the drive side', '1 on the other']);
  });

  test('cold-setting: no part, no joint, one change with before and after, on the frame', () => {
    const plan = planOf(about('hub-between-ends'));
    expect(plan.parts).toEqual([]);
    expect(plan.joints).toEqual([]);
    expect(plan.oneWayChanges).toMatchObject([
      { change: 'cold-set', partId: 'frame', key: 'spacingMm', before: 120, after: 130 },
    ]);
  });

  test('the other way, cutting the hub, is a change of the hub', () => {
    const plan = planOf(about('hub-between-ends'), 'one-way:cut-hub');
    expect(plan.oneWayChanges).toMatchObject([
      { change: 'cut-hub', partId: 'rear-hub', before: 130, after: 120 },
    ]);
  });

  test('a bonded sleeve makes a joint for good', () => {
    const pile = [
      part('frame', 'frame', [named('shell', 'bb30')]),
      part('cups', 'bottom-bracket', [named('bb-cup', 'iso')]),
    ];
    const [finding] = checkPile(pile).findings;
    if (!finding) throw new Error('the cups fit by themselves');
    expect(planOf(finding).joints.map(({ permanent }) => permanent)).toEqual([true, false]);
  });

  test('an adapter from the shelf is used, not bought', () => {
    const own = part('own-shim', 'shim', [
      face('bar-centre', { diameterMm: 31.8 }),
      face('bar-clamp', { boreMm: 26 }),
    ]);
    const finding = checkPile([...magpie, own]).findings.find(({ topic }) => topic === 'bar-in-stem');
    if (!finding) throw new Error('the bar fits by itself');
    const plan = planOf(finding);
    expect(plan.fromShelf).toEqual(['own-shim']);
    expect(plan.parts).toEqual([]);
    expect(plan.joints[1]?.one).toEqual({ partId: 'own-shim', faceId: 'bar-clamp' });
  });

  test('every planned joint of every bridge of the pile is between faces that sit on each other', () => {
    for (const finding of findings)
      for (const { bridgeId, links, oneWay } of finding.bridges) {
        const plan = planOf(finding, bridgeId);
        expect(plan.joints.length).toBe(oneWay ? 0 : links.length + 1);
      }
  });

  test('a hub that never fits has nothing to accept', () => {
    expect(acceptBridge(about('spokes-hub-rim'))).toEqual({ ok: false, reason: 'no-such-bridge' });
    expect(acceptBridge(about('bar-in-stem'), 'bar-shim-35-31.8')).toEqual({
      ok: false,
      reason: 'no-such-bridge',
    });
  });

  test('an open question about a whole row of parts has nothing to accept', () => {
    const steerer = checkPile(magpie).toMeasure.find(({ topic }) => topic === 'steerer-length');
    expect(steerer && acceptBridge(steerer)).toEqual({ ok: false, reason: 'no-such-bridge' });
  });

  const chainIn = (nearestMm: number, farthestMm: number): Finding => {
    const pile = magpie.map((one) => ({
      ...one,
      faces: one.faces.map((own) =>
        own.kind === 'axle-slot' && one.kind === 'frame'
          ? { ...own, nominal: { ...own.nominal, nearestMm, farthestMm } }
          : own,
      ),
    }));
    const found = checkPile(pile).findings.find(({ topic }) => topic === 'chain-length');
    if (!found) throw new Error('a chain fits by itself');
    return found;
  };

  test('a half-link, found by slot, ring and sprocket together: one piece, no joint', () => {
    const plan = planOf(chainIn(386, 392));
    expect(plan.parts.map(({ name, kind, count }) => [name, kind, count])).toEqual([
      ['half-link', 'other', 1],
    ]);
    expect(plan.joints).toEqual([]);
    expect(plan.oneWayChanges).toEqual([]);
  });

  test('a filed slot, found by the same three: one change of the frame', () => {
    const plan = planOf(chainIn(384, 387));
    expect(plan.parts).toEqual([]);
    expect(plan.oneWayChanges).toMatchObject([
      { change: 'file-slot', partId: 'frame', key: 'nearestMm', before: 384 },
    ]);
  });
});

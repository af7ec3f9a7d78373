import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import type { PilePart } from '../../../../src/fit/pile.ts';
import { face, named, part } from '../../../fixtures/pileParts.ts';

/** A frame 120 between its ends, and a hub of 135 whose teeth stand 37.5 inside its end: chainline 30. */
function pile(rotorGapMm?: number | null, frontMm?: number): PilePart[] {
  return [
    part('frame', 'frame', [face('end-spacing', { spacingMm: 120 }, { traits: { material: 'aluminium' } })]),
    part('hub', 'rear-hub', [
      face('hub-spacing', { spacingMm: 135 }),
      named('driver-mount', '1.375x24', { nominal: { toothCentreMm: 37.5 } }),
      ...(rotorGapMm === undefined
        ? []
        : [named('rotor-seat', 'six-bolt', rotorGapMm === null ? {} : { nominal: { rotorGapMm } })]),
    ]),
    ...(frontMm === undefined
      ? []
      : [part('cranks', 'cranks', [named('spider', '104/4', { nominal: { chainlineMm: frontMm } })])]),
  ];
}

function cut(parts: readonly PilePart[]) {
  const found = checkPile(parts).findings.find(({ topic }) => topic === 'hub-between-ends');
  if (!found) throw new Error('the hub goes in');
  expect(found.bridges.map(({ bridgeId }) => bridgeId)).toEqual(['one-way:cut-hub']);
  return found;
}

// Arithmetic of a middle plane that moves by half the difference of the two cuts (derived, no source):
// 135 to 120 with chainline 30 and a gap of 15.3: all off the drive end 37.5 and 15.3, half each 30 and 7.8.
describe('where the cut of a hub must fall', () => {
  test('by rotor gap, chainline and dish', () => {
    const { notes } = cut(pile(15.3));
    expect(notes[0]).toBe(
      'At most 13.3 mm may come off the left end, so that the rotor keeps 2 mm of clearance.',
    );
    expect(notes[1]).toContain('All 15 mm off the drive end: the rear chainline becomes 37.5 mm.');
    expect(notes[1]).toContain(
      'The rotor keeps 15.3 mm to the dropout. The rim has to be pulled 7.5 mm away from',
    );
    expect(notes[2]).toContain('the rear chainline becomes 30 mm. The rotor keeps 7.8 mm');
    expect(notes[2]).toContain('The rim stays where it is.');
  });

  test('a rotor close to the end keeps the cut off the left', () => {
    const { notes } = cut(pile(1.5));
    expect(notes[0]).toContain('Nothing may come off the left end');
    expect(notes.at(-1)).toContain('The rotor would hit the frame.');
  });

  test('a gap that was not measured is asked for', () => {
    const { notes, asks, faces } = cut(pile(null));
    expect(notes[0]).toContain('not known before the gap');
    expect(asks).toMatchObject([{ kind: 'rotor-seat', key: 'rotorGapMm' }]);
    expect(faces).toContainEqual({ partId: 'hub', faceId: 'rotor-seat' });
  });

  test.each([
    // 4 mm outward want 11.5 off the drive end and 3.5 off the left.
    [34, 'runs straight with 11.5 mm off the drive end and 3.5 mm off the left'],
    // More than all of it on one end does not help: 45 − 37.5.
    [45, 'comes as near as 7.5 mm with 15 mm off the drive end and 0 mm off the left'],
  ])('a ring at %f mm', (frontMm, words) => {
    expect(cut(pile(15.3, frontMm)).notes[1]).toContain(words);
  });

  test('the rotor wins over the chain', () => {
    // Straight would be 7.5 off the left; the rotor leaves 5 − 2 = 3, which brings the chainline to 34.5.
    expect(cut(pile(5, 30)).notes[1]).toContain(
      'comes as near as 4.5 mm with 12 mm off the drive end and 3 mm',
    );
  });

  test('a hub without a rotor, and a front hub, have nothing to keep clear of', () => {
    expect(cut(pile()).notes[0]).toContain('All 15 mm off the drive end');
  });

  test('a hub far too wide is not cut down', () => {
    const wide = part('hub', 'rear-hub', [face('hub-spacing', { spacingMm: 157 })]);
    const frame = part('frame', 'frame', [face('end-spacing', { spacingMm: 120 })]);
    expect(checkPile([frame, wide]).findings[0]).toMatchObject({ outcome: 'does-not-fit', bridges: [] });
  });
});

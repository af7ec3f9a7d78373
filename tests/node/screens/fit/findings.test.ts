import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import type { GroupId } from '../../../../src/fit/openFindings.ts';
import type { PilePart } from '../../../../src/fit/pile.ts';
import { pileOf } from '../../../../src/fit/pileOf.ts';
import { completeSets } from '../../../../src/fit/sets/completeSets.ts';
import { axlePositions } from '../../../../src/fit/wholes/axlePosition.ts';
import { wallMm } from '../../../../src/practice/pile/bridgeFacts.ts';
import { drivetrainOf, gearFigures } from '../../../../src/practice/pile/drivetrain.ts';
import { findingGroups } from '../../../../src/practice/pile/findingGroups.ts';
import { endsWithoutCaliper, missingParts } from '../../../../src/practice/pile/missingParts.ts';
import { nearMisses } from '../../../../src/practice/pile/nearMisses.ts';
import { takeSet } from '../../../../src/practice/pile/takeSet.ts';
import { stopWords } from '../../../../src/words/slotWords.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';
import { BIKE, pile, situationOf, writePile } from '../../practice/pile/pileInLogbook.ts';

/** The pile written into a logbook and read back, as the screen gets it. */
async function throughTheLogbook(parts: readonly PilePart[] = pile): Promise<PilePart[]> {
  const { logbook } = await openTestLogbook();
  await writePile(logbook, parts);
  const { situation } = await situationOf(logbook);
  logbook.close();
  return pileOf(situation.parts);
}

describe('the demo pile, read back from the logbook', async () => {
  const parts = await throughTheLogbook();
  const groups = findingGroups(checkPile(parts), []);
  const groupOf = (topic: string): (GroupId | undefined)[] =>
    groups
      .filter(({ findings }) => findings.some((finding) => finding.topic === topic))
      .map(({ group }) => group);

  test('loud comes first', () => {
    expect(groups.map(({ group }) => group)).toEqual(['one-way-only', 'not-known', 'fits-with', 'fits']);
  });

  // Facts of the trade: a stem for 1 1/8 in takes a 1 in steerer only over a shim, and so on.
  test.each([
    ['hub-between-ends', ['one-way-only', 'fits']],
    ['stem-on-steerer', ['fits-with']],
    ['bar-in-stem', ['fits-with']],
    ['post-in-seat-tube', ['fits-with']],
    ['caliper-on-mount', ['fits-with']],
    ['crank-width', ['fits-with']],
    ['valve-in-rim', ['fits-with']],
    ['steerer-length', ['not-known']],
    ['bottom-bracket-in-shell', ['fits']],
    ['spokes-hub-rim', ['fits']],
  ] as const)('%s stands under %j (common practice, no source)', (topic, expected) => {
    expect(groupOf(topic)).toEqual(expected);
  });

  test('a row accepted settles a bridge, never what does not fit or is not known', () => {
    const check = checkPile(parts);
    const rows = [...check.findings, ...check.toMeasure].map(({ findingId }) => ({
      ...{
        key: `finding/${BIKE}:${findingId}`,
        is: 'finding',
        lastMs: 0,
        lastId: '',
        bikeId: BIKE,
        findingId,
        words: '',
      },
      outcome: 'accepted',
    })) as Parameters<typeof findingGroups>[1];
    expect(findingGroups(check, rows).map(({ group }) => group)).toEqual(['not-known', 'accepted', 'fits']);
  });

  test('walls of the shims: half of what the outside is wider than the inside (geometry)', () => {
    const walls = checkPile(parts).findings.flatMap(({ topic, bridges }) =>
      bridges.flatMap(({ links }) => links.map((link) => [topic, wallMm(link)] as const)),
    );
    const wall = (topic: string) => walls.find(([of]) => of === topic)?.[1];
    expect(wall('bar-in-stem')).toBeCloseTo((31.8 - 26) / 2, 6);
    expect(wall('stem-on-steerer')).toBeCloseTo((28.6 - 25.4) / 2, 6);
    expect(wall('post-in-seat-tube')).toBeCloseTo((27.2 - 25.4) / 2, 6);
    expect(wall('caliper-on-mount')).toBeUndefined();
  });

  test('a shim that was not offered says at which part it does not sit', () => {
    const finding = checkPile(parts).findings.find(({ topic }) => topic === 'bar-in-stem');
    if (!finding) throw new Error('no such finding');
    const misses = nearMisses(finding, parts);
    expect(misses.length).toBeGreaterThan(0);
    expect(misses.map(({ adapterId }) => adapterId)).not.toContain('bar-shim-31.8-26');
    for (const { sentence } of misses) expect(sentence).toMatch(/^At (bar|stem): \S/);
  });
});

describe('the whole bike', () => {
  test('gear of 36 to 15 on 47-584: wheel of 584 + 2 × 47 mm, 2.4 turns (definition of the size and of the ratio)', () => {
    const drive = drivetrainOf(pile);
    expect(drive).toEqual({
      ringTeeth: 36,
      sprocketTeeth: 15,
      wheelMm: 584 + 2 * 47,
      slot: { frontMm: 398, rearMm: 420, readingMm: expect.any(Number) },
    });
    const figures = gearFigures(drive, { cadence: 60, crankMm: 170 });
    expect(figures?.ratio).toBeCloseTo(2.4, 9);
    expect(figures?.developmentM).toBeCloseTo(2.4 * Math.PI * 0.678, 6);
    // Sixty turns a minute go sixty developments a minute: 3.6 km/h for each metre.
    expect(figures?.speedKmh).toBeCloseTo(3.6 * 2.4 * Math.PI * 0.678, 6);
    expect(figures?.gain).toBeCloseTo((2.4 * 678) / 2 / 170, 6);
  });

  // Slack: taut less 0.1 to 0.4 mm (triangle geometry for half an inch of movement and twice that, forum advice).
  // Wear: 420 / 407.362 is 3.1 % when the chain climbs; 12.64 mm at 6.38 mm a pitch of 90 pitches is 2.2 % when it does not.
  test('one chain length tells its place, its slack and the wear that uses up the slot', () => {
    const positions = axlePositions({ frontMm: 398, rearMm: 420 }, 36, 15);
    const stop = positions.ok ? positions.stops[0] : undefined;
    if (!stop) throw new Error('no chain fits');
    expect(stopWords(stop, 0.75)).toEqual([
      'Axle at 407.4 mm: 9.4 mm to the front, 12.6 mm to the rear.',
      'With its slack the chain needs it at 407 to 407.3 mm.',
      'Worn by 0.75 %: 410.4 mm to 411.7 mm, still in the slot.',
      'Wear of 2.2 to 3.1 % uses the slot up.',
    ]);
  });

  test('what cannot be meant leaves its figure out', () => {
    const drive = drivetrainOf(pile);
    expect(gearFigures(drive, { cadence: 900, crankMm: 5 })).not.toHaveProperty('speedKmh');
    expect(gearFigures(drive, { cadence: 900, crankMm: 5 })).not.toHaveProperty('gain');
    expect(gearFigures({}, {})).toBeUndefined();
    expect(drivetrainOf([])).toEqual({});
  });

  test('a post that is missing is told with the seat tube it has to suit', () => {
    const missing = missingParts(pile.filter(({ kind }) => kind !== 'seatpost'));
    expect(missing.map(({ slot }) => slot)).toEqual(['seatpost']);
    expect(missing[0]?.suits.join()).toMatch(/steel track frame, seat tube: bore 27\.2 mm/);
    expect(missingParts(pile)).toEqual([]);
    expect(missingParts([])[0]?.slot).toBe('frame');
  });

  test('a caliper at the front says nothing about the rear', () => {
    expect(endsWithoutCaliper(pile)).toEqual(['rear']);
  });
});

test('a set is brought from the shelf, and a rim chosen for a wheel is marked so', async () => {
  const { logbook } = await openTestLogbook();
  const frame = pile.find(({ kind }) => kind === 'frame');
  if (!frame) throw new Error('no frame');
  await writePile(logbook, [frame]);
  for (const { position: _end, ...part } of pile.filter(({ kind }) => kind !== 'frame')) {
    await done(logbook, {
      type: 'add-part',
      ...{ ...part, faces: [...part.faces], label: part.partId, origin: 'found' },
      place: { on: 'shelf' },
    });
  }
  const parts = pileOf((await situationOf(logbook)).situation.parts);
  const [set] = completeSets(
    parts.filter(({ kind }) => kind !== 'frame'),
    frame,
    { limit: 1 },
  ).sets;
  if (!set) throw new Error('no set');
  for (const command of takeSet(set, { bikeId: BIKE, parts, onBike: new Set([frame.partId]) }))
    await done(logbook, command);
  const { card } = await situationOf(logbook);
  const inSet = set.filled.flatMap((one) => one.parts.map(({ partId }) => partId));
  expect(card.parts.map(({ partId }) => partId).sort()).toEqual([frame.partId, ...inSet].sort());
  expect(
    card.parts
      .filter(({ kind }) => kind === 'rim')
      .map(({ position }) => position)
      .sort(),
  ).toEqual(['front', 'rear']);
  logbook.close();
});

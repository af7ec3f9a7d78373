import { expect, test } from 'vitest';
import { engagementForFullStrengthMm } from '../../../../src/mechanics/screws/engagement.ts';
import { propertyClassRow } from '../../../../src/standards/screws/propertyClasses.ts';
import { engagementRule, engagementRules } from '../../../../src/standards/screws/threadEngagement.ts';
import { threadRow } from '../../../../src/standards/screws/threads.ts';

test('example: two diameters in aluminium', () => expect(engagementRule('aluminium')?.diameters).toBe(2));

// Engine manual: two diameters in aluminium, 1.25 in cast iron; a fastener chart: two diameters and 30 % less torque.
test.each([
  ['aluminium', 2, 0.7],
  ['cast-iron', 1.25, 1],
] as const)('%s: %d diameters, %d of the torque', (female, diameters, torqueShare) => {
  expect(engagementRule(female)).toMatchObject({ diameters, torqueShare });
});

test.each(engagementRules)(
  '$female: the shop rule is at least what an 8.8 screw needs by strength',
  (row) => {
    const thread = threadRow('M6');
    const strengths = { screwMPa: propertyClassRow('8.8').tensileMPa, femaleMPa: row.tensileMPa };
    const neededDiameters = engagementForFullStrengthMm(thread, strengths) / thread.diameterMm;
    // Grey iron shears at about its tensile strength, steel at 0.577 of it; comparing tensile strengths does not see that.
    expect(row.diameters).toBeGreaterThan(neededDiameters * (row.female === 'cast-iron' ? 0.577 : 0.95));
  },
);

test('no rule where none holds', () => {
  expect(engagementRule('plastic')).toBeUndefined();
  expect(engagementRule('unknown')).toBeUndefined();
});

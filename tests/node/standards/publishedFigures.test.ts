import { describe, expect, test } from 'vitest';
import { type AnyUnit, convert } from '../../../src/mechanics/units.ts';
import { publishedFigures } from '../../../src/standards/publishedFigures.ts';
import { publishedFigure } from '../../fixtures/rows.ts';

// The rule prints each figure in both systems; the inch figure is the witness here.
const inchTwin: [string, string, AnyUnit, number, number][] = [
  ['rear-retention', '1512.12(a)(1), 400 lbf', '[lbf_av]', 400, 0.5],
  ['front-removal', '1512.12(a)(2), 12.5 ft-lb', '[ft_i].[lbf_av]', 12.5, 0.05],
  ['pad-contact-force', '1512.5(b)(5), 10 lbf', '[lbf_av]', 10, 0.01],
  ['lever-grip', '1512.5(b)(3), 3½ in', '[in_i]', 3.5, 0.005],
  ['seat-height', '1512.15(a), 5.0 in', '[in_i]', 5, 0.08],
  ['frame-load', '1512.14, 200 lbf', '[lbf_av]', 200, 0.1],
  ['road-test-distance', '1512.17(a), 4.0 mi', '[mi_i]', 4, 0.03],
  ['road-test-rider', '1512.17(a), 150 lb', '[lb_av]', 150, 0.15],
  ['toe-clearance', '1512.17(d), 3½ in', '[in_i]', 3.5, 0.005],
];
describe('US federal rule: metric and inch figures agree', () => {
  test.each(inchTwin)('%s (16 CFR %s)', (id, _section, unit, expected, tolerance) => {
    const figure = publishedFigure(id);
    const inches = convert(figure.value, figure.unit as AnyUnit, unit as never);
    expect(Math.abs(inches - expected)).toBeLessThanOrEqual(tolerance);
  });
});

test('each figure stands once and names its section', () => {
  expect(new Set(publishedFigures.map((row) => row.id)).size).toBe(publishedFigures.length);
  for (const row of publishedFigures) expect(row.source).toMatch(/^16 CFR 1512\.\d+/);
});

// Printed without inches, or only as a count: typed again from the rule.
test.each([
  ['post-mark', 2],
  ['lean', 25],
  ['chain-strength', 8010],
  ['toe-clearance', 89],
  ['road-test-distance', 6.4],
])('%s is %d in the rule', (id, value) => expect(publishedFigure(id).value).toBe(value));

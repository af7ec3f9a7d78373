import { describe, expect, test } from 'vitest';
import { outsideChecks } from '../../fixtures/outside/index.ts';
import { compare } from '../../fixtures/outside/outsideCheck.ts';

describe('the list of outside checks', () => {
  test('every check has an id of its own', () => {
    const ids = outsideChecks.map((check) => check.id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  test('every check names its source, its unit and a tolerance that can fail', () => {
    for (const check of outsideChecks) {
      expect(check.source, check.id).toMatch(/\S{3}/);
      expect(check.unit, check.id).not.toBe('');
      expect(check.tolerance, check.id).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(check.expected), check.id).toBe(true);
      // Half the value or more would let nearly anything pass.
      if (check.expected !== 0) expect(check.tolerance, check.id).toBeLessThan(Math.abs(check.expected) / 2);
    }
  });
});

describe.each(outsideChecks)('$source', (check) => {
  const verb = check.negative ? 'is not the misprinted' : 'is';
  test(`${check.quantity} ${verb} ${check.expected} ${check.unit} [${check.id}]`, () => {
    const { ours, passed } = compare(check);
    expect(passed, `ours ${ours}, published ${check.expected} ± ${check.tolerance} ${check.unit}`).toBe(true);
  });
});

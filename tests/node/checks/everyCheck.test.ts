import { describe, expect, test } from 'vitest';
import { outsideChecks } from '../../fixtures/outside/index.ts';
import { compare } from '../../fixtures/outside/outsideCheck.ts';

describe.each(outsideChecks)('$source', (check) => {
  const verb = check.negative ? 'is not the misprinted' : 'is';
  test(`${check.quantity} ${verb} ${check.expected} ${check.unit} [${check.id}]`, () => {
    const { ours, passed } = compare(check);
    expect(passed, `ours ${ours}, published ${check.expected} ± ${check.tolerance} ${check.unit}`).toBe(true);
  });
});

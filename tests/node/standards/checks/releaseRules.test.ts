import { describe, expect, test } from 'vitest';
import { cautions, neverDeferred } from '../../../../src/standards/checks/releaseRules.ts';

describe('what is never put off', () => {
  test.each(['brake', 'steering', 'wheel-retention', 'crack', 'crank-or-pedal', 'bead', 'tyre-or-rim'])(
    '%s is among it (our suggestion; manuals and federal rule behind brakes, steering, retention)',
    (id) => expect(neverDeferred.some((row) => row.id === id)).toBe(true),
  );
  test('each has an id of its own and a ground', () => {
    expect(new Set(neverDeferred.map((row) => row.id)).size).toBe(neverDeferred.length);
    for (const row of neverDeferred) expect(row.source).toMatch(/\S{4}/);
  });
});

describe('cautions', () => {
  test.each(['release', 'brakes', 'steering', 'one-way-change', 'somebody-else'] as const)(
    '%s sends to a qualified mechanic',
    (topic) => expect(cautions[topic]).toMatch(/qualified mechanic/),
  );
  test('release names the local rules and what a tick means', () => {
    expect(cautions.release).toMatch(/rules of the place/);
    expect(cautions.release).toMatch(/tick means logged/);
  });
});

import { expect, test } from 'vitest';
import { fitRules } from '../../../src/fit/bridges/meet.ts';
import { partKindIds, partKinds } from '../../../src/fit/partKinds.ts';
import { faceKindIds } from '../../../src/standards/faces/faceKinds.ts';

test('every kind of face is on some kind of part, and in some rule or read by a check of the whole', () => {
  const onParts = new Set(partKindIds.flatMap((kind) => partKinds[kind].faces));
  const inRules = new Set(fitRules.flatMap(({ first, second }) => [first, second]));
  expect(faceKindIds.filter((kind) => !onParts.has(kind))).toEqual([]);
  // The rotor's size is carried to the caliper before it is judged.
  expect(faceKindIds.filter((kind) => !inRules.has(kind))).toEqual(['rotor-size']);
});

test('one rule per pair of kinds, one topic per rule', () => {
  const pairs = fitRules.map(({ first, second }) => [first, second].sort().join(' '));
  expect(new Set(pairs).size).toBe(fitRules.length);
  expect(new Set(fitRules.map(({ topic }) => topic)).size).toBe(fitRules.length);
});

test('every rule says what is at stake and where it comes from', () => {
  for (const { risk, source } of fitRules) {
    expect(risk.length).toBeGreaterThan(20);
    expect(source).not.toBe('');
  }
});

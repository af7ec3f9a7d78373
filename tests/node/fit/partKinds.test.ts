import { expect, test } from 'vitest';
import { rules } from '../../../src/fit/bridges/meet.ts';
import { partKindIds, partKinds } from '../../../src/fit/partKinds.ts';
import { faceKindIds } from '../../../src/standards/faces/faceKinds.ts';

test('every kind of face is on some kind of part, and in some rule or read by a check of the whole', () => {
  const onParts = new Set(partKindIds.flatMap((kind) => partKinds[kind].faces));
  const inRules = new Set(rules.flatMap(({ first, second }) => [first, second]));
  expect(faceKindIds.filter((kind) => !onParts.has(kind))).toEqual([]);
  // The rotor's size is carried to the caliper before it is judged.
  expect(faceKindIds.filter((kind) => !inRules.has(kind))).toEqual(['rotor-size']);
});

test('one rule per pair of kinds, one topic per rule', () => {
  const pairs = rules.map(({ first, second }) => [first, second].sort().join(' '));
  expect(new Set(pairs).size).toBe(rules.length);
  expect(new Set(rules.map(({ topic }) => topic)).size).toBe(rules.length);
});

test('every rule says what is at stake and where it comes from', () => {
  for (const { risk, source } of rules) {
    expect(risk.length).toBeGreaterThan(20);
    expect(source).not.toBe('');
  }
});

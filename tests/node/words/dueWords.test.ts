import { expect, test } from 'vitest';
import type { Duty } from '../../../src/journal/answers.ts';
import { dueWords } from '../../../src/words/dueWords.ts';

test.each<[Duty['is'], string, string, string]>([
  ['wait', 'seal', 'Rear bead', 'Seal: Rear bead'],
  ['recheck', 'retorque', 'Stem clamp: pull to the target', 'Stem clamp: pull to the target'],
  ['defect', 'ride-limited', 'Bell bracket rattles', 'Problem: Bell bracket rattles'],
  ['tool', 'tool-check', 'Small torque wrench', 'Check the tool: Small torque wrench'],
])('%s of the kind %s, called %s, is told as %s', (is, kind, title, words) => {
  expect(dueWords({ is, kind, title })).toBe(words);
});

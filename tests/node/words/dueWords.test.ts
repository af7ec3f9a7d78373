import { expect, test } from 'vitest';
import type { DueLine } from '../../../src/logbook.ts';
import { dueWords } from '../../../src/words/dueWords.ts';

test.each<[DueLine['is'], string, string, string]>([
  ['wait', 'seal', 'Rear bead', 'Seal: Rear bead'],
  ['recheck', 'retorque', 'Stem clamp: pull to the target', 'Stem clamp: pull to the target'],
  ['defect', 'ride-limited', 'Bell bracket rattles', 'Defect: Bell bracket rattles'],
])('%s of the kind %s, called %s, is told as %s', (is, kind, title, words) => {
  expect(dueWords({ is, kind, title })).toBe(words);
});

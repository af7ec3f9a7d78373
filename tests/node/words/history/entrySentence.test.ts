import { expect, test } from 'vitest';
import type { EntryBody, EntryType } from '../../../../src/journal/entries.ts';
import { entryFields } from '../../../../src/words/history/entryFields.ts';
import { entrySentence } from '../../../../src/words/history/entrySentence.ts';
import { entryOf, entryTypes, names, typed } from './everyEntry.ts';

const unnamed = { bike: () => undefined, part: () => undefined, joint: () => undefined };
const ids = /\b(?:[bpjswctdrfn]\d|ri1|ph1|e0|0198-entry)\b/;

// AC 43-9C (as told in trade articles): an entry lets a person unfamiliar with the job understand what was done.
test.each(entryTypes)('%s reads as whole sentences without an id, a code or a hole in them', (type) => {
  for (const sentence of [entrySentence(entryOf(type), names), entrySentence(entryOf(type), unnamed)]) {
    expect(sentence).toMatch(/^[\p{Lu}“].*\.$/u);
    expect(sentence).not.toMatch(ids);
    expect(sentence).not.toMatch(/undefined|null|NaN|\[object|\.\.| {2}| ,|:\./);
    expect(sentence).not.toContain(type);
  }
});

test.each(entryTypes)('%s shows every field with a caption and words', (type) => {
  for (const { label, text } of entryFields(entryOf(type), names)) {
    expect(label).toMatch(/^\p{Lu}/u);
    expect(text).toMatch(/\S/);
    expect(text).not.toMatch(ids);
    expect(text).not.toMatch(/undefined|null|NaN|\[object/);
  }
});

const says: [EntryType, Partial<EntryBody>, string[]][] = [
  [
    'torque-applied',
    {},
    ['Stem on steerer', 'Magpie', '5,2 N·m', '2 bolts', 'small wrench', 'check overdue', 'Paint mark'],
  ],
  ['torque-applied', { tool: undefined }, ['Tool not named.']],
  ['torque-applied', { applied: typed('44 in·lb', '[in_i].[lbf_av]') }, ['tightened to 44 in·lb,']],
  ['torque-found', {}, ['moved', '4.2 N·m', '15°']],
  ['part-moved', {}, ['Fork (P-001)', 'on Ferry', 'in quarantine (a dent)', 'Condition: dented.']],
  [
    'part-changed',
    {},
    [
      'permanently cold-set',
      'from 120 mm to 130,0 mm',
      'Left: 5 mm, of each end.',
      'every 30 days or 500 km',
    ],
  ],
  ['part-added', {}, ['Ridden before: not known.', 'Serial number: 4711.', 'bought used, flea market']],
  [
    'joint-made',
    {},
    [
      'Fork (P-001) and Stem (P-002)',
      'grease and Shim (P-003)',
      '2 × M5, left-hand thread',
      '5 N·m to 6 N·m, printed on the part',
    ],
  ],
  [
    'part-described',
    { cleared: ['massG', 'unknown'] },
    ['now called Steel fork', 'Cleared, as not known: “Mass” and “Not known”.'],
  ],
  ['tool-described', { cleared: ['lever'] }, ['Cleared', '“Length to the hand”']],
  ['joint-described', { cleared: ['bar'] }, ['Note: tight fit. Cleared', '“Hands on the bar”']],
  ['locker-applied', {}, ['without primer', '1 day']],
  ['bike-released', {}, ['NOT to be ridden by the builder', 'Open: Stem: threadlocker not cured.']],
  ['bike-released', { open: [] }, ['Nothing was open.']],
  ['ride-logged', {}, ['for the first time', '8.5 km in 30 minutes', 'Noticed: creaks.']],
  ['entry-corrected', {}, ['applied 5,5 N·m', 'Why: misread the dial.']],
  ['entry-corrected', { becomes: null }, ['struck out', 'misread the dial']],
  ['defect-found', {}, ['until 3 June 2026', 'up to 20 km', 'slowly']],
  ['recheck-set', {}, ['after 1 ride or 30 days, whichever comes first']],
  ['recheck-set', { dueRides: undefined }, ['due after 30 days:']],
  ['seal-marked', {}, ['seated dry', 'even all round', '2,5 bar']],
];

test.each(says)('%s %j tells what matters in it', (type, change, words) => {
  const sentence = entrySentence(entryOf(type, change as never), names);
  for (const word of words) expect(sentence).toContain(word);
});

import { expect, test } from 'vitest';
import { truingBands, truingWord } from '../../../../src/standards/wheels/truingBands.ts';
import { turnsAdviceWords } from '../../../../src/words/wheel/adviceWords.ts';
import { crossingWords } from '../../../../src/words/wheel/crossingWords.ts';
import { awayWords, differenceWords, turnWords } from '../../../../src/words/wheel/wheelWords.ts';

test('turns in eighths, with the way', () => {
  expect(turnWords(-6)).toBe('¾ turn looser');
  expect(turnWords(1)).toBe('⅛ turn tighter');
  expect(turnWords(2)).toBe('¼ turn tighter');
  expect(turnWords(8)).toBe('1 turn tighter');
  expect(turnWords(-10)).toBe('1¼ turns looser');
  expect(turnWords(16)).toBe('2 turns tighter');
});

test('differences and shares with their direction, nothing for what rounds to nothing', () => {
  expect(differenceWords(-1.64)).toBe('1.6 mm shorter');
  expect(differenceWords(0.2)).toBe('0.2 mm longer');
  expect(differenceWords(0.01)).toBe('as computed');
  expect(awayWords(-6.7)).toBe('−7 %');
  expect(awayWords(0.2)).toBe('±0 %');
});

test('lacing, and what the next turns are worth', () => {
  expect([crossingWords(3), crossingWords(0)]).toEqual(['3-cross', 'radial']);
  expect(turnsAdviceWords({ is: 'turns', turns: [], within: true })).toContain('Nothing to turn');
  expect(turnsAdviceWords({ is: 'turns', turns: [1], within: false })).toContain('1 nipple');
});

test('a run-out earns its word up to the band itself', () => {
  for (const band of truingBands) expect(truingWord('lateralMm', band.lateralMm)).toBe(band.word);
  expect(truingWord('dishMm', -0.3)).toBe('acceptable');
  expect(truingWord('radialMm', 1.01)).toBe('redo');
});

import { expect, test } from 'vitest';
import { allTexts } from '../../words/texts.mjs';

/** What a text must not say, and what it says instead. */
const banned: readonly [RegExp, string][] = [
  [/(?<!you )\bwants?\b/i, 'needs'],
  [/\bstands?\b(?!-)/i, 'is, sits, comes'],
  [/\blets? go\b/i, 'fails'],
  [/\blives? (from|on this)\b/i, 'relies on; stored on'],
  [/\bis of (steel|aluminium|titanium|carbon)\b/i, 'is made of'],
  [/\bin hand\b/i, 'current'],
  [/\bway over it\b/i, 'how to make it fit'],
  [/\bbears\b/i, 'withstands'],
  [/\bmet (at|with|it)\b/i, 'found, measured'],
  [/\bmay stay empty\b/i, 'optional'],
  [/\bscrewed\b/i, 'threaded into'],
  [/\bless than nothing\b/i, 'below 0'],
  [/\b(anew|afresh)\b/i, 'again'],
  [/\b(nobody|somebody|whoever|stranger|no one)\b/i, 'you, or the part'],
  [/\bremembers?\b/i, 'say where it is logged'],
  [/\bown (judgement|choice)\b/i, 'our suggestion'],
  [/\btruth\b/i, 'true'],
  [/\bmachine chain\b/i, 'chain'],
  [/\broom for\b/i, 'clearance'],
  [/\bleast insertion\b/i, 'minimum insertion'],
  [/\bdefects?\b/i, 'problem'],
  [/\bwrit(ten|e it) down\b/i, 'logged'],
  [/\bput(s|ting)? away\b/i, 'archive'],
  [/\bput right\b/i, 'fixed'],
  [/\bfor good\b/i, 'permanent'],
  [/\bpitches\b/i, 'links'],
  [/\bover since\b/i, 'cured, over at'],
  [/\bwas (begun|looked over)\b/i, 'object, verb, value'],
  [/\bheld\b(?!,)/i, 'OK for a re-check, clamped for a part'],
];

/** Where a banned word is the right one. */
const right: readonly RegExp[] = [
  // Titles that entries of earlier versions carry.
  /recheckTitles\.ts\t(Spokes and truth|Look it over|Pull to the target)/,
  // A hand, a wall or the brake does hold the wheel or the phone.
  /\t.*\b(wheel held|held (by its brake|between the knees|down|one minute|to the part|level|upright)|thermometer held)/i,
  /checkWords\.ts\tIt held \{…\} on/,
];

test('no text of the product says what the glossary says otherwise', () => {
  const wrong = allTexts().flatMap(({ path, line, text }) =>
    right.some((place) => place.test(`${path}\t${text}`))
      ? []
      : banned
          .filter(([word]) => word.test(text))
          .map(([word, instead]) => `${path}:${line} ${word.source} (${instead}): ${text.slice(0, 90)}`),
  );
  expect(wrong).toEqual([]);
});

test('a text with a banned word is caught, whatever its case', () => {
  const caught = (text: string) => banned.some(([word]) => word.test(text));
  expect(['The joint wants 5 N·m', 'NOBODY knows', 'Chain of 98 pitches', 'Put it away'].map(caught)).toEqual(
    [true, true, true, false],
  );
  expect(['Stand-over height', 'Rotor 160 mm', 'Needs 5 N·m'].map(caught)).toEqual([false, false, false]);
});

import { expect, test } from 'vitest';
import type { Heard } from '../../../../src/mechanics/sound/pluckStream.ts';
import { type AfterSound, afterSound, freshTurn } from '../../../../src/practice/wheel/earTurn.ts';

type Sound = Exclude<Heard, { is: 'dead' }>;
const pluck = (hz: number): Sound => ({ is: 'pluck', hz });

/** What all sounds of a turn made of it, one after the other. */
function turnOf(...sounds: Sound[]): AfterSound[] {
  let turn = freshTurn;
  return sounds.map((sound) => {
    const after = afterSound(turn, sound);
    turn = after.turn;
    return after;
  });
}

test('a pluck of 440 Hz is the first of three', () => {
  const after = afterSound(freshTurn, pluck(440));
  expect(after).toEqual({ turn: { hz: [440], sentence: 'Heard. Pluck twice more.' } });
});

test('three that agree are a reading: their median', () => {
  const last = turnOf(pluck(440), pluck(440.6), pluck(440.2)).at(-1);
  expect(last?.readHz).toBe(440.2);
  expect(last?.aloud).toBeUndefined();
});

test('three that scatter are asked for again, aloud, until three agree', () => {
  const after = turnOf(pluck(440), pluck(452), pluck(440), pluck(440.3), pluck(440.1));
  expect(after.map(({ aloud }) => aloud)).toEqual([undefined, undefined, 'Again.', 'Again.', undefined]);
  expect(after[2]?.turn.sentence).toBe('The last three differ by 47 cents. Pluck again.');
  expect(after.at(-1)?.readHz).toBe(440.1);
});

test('after six that do not agree the spoke itself is in question', () => {
  const after = turnOf(...[440, 452, 440, 452, 440, 452].map(pluck)).at(-1);
  expect(after?.aloud).toContain('touches nothing');
});

test('a voice takes nothing away and is not answered; a tone outside the window is', () => {
  const voice = turnOf(pluck(440), { is: 'no-pitch', reason: 'sliding' }, pluck(440.2), pluck(440.1));
  expect(voice[1]?.turn.hz).toEqual([440]);
  expect(voice[1]?.aloud).toBeUndefined();
  expect(voice.at(-1)?.readHz).toBe(440.1);
  expect(turnOf({ is: 'no-pitch', reason: 'lower' })[0]?.aloud).toContain('lower tension');
  expect(turnOf({ is: 'no-pitch', reason: 'two-tones' })[0]?.aloud).toContain('Two tones');
});

test('silence says where to hold the phone', () => {
  expect(turnOf(pluck(440), { is: 'quiet' })[1]?.turn).toEqual({
    hz: [440],
    sentence: 'Nothing heard. Hold the phone within 30 cm of the spoke.',
  });
});

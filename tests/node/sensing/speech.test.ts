import { expect, test } from 'vitest';
import { type SpeakerDevice, speaker } from '../../../src/sensing/speech.ts';

/** A phone with or without a voice of its own; what it does is written down. */
function phone(voice: boolean, ends = true) {
  const done: string[] = [];
  let later: (() => void)[] = [];
  const device: SpeakerDevice = {
    hasVoice: () => voice,
    speak(sentence, onEnd) {
      done.push(sentence);
      if (ends) onEnd();
    },
    hush: () => void done.push('hush'),
    play(hz, eachS) {
      done.push(hz.join('-'));
      return hz.length * eachS;
    },
    after(ms, call) {
      done.push(`after ${Math.round(ms)}`);
      later.push(call);
    },
  };
  const pass = () => {
    const due = later;
    later = [];
    for (const call of due) call();
  };
  return { device, done, pass };
}

test('a voice that lies on the phone says the sentence', async () => {
  const { device, done } = phone(true);
  expect(speaker(device).speaks).toBe(true);
  await speaker(device).say('Spoke 3: 1010', 'heard');
  expect(done).toContain('Spoke 3: 1010');
});

test('without one a tone sounds: rising for heard, low twice for again', async () => {
  const { device, done, pass } = phone(false);
  expect(speaker(device).speaks).toBe(false);
  const heard = speaker(device).say('Spoke 3: 1010', 'heard');
  pass();
  await heard;
  const again = speaker(device).say('Again', 'again');
  pass();
  await again;
  expect(done).toEqual(['880-1320', 'after 180', '330-330', 'after 180']);
});

test('a voice that never says that it has finished is not waited for', async () => {
  const { device, pass } = phone(true, false);
  let over = false;
  const saying = speaker(device)
    .say('Spoke 3: 1010', 'heard')
    .then(() => {
      over = true;
    });
  await Promise.resolve();
  expect(over).toBe(false);
  pass();
  await saying;
  expect(over).toBe(true);
});

import { describe, expect, test } from 'vitest';
import { type MicrophoneDevice, openMicrophone, type SoundContext } from '../../../src/sensing/microphone.ts';

interface Staged {
  device: MicrophoneDevice;
  asked: MediaStreamConstraints[];
  stopped: number;
  closed: number;
  takenAway: () => void;
}

/** A phone whose microphone gives a rising line, at 44 100 samples a second. */
function phone(settings: Record<string, boolean> = {}, context: Partial<SoundContext> = {}): Staged {
  const staged: Staged = { device: {}, asked: [], stopped: 0, closed: 0, takenAway: () => undefined };
  const track = {
    stop: () => {
      staged.stopped += 1;
    },
    getSettings: () => settings,
    addEventListener: (_type: 'ended', callback: () => void) => {
      staged.takenAway = callback;
    },
  };
  staged.device = {
    stream: async (asked) => {
      staged.asked.push(asked);
      return { getAudioTracks: () => [track] };
    },
    audio: () => ({
      ...{ sampleRate: 44_100, currentTime: 12.5, resume: async () => undefined },
      close: async () => {
        staged.closed += 1;
      },
      tap: () => (into) => {
        for (let at = 0; at < into.length; at += 1) into[at] = at / into.length;
      },
      ...context,
    }),
  };
  return staged;
}

const refusing = (name: string): MicrophoneDevice => ({
  ...phone().device,
  stream: () => Promise.reject(new DOMException('no', name)),
});

test('the sound is asked for as it is, at the rate that the phone really has', async () => {
  const staged = phone();
  const opened = await openMicrophone(() => undefined, staged.device);
  if (!opened.ok) throw new Error(opened.reason);
  expect(staged.asked).toEqual([
    {
      audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 },
      video: false,
    },
  ]);
  expect(opened.microphone.sampleRate).toBe(44_100);
  expect(opened.microphone.filtered).toBe(false);
  const { samples, endS } = opened.microphone.read();
  expect([samples.length, samples[8192], endS]).toEqual([16_384, 0.5, 12.5]);
});

test('a phone that filters in spite of it is known', async () => {
  const opened = await openMicrophone(() => undefined, phone({ noiseSuppression: true }).device);
  expect(opened.ok && opened.microphone.filtered).toBe(true);
});

describe('no microphone', () => {
  test.each([
    ['NotAllowedError', 'refused'],
    ['SecurityError', 'refused'],
    ['NotFoundError', 'none'],
    ['NotReadableError', 'busy'],
    ['TypeError', 'unsupported'],
  ] as const)('%s: %s', async (name, reason) => {
    expect(await openMicrophone(() => undefined, refusing(name))).toEqual({ ok: false, reason });
  });
  test('a browser without one', async () => {
    expect(await openMicrophone(() => undefined, {})).toEqual({ ok: false, reason: 'unsupported' });
  });
  test('a stream without sound', async () => {
    const device = { ...phone().device, stream: async () => ({ getAudioTracks: () => [] }) };
    expect(await openMicrophone(() => undefined, device)).toEqual({ ok: false, reason: 'none' });
  });
  test('sound that cannot be taken up lets go of the microphone', async () => {
    const staged = phone({}, { resume: () => Promise.reject(new Error('no')) });
    expect(await openMicrophone(() => undefined, staged.device)).toEqual({
      ok: false,
      reason: 'unsupported',
    });
    expect([staged.stopped, staged.closed]).toEqual([1, 1]);
  });
});

test('closed, it lets go of everything; taken away by the phone, that is told, but not afterwards', async () => {
  let lost = 0;
  const staged = phone();
  const opened = await openMicrophone(() => {
    lost += 1;
  }, staged.device);
  if (!opened.ok) throw new Error(opened.reason);
  staged.takenAway();
  expect(lost).toBe(1);
  opened.microphone.close();
  staged.takenAway();
  expect([lost, staged.stopped, staged.closed]).toEqual([1, 1, 1]);
});

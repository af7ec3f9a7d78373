/** Sounds instead of words: pitches in Hz, one after the other. */
const TONES = { heard: [880, 1320], again: [330, 330] } as const;
const TONE_S = 0.09;
/** No sentence of ours takes longer to say, ms; a phone that never says that it has finished is not waited for. */
const LONGEST_MS = 6000;

/** How an answer sounds where nothing can be spoken. */
export type ToneKind = keyof typeof TONES;

/** Says things aloud, so that eyes and hands stay with the work. */
export interface Speaker {
  /** whether words are spoken; tones otherwise */
  readonly speaks: boolean;
  /** Resolves when it is over. */
  say(sentence: string, tone: ToneKind): Promise<void>;
  /** Stops at once. */
  hush(): void;
}

/** The parts of the browser this needs; a test passes its own. */
export interface SpeakerDevice {
  /** whether a voice of this language lies on the phone: no sentence is sent anywhere to be spoken */
  hasVoice(): boolean;
  speak(sentence: string, onEnd: () => void): void;
  hush(): void;
  /** plays the pitches and tells how long they take, s */
  play(hz: readonly number[], eachS: number): number;
  after(ms: number, call: () => void): void;
}

const LANGUAGE = 'en';

function browserSpeaker(): SpeakerDevice {
  const speech = 'speechSynthesis' in globalThis ? globalThis.speechSynthesis : undefined;
  const ownVoice = () =>
    speech?.getVoices().find((voice) => voice.localService && voice.lang.startsWith(LANGUAGE));
  let audio: AudioContext | undefined;
  return {
    hasVoice: () => ownVoice() !== undefined,
    speak(sentence, onEnd) {
      const words = new SpeechSynthesisUtterance(sentence);
      words.voice = ownVoice() ?? null;
      words.lang = words.voice?.lang ?? LANGUAGE;
      words.onend = onEnd;
      words.onerror = onEnd;
      speech?.speak(words);
    },
    hush: () => speech?.cancel(),
    play(hz, eachS) {
      if (!('AudioContext' in globalThis)) return 0;
      audio ??= new AudioContext();
      void audio.resume();
      for (const [at, frequency] of hz.entries()) {
        const startS = audio.currentTime + at * eachS;
        const tone = new OscillatorNode(audio, { frequency });
        const volume = new GainNode(audio, { gain: 0.2 });
        volume.gain.setValueAtTime(0.2, startS);
        volume.gain.exponentialRampToValueAtTime(0.001, startS + eachS);
        tone.connect(volume).connect(audio.destination);
        tone.start(startS);
        tone.stop(startS + eachS);
      }
      return hz.length * eachS;
    },
    after: (ms, call) => void setTimeout(call, ms),
  };
}

/**
 * A speaker: the phone's own voice where it has one that works offline, tones otherwise.
 * @param device the browser's own when left out
 */
export function speaker(device = browserSpeaker()): Speaker {
  return {
    get speaks() {
      return device.hasVoice();
    },
    say: (sentence, tone) =>
      new Promise((over) => {
        if (device.hasVoice()) {
          device.after(LONGEST_MS, over);
          device.speak(sentence, over);
        } else device.after(1000 * device.play(TONES[tone], TONE_S), over);
      }),
    hush: () => device.hush(),
  };
}

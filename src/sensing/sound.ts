/** A bell struck twice: pitch and loudness of its partials, and how long each takes to die away. */
const PARTIALS = [
  { hertz: 988, loudness: 0.5, decayS: 1.1 },
  { hertz: 1976, loudness: 0.22, decayS: 0.7 },
  { hertz: 2717, loudness: 0.14, decayS: 0.4 },
] as const;
const STRIKES_S = [0, 0.35] as const;
/** Long enough to be felt through a bench, in ms on and off. */
const SHAKE_MS = [200, 120, 200];

export interface Bell {
  /** Call from a tap: browsers let a page sound only after one. Resolves to whether it may sound now. */
  unlock(): Promise<boolean>;
  /** Whether it may sound now; a phone that locks or takes a call takes that away. */
  mayRing(): boolean;
  /** Rings, and shakes where the phone can; false when it had to stay silent. */
  ring(): boolean;
}

/** A short bell made by the browser's own synthesiser, so that no sound file is carried along. */
export function bell(): Bell {
  let audio: AudioContext | undefined;
  return {
    async unlock() {
      if (!('AudioContext' in globalThis)) return false;
      audio ??= new AudioContext();
      await audio.resume().catch(() => undefined);
      return audio.state === 'running';
    },
    mayRing: () => audio?.state === 'running',
    ring() {
      navigator.vibrate?.(SHAKE_MS);
      if (audio?.state !== 'running') return false;
      for (const strikeS of STRIKES_S)
        for (const { hertz, loudness, decayS } of PARTIALS) {
          const startS = audio.currentTime + strikeS;
          const tone = new OscillatorNode(audio, { frequency: hertz });
          const volume = new GainNode(audio, { gain: 0 });
          volume.gain.setValueAtTime(loudness, startS);
          volume.gain.exponentialRampToValueAtTime(0.001, startS + decayS);
          tone.connect(volume).connect(audio.destination);
          tone.start(startS);
          tone.stop(startS + decayS);
        }
      return true;
    },
  };
}

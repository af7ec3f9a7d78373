/** Why there is no microphone. */
export type MicrophoneFault =
  /** the person, the phone or the browser said no */
  | 'refused'
  | 'none'
  /** another app has it */
  | 'busy'
  /** this browser cannot listen here */
  | 'unsupported';

/** The parts of the browser this needs; a test passes its own. */
export interface MicrophoneDevice {
  stream?: ((asked: MediaStreamConstraints) => Promise<SoundStream>) | undefined;
  audio?: (() => SoundContext) | undefined;
}

export interface SoundTrack {
  stop(): void;
  getSettings(): { echoCancellation?: unknown; noiseSuppression?: unknown; autoGainControl?: unknown };
  addEventListener(type: 'ended', callback: () => void): void;
}

export interface SoundStream {
  getAudioTracks(): SoundTrack[];
}

export interface SoundContext {
  readonly sampleRate: number;
  readonly currentTime: number;
  resume(): Promise<void>;
  close(): Promise<void>;
  /** The last so many samples of the stream, whenever they are asked for. */
  tap(stream: SoundStream, samples: number): (into: Float32Array<ArrayBuffer>) => void;
}

/** An open microphone. */
export interface Microphone {
  /** as the sound really comes, samples a second */
  readonly sampleRate: number;
  /** the phone filters the sound in spite of being asked not to: faint plucks may be eaten */
  readonly filtered: boolean;
  /** The last third of a second, and the moment of its end; the same array every time. */
  read(): { samples: Float32Array; endS: number };
  close(): void;
}

export type OpenedMicrophone = { ok: true; microphone: Microphone } | { ok: false; reason: MicrophoneFault };

/** Everything that a phone does for speech spoils the ring of a spoke. */
const PLAIN = { echoCancellation: false, noiseSuppression: false, autoGainControl: false } as const;
/** How much is kept for one look, s. */
const KEPT_S = 0.34;

function browserDevice(): MicrophoneDevice {
  const media = navigator.mediaDevices as MediaDevices | undefined;
  return {
    stream: media && ((asked) => media.getUserMedia(asked)),
    audio: 'AudioContext' in globalThis ? browserAudio : undefined,
  };
}

/** Beyond this rate a look would not fit into what the browser keeps; it converts then. */
const HIGHEST_RATE = 96_000;

function browserAudio(): SoundContext {
  let audio = new AudioContext();
  if (audio.sampleRate > HIGHEST_RATE) {
    void audio.close();
    audio = new AudioContext({ sampleRate: HIGHEST_RATE });
  }
  return {
    ...{ sampleRate: audio.sampleRate, resume: () => audio.resume(), close: () => audio.close() },
    get currentTime() {
      return audio.currentTime;
    },
    tap(stream, samples) {
      const source = new MediaStreamAudioSourceNode(audio, { mediaStream: stream as MediaStream });
      const analyser = new AnalyserNode(audio, { fftSize: samples });
      source.connect(analyser);
      return (into) => analyser.getFloatTimeDomainData(into);
    },
  };
}

/** Names of the browser's errors. */
const faults: Record<string, MicrophoneFault> = {
  NotAllowedError: 'refused',
  SecurityError: 'refused',
  NotFoundError: 'none',
  OverconstrainedError: 'none',
  NotReadableError: 'busy',
  AbortError: 'busy',
};

/**
 * Opens the microphone, with nothing done to its sound. Call it from a tap: the browser asks the person then.
 * @param onLost called when the phone takes it away
 * @returns the microphone, or why there is none
 */
export async function openMicrophone(
  onLost: () => void,
  device: MicrophoneDevice = browserDevice(),
): Promise<OpenedMicrophone> {
  if (!device.stream || !device.audio) return { ok: false, reason: 'unsupported' };
  let stream: SoundStream;
  try {
    stream = await device.stream({ audio: { ...PLAIN, channelCount: 1 }, video: false });
  } catch (thrown) {
    return { ok: false, reason: faults[thrown instanceof Error ? thrown.name : ''] ?? 'unsupported' };
  }
  const tracks = stream.getAudioTracks();
  const [track] = tracks;
  if (!track) return { ok: false, reason: 'none' };
  const stop = () => {
    for (const each of tracks) each.stop();
  };
  let audio: SoundContext | undefined;
  try {
    audio = device.audio();
    await audio.resume();
    const { sampleRate } = audio;
    const kept = new Float32Array(2 ** Math.ceil(Math.log2(KEPT_S * sampleRate)));
    const take = audio.tap(stream, kept.length);
    const context = audio;
    let open = true;
    track.addEventListener('ended', () => {
      if (open) onLost();
    });
    const settings = track.getSettings();
    return {
      ok: true,
      microphone: {
        sampleRate,
        filtered: Object.keys(PLAIN).some((name) => settings[name as keyof typeof PLAIN] === true),
        read() {
          take(kept);
          return { samples: kept, endS: context.currentTime };
        },
        close() {
          open = false;
          stop();
          void context.close().catch(() => undefined);
        },
      },
    };
  } catch {
    stop();
    void audio?.close().catch(() => undefined);
    return { ok: false, reason: 'unsupported' };
  }
}

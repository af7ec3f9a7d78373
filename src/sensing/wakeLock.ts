/** Whether the screen is kept awake. `lost` means wanted, but taken away by the phone. */
export type AwakeState = 'held' | 'lost' | 'released' | 'unsupported';

/** The part of the browser this needs; a test passes its own. */
export interface AwakeDevice {
  wakeLock?: { request(type: 'screen'): Promise<AwakeLock> } | undefined;
  isVisible(): boolean;
  /** Calls back whenever the page comes back into sight; returns how to stop. */
  onVisible(callback: () => void): () => void;
}

export interface AwakeLock {
  release(): Promise<void>;
  addEventListener(type: 'release', callback: () => void): void;
}

export interface KeptAwake {
  readonly state: AwakeState;
  release(): Promise<void>;
}

const browserDevice = (): AwakeDevice => ({
  wakeLock: navigator.wakeLock,
  isVisible: () => document.visibilityState === 'visible',
  onVisible(callback) {
    const hear = () => {
      if (document.visibilityState === 'visible') callback();
    };
    document.addEventListener('visibilitychange', hear);
    return () => document.removeEventListener('visibilitychange', hear);
  },
});

/**
 * Keeps the screen awake until released. Phones take the lock away when the page is hidden or the battery is low;
 * that is told, and the lock is asked for again when the page comes back.
 * @param onState told each change of state, so that the screen can say it
 * @param device the browser's own when left out
 */
export function keepAwake(onState: (state: AwakeState) => void, device = browserDevice()): KeptAwake {
  let state: AwakeState = 'released';
  let lock: AwakeLock | undefined;
  let wanted = true;
  let asking = false;
  const become = (next: AwakeState) => {
    if (next === state) return;
    state = next;
    onState(next);
  };
  const ask = async () => {
    if (!wanted || lock || asking || !device.isVisible()) return;
    const { wakeLock } = device;
    if (!wakeLock) return become('unsupported');
    asking = true;
    try {
      const got = await wakeLock.request('screen');
      if (!wanted) return await got.release();
      lock = got;
      got.addEventListener('release', () => {
        lock = undefined;
        become(wanted ? 'lost' : 'released');
      });
      become('held');
    } catch {
      become('lost');
    } finally {
      asking = false;
    }
  };
  const stopListening = device.onVisible(() => void ask());
  void ask();
  return {
    get state() {
      return state;
    },
    async release() {
      wanted = false;
      stopListening();
      await lock?.release();
      lock = undefined;
      if (state !== 'unsupported') become('released');
    },
  };
}

import { FOLDER_NOTE } from './exchange/copy/folderNote.ts';
import { isDemo } from './journal/demoIds.ts';
import type { DueLine, Logbook } from './logbook.ts';
import { owedOf } from './reminders/owed.ts';
import { startPageReminders } from './reminders/pageReminders.ts';
import { stillDue, withAnew } from './reminders/unseen.ts';
import type { Beside } from './screens/App.tsx';
import type { Safety } from './screens/safety.tsx';
import { clockChanges, onOtherPage, placeInBrowser } from './sensing/clockChanges.ts';
import { type ClockJump, clockWatch } from './sensing/clockWatch.ts';
import { keepPlaces } from './sensing/places.ts';
import { bell } from './sensing/sound.ts';
import { unlockSound } from './sensing/unlockSound.ts';
import { missingWords } from './words/safetyWords.ts';
import { workerName } from './workerName.ts';

export { heldHere, safeguardsOf } from './safety.ts';

const BEAT_MS = 10_000;
const LAST_SEEN = 'clock:last-seen';
/** Below this the clock was corrected by the network, not set by hand. */
const SET_BACK_MS = 60_000;

function lastSeenMs(): number {
  try {
    return Number(localStorage.getItem(LAST_SEEN) ?? 0);
  } catch {
    return 0;
  }
}

/** The service worker, and an update when one lies ready; nothing is taken over without being asked for. */
async function registerWorker(
  tell: (update: Beside['update']) => void,
  offer: (lookForUpdate: () => Promise<boolean>) => void,
): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const { Workbox } = await import('workbox-window');
  const workbox = new Workbox(workerName('/sw.js'));
  let asked = false;
  workbox.addEventListener('waiting', () =>
    tell({
      takeOver: () => {
        asked = true;
        workbox.messageSkipWaiting();
      },
    }),
  );
  workbox.addEventListener('controlling', (event) => {
    if (asked) location.reload();
    // Another page took the update: this one goes on with the files it has, and may be loaded anew.
    else if (event.isUpdate || event.isExternal) tell({ takeOver: () => location.reload() });
  });
  const registration = await workbox.register();
  offer(async () => {
    await registration?.update();
    return Boolean(registration?.installing ?? registration?.waiting);
  });
  // One look an hour at most, when the person comes back to the page; never while the page is hidden.
  let lookedMs = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - lookedMs < 3_600_000) return;
    lookedMs = Date.now();
    void registration?.update().catch(() => {});
  });
  await askForPeriodicSync(registration);
}

/** Where the phone grants it, the worker is woken now and then; without it nothing is promised. */
async function askForPeriodicSync(registration: ServiceWorkerRegistration | undefined): Promise<void> {
  const sync = (
    registration as { periodicSync?: { register(tag: string, o: object): Promise<void> } } | undefined
  )?.periodicSync;
  if (!sync) return;
  try {
    const name = 'periodic-background-sync' as PermissionName;
    if ((await navigator.permissions.query({ name })).state !== 'granted') return;
    await sync.register('due', { minInterval: 12 * 3_600_000 });
  } catch {
    // The phone does not do it; the due list on the first screen does not depend on it.
  }
}

const ASKED_TO_KEEP = 'pinchbolt:asked-to-keep';

/**
 * Asks the browser once not to clear the logbook by itself: as soon as it holds a bike, a part or a tool that is not
 * the demo's. The answer stands in the settings, where it can be asked again.
 */
async function askToKeep(logbook: Logbook): Promise<void> {
  if (!navigator.storage?.persist || (await navigator.storage.persisted())) return;
  try {
    if (localStorage.getItem(ASKED_TO_KEEP)) return;
  } catch {
    return;
  }
  let asked = false;
  const look = async () => {
    const [bikes, parts, tools] = await Promise.all([
      logbook.read('bikes', {}),
      logbook.read('parts', { at: 'shelf' }),
      logbook.read('tools', {}),
    ]);
    const ids = [
      ...bikes.map(({ bikeId }) => bikeId),
      ...parts.map(({ partId }) => partId),
      ...tools.map(({ toolId }) => toolId),
    ];
    if (asked || ids.every(isDemo)) return;
    asked = true;
    stop();
    const kept = await navigator.storage.persist();
    localStorage.setItem(ASKED_TO_KEEP, kept ? 'kept' : 'no promise');
  };
  const lookAgain = () => void look().catch(() => {});
  const stop = logbook.watch(lookAgain);
  lookAgain();
}

/** Keeps the second copy level with the logbook, and tells when entries are missing that were there. */
async function followLogbook(
  logbook: Logbook,
  safety: Safety,
  tell: (missing: Beside['missing']) => void,
): Promise<void> {
  const { copy } = await safety.safeguards();
  copy.onState(async ({ is, missing }) => {
    // An empty logbook has a screen of its own that says so.
    const { entries } = missing.entries > 0 ? await logbook.copies.counts() : { entries: 0 };
    tell(entries > 0 ? missingWords(missing.entries, is !== 'none') : undefined);
  });
  logbook.watch(() => void copy.follow());
  await copy.follow();
}

/** Refreshes the copy in the folder that the person chose, where there is one: at the start, and when they come back. */
async function keepFolder(logbook: Logbook, safety: Safety): Promise<void> {
  if (!('showDirectoryPicker' in globalThis)) return;
  const look = async () => {
    if (!(await logbook.copies.noted(FOLDER_NOTE))) return;
    const { refreshFolder } = await import('./screens/settings/SettingsPage.tsx');
    await refreshFolder(logbook, await safety.safeguards());
  };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void look().catch(() => {});
  });
  await look();
}

/**
 * Looks for a clock that was set: while the page is open by two clocks, across a restart by the last beat. Whether
 * the waits move with it is asked once, on every page and after every reload until one of them has answered.
 */
function watchClock(logbook: Logbook, tell: (clockMoved: Beside['clockMoved']) => void): void {
  const changes = clockChanges(placeInBrowser());
  const ask = () => {
    const question = changes.open();
    if (!question) return tell(undefined);
    const { changeId, byMs } = question;
    const done = (act: () => Promise<void>) => async () => {
      await changes.answer(changeId, act);
      ask();
    };
    const shift = done(async () => {
      // The id of the change, so that one change moves the waits once even where a page dies on the way.
      const command = { type: 'shift-waits', byMs, changeId } as const;
      await logbook.run(command);
    });
    tell({ byMs, shift, leave: done(async () => {}) });
  };
  const notice = (jump: ClockJump) => void changes.notice(jump, Date.now()).then(ask);
  const before = lastSeenMs();
  if (before - Date.now() > SET_BACK_MS) notice({ byMs: Date.now() - before, afterMs: Date.now() - BEAT_MS });
  const watch = clockWatch();
  let mayHaveSlept = false;
  const beat = () => {
    const hidden = document.visibilityState !== 'visible';
    const jump = watch.look(mayHaveSlept || hidden);
    mayHaveSlept = hidden;
    if (jump) notice(jump);
    try {
      localStorage.setItem(LAST_SEEN, String(Date.now()));
    } catch {
      // Then only a jump while the page is open is noticed.
    }
  };
  ask();
  beat();
  onOtherPage(ask);
  setInterval(beat, BEAT_MS);
  document.addEventListener('visibilitychange', beat);
}

/** Names the manifest, by which the app is installed: its icons are large, and the first screen does not wait for them. */
function nameManifest(): void {
  const link = document.createElement('link');
  link.rel = 'manifest';
  link.href = '/manifest.webmanifest';
  document.head.append(link);
}

/** Starts what runs beside the screens and tells `draw` whenever any of it has something to say. */
export function runBeside(logbook: Logbook, safety: Safety, draw: (beside: Beside) => void): void {
  let beside: Beside = {};
  const tell = (change: Partial<Beside>) => {
    beside = { ...beside, ...change };
    draw(beside);
  };
  const tellDue = (lines: DueLine[]) => {
    const seen = () => tell({ fellDue: undefined });
    tell({ fellDue: lines.length > 0 ? { lines, seen } : undefined });
  };
  const ringer = bell();
  unlockSound(ringer, globalThis);
  startPageReminders(logbook, {
    onDue(lines) {
      ringer.ring();
      tellDue(withAnew(beside.fellDue?.lines ?? [], lines));
    },
    onOverdue(lines) {
      const announced = beside.fellDue?.lines ?? [];
      const left = stillDue(announced, lines);
      if (left.length < announced.length) tellDue(left);
      // Each time: another page or the worker may have set it since.
      const badge = navigator as { setAppBadge?(count: number): Promise<void> };
      void badge.setAppBadge?.(owedOf(lines).length).catch(() => {});
    },
  });
  watchClock(logbook, (clockMoved) => tell({ clockMoved }));
  nameManifest();
  keepPlaces();
  void askToKeep(logbook).catch(() => {});
  void followLogbook(logbook, safety, (missing) => tell({ missing })).catch(() => {});
  void keepFolder(logbook, safety).catch(() => {});
  void registerWorker(
    (update) => tell({ update }),
    (lookForUpdate) => tell({ lookForUpdate }),
  ).catch(() => {});
}

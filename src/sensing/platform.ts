/** What a phone can and cannot do for the logbook; `ask` means it would have to be asked for first. */
export interface Abilities {
  installed: boolean;
  notifications: 'granted' | 'denied' | 'ask' | 'absent';
  periodicSync: 'granted' | 'denied' | 'absent';
  badge: boolean;
  wakeLock: boolean;
  vibrate: boolean;
  shareFiles: boolean;
  /** Whether the browser has promised not to clear the logbook by itself. */
  persisted: boolean | 'unknown';
}

export type AbilityName = keyof Abilities;

/** Those that reminders depend on. */
export const reminderAbilities: ReadonlySet<AbilityName> = new Set([
  'notifications',
  'periodicSync',
  'badge',
  'vibrate',
]);

/** One ability in a sentence; `good` tells which drawing stands before it. */
export interface AbilityLine {
  name: AbilityName;
  good: boolean;
  sentence: string;
}

async function periodicSync(): Promise<Abilities['periodicSync']> {
  if (!('serviceWorker' in navigator) || !('PeriodicSyncManager' in globalThis)) return 'absent';
  try {
    const name = 'periodic-background-sync' as PermissionName;
    return (await navigator.permissions.query({ name })).state === 'granted' ? 'granted' : 'denied';
  } catch {
    return 'absent';
  }
}

function canShareFiles(): boolean {
  const file = new File(['x'], 'x.txt', { type: 'text/plain' });
  return navigator.canShare?.({ files: [file] }) ?? false;
}

/** Asks the browser what it can do; changes nothing and prompts for nothing. */
export async function readAbilities(): Promise<Abilities> {
  const permission = 'Notification' in globalThis ? Notification.permission : 'absent';
  const standalone = 'standalone' in navigator && navigator.standalone === true;
  return {
    installed: standalone || matchMedia('(display-mode: standalone)').matches,
    notifications: permission === 'default' ? 'ask' : permission,
    periodicSync: await periodicSync(),
    badge: 'setAppBadge' in navigator,
    wakeLock: 'wakeLock' in navigator,
    vibrate: 'vibrate' in navigator,
    shareFiles: canShareFiles(),
    persisted: (await navigator.storage?.persisted?.().catch(() => undefined)) ?? 'unknown',
  };
}

const notificationWords: Record<Abilities['notifications'], string> = {
  granted:
    'A message can be shown when something falls due, as long as the phone lets this app run at that moment.',
  denied: 'Messages are switched off for this app in the phone; open the logbook to see what is due.',
  ask: 'Messages have not been allowed yet. Without them open the logbook to see what is due.',
  absent: 'This browser cannot show messages here. Open the logbook to see what is due.',
};

/**
 * The abilities as plain sentences, the most important first.
 * @param can what `readAbilities` found
 */
export function abilityLines(can: Abilities): AbilityLine[] {
  const line = (name: AbilityName, good: boolean, yes: string, no: string): AbilityLine => ({
    name,
    good,
    sentence: good ? yes : no,
  });
  return [
    line(
      'persisted',
      can.persisted === true,
      'The browser has promised to keep the logbook until you remove it.',
      'The browser may delete this data if the phone runs low on space. Add the app to the home screen.',
    ),
    line(
      'installed',
      can.installed,
      'The logbook is on the home screen and keeps its own storage there.',
      'The logbook runs in a browser tab. Put it on the home screen before you rely on it; some phones wipe tabs unused for a week.',
    ),
    {
      name: 'notifications',
      good: can.notifications === 'granted',
      sentence: notificationWords[can.notifications],
    },
    line(
      'periodicSync',
      can.periodicSync === 'granted',
      'The phone wakes the logbook now and then, at most twice a day, to look for what is due. It is not a clock.',
      'The phone will not wake the logbook by itself. For a fixed time, set an alarm on your phone.',
    ),
    line(
      'wakeLock',
      can.wakeLock,
      'The screen can be kept on during a build.',
      'The screen cannot be kept on from here; set a longer screen time in the phone before a build.',
    ),
    line(
      'badge',
      can.badge,
      'The icon can carry the number of things due.',
      'The icon cannot carry a number on this phone.',
    ),
    line(
      'vibrate',
      can.vibrate,
      'The phone vibrates when a timer ends while the screen is on.',
      'The phone cannot vibrate here; a timer that ends only rings.',
    ),
    line(
      'shareFiles',
      can.shareFiles,
      'Files can be shared with other apps.',
      'Files are saved among the downloads; share them from there.',
    ),
  ];
}

/**
 * What this phone reports about reminders, the most important first.
 * @param can what `readAbilities` found
 */
export function reminderLines(can: Abilities): AbilityLine[] {
  const installed: AbilityLine = {
    name: 'installed',
    good: can.installed,
    sentence: can.installed
      ? 'The app is on the home screen.'
      : 'The app runs in a browser tab. Some phones show messages and numbers only for an app on the home screen.',
  };
  const lines = abilityLines(can).filter(({ name }) => reminderAbilities.has(name));
  return [
    ...lines.filter(({ name }) => name === 'notifications'),
    installed,
    ...lines.filter(({ name }) => name !== 'notifications'),
  ];
}

import {
  type ChosenFolder,
  copyToFolder,
  type FolderKept,
  folderIsBehind,
} from '../../../exchange/copy/folderCopy.ts';
import { FOLDER_NOTE } from '../../../exchange/copy/folderNote.ts';
import type { Logbook } from '../../../logbook.ts';
import { zoneNow } from '../../../sensing/zoneNow.ts';
import { reasonOf } from '../../../words/reasonOf.ts';
import type { Safeguards } from '../../safety.tsx';
import { copyContent } from './copyContent.ts';

type LeaveAsked = { mode: 'readwrite' };
/** A folder of the platform, which asks the person before it is written to. */
type Folder = ChosenFolder & {
  queryPermission?(asked: LeaveAsked): Promise<PermissionState>;
  requestPermission?(asked: LeaveAsked): Promise<PermissionState>;
};
const WRITE: LeaveAsked = { mode: 'readwrite' };

type Picker = (options: LeaveAsked & { id: string }) => Promise<Folder>;
const picker = () => (globalThis as { showDirectoryPicker?: Picker }).showDirectoryPicker;

/** Whether the person can choose a folder here. */
export const canChooseFolder = (): boolean => picker() !== undefined;

/** The folder that was chosen, if there is one. */
export const keptFolder = (logbook: Logbook): Promise<FolderKept | undefined> =>
  logbook.copies.noted<FolderKept>(FOLDER_NOTE);

/** Whether the browser would ask the person before it writes there: then nothing is written by itself. */
export async function asksFirst({ folder }: FolderKept): Promise<boolean> {
  const leave = await (folder as Folder).queryPermission?.(WRITE);
  return leave !== undefined && leave !== 'granted';
}

/** Lets the person choose a folder. @returns undefined when none was chosen */
export async function chooseFolder(logbook: Logbook): Promise<FolderKept | undefined> {
  try {
    const folder = await picker()?.({ id: 'pinchbolt', ...WRITE });
    if (!folder) return undefined;
    const kept: FolderKept = { folder, files: [] };
    await logbook.copies.note(FOLDER_NOTE, kept);
    return kept;
  } catch (thrown) {
    if ((thrown as DOMException)?.name === 'AbortError') return undefined;
    throw thrown;
  }
}

const LOCK = 'pinchbolt-folder';
/** One page of the app at a time, and one after the other in a page. */
const alone = <T>(work: () => Promise<T>): Promise<T> =>
  navigator.locks.request(LOCK, {}, work) as Promise<T>;

/** No more copies go to the folder; those in it stay. A copy that is being written is waited for. */
export const leaveFolder = (logbook: Logbook): Promise<void> =>
  alone(() => logbook.copies.note(FOLDER_NOTE, undefined));

/**
 * Writes a copy into the folder, when a copy that is being written is done.
 * @param ask whether the person may be asked for leave: only a tap may do that
 * @returns what is kept from now on, also of a try that failed; undefined where no folder is kept, or leave is lacking
 */
export async function writeFolder(
  logbook: Logbook,
  safeguards: Pick<Safeguards, 'savedCopy'>,
  ask: boolean,
): Promise<FolderKept | undefined> {
  const kept = await keptFolder(logbook);
  // Before the wait: a browser asks only right after a tap.
  if (kept && ask) await (kept.folder as Folder).requestPermission?.(WRITE);
  return alone(() => writeNow(logbook, safeguards));
}

/** What holds the lock writes. */
async function writeNow(
  logbook: Logbook,
  safeguards: Pick<Safeguards, 'savedCopy'>,
): Promise<FolderKept | undefined> {
  const kept = await keptFolder(logbook);
  if (!kept || (await asksFirst(kept))) return undefined;
  let next: FolderKept;
  try {
    const content = copyContent(logbook);
    const saved = safeguards.savedCopy(content.madeAtMs);
    const passing = { ...content, entries: saved.passing(content.entries) };
    next = (await copyToFolder(kept, passing, logbook.copies)).kept;
    saved.note();
  } catch (thrown) {
    next = { ...kept, failed: reasonOf(thrown) };
  }
  await logbook.copies.note(FOLDER_NOTE, next);
  return next;
}

/** On the first start after a build day: refreshes the copy in the folder, where leave for it is still given. */
export async function refreshFolder(
  logbook: Logbook,
  safeguards: Pick<Safeguards, 'savedCopy'>,
): Promise<void> {
  await navigator.locks.request(LOCK, { ifAvailable: true }, async (lock) => {
    const kept = lock && (await keptFolder(logbook));
    if (!kept) return;
    if (await folderIsBehind(kept, logbook.copies, { nowMs: logbook.now(), zone: zoneNow() }))
      await writeNow(logbook, safeguards);
  });
}

import { SHARED, SHARED_FILE } from '../../../exchange/copy/sharedFile.ts';

/** A file that the person opened with the app elsewhere, or shared with it. */
export interface FileFromOutside {
  file: Blob;
  /** It was dealt with: it need not be kept any longer. */
  done(): Promise<void>;
}

interface LaunchQueue {
  setConsumer(take: (launch: { files?: readonly FileSystemFileHandle[] }) => void): void;
}

/** What of the platform brings files in; each may be missing. */
export interface WaysIn {
  launchQueue?: LaunchQueue | undefined;
  caches?: CacheStorage | undefined;
}

type Take = (incoming: FileFromOutside) => void;

/** What was shared with the app: it lies there until it was dealt with, also when the app was closed meanwhile. */
export async function fileShared(caches: CacheStorage | undefined): Promise<FileFromOutside | undefined> {
  if (!caches || !(await caches.has(SHARED))) return undefined;
  const file = await (await (await caches.open(SHARED)).match(SHARED_FILE))?.blob();
  return file && { file, done: async () => void (await caches.delete(SHARED)) };
}

/**
 * Waits for files from outside.
 * @returns a function that names who takes them; one that comes while none is named waits for the next. That function
 *   gives back how to be named no longer.
 */
export function filesFromOutside({ launchQueue, caches }: WaysIn): (take: Take) => () => void {
  let takes: Take | undefined;
  let waiting: FileFromOutside | undefined;
  const bring = (incoming: FileFromOutside) => {
    if (takes) takes(incoming);
    else waiting = incoming;
  };
  launchQueue?.setConsumer(async ({ files: [handle] = [] }) => {
    const file = await handle?.getFile().catch(() => undefined);
    if (file) bring({ file, done: async () => {} });
  });
  return (take) => {
    takes = take;
    if (waiting) take(waiting);
    waiting = undefined;
    fileShared(caches).then(
      (shared) => shared && bring(shared),
      () => {},
    );
    return () => {
      if (takes === take) takes = undefined;
    };
  };
}

/** Those of this page. */
export const takeFilesFromOutside = filesFromOutside(globalThis as WaysIn);

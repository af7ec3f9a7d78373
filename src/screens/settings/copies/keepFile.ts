type Pieces = WritableStream<Uint8Array<ArrayBuffer>>;

/** A file that is being written, and how it comes to the phone when it is whole. */
export interface FileBeingWritten {
  stream: Pieces;
  /** Hands the whole file over; does nothing where it went straight to its place. */
  finish(): File | undefined;
}

interface PickedFile {
  createWritable(): Promise<Pieces>;
}

type Picker = (options: { suggestedName: string }) => Promise<PickedFile>;

/** Pieces go into files of the browser's own, so that the page need not hold them. */
function kept(name: string, type: string): FileBeingWritten {
  const pieces: Blob[] = [];
  const stream: Pieces = new WritableStream({
    write: (piece) => void pieces.push(new Blob([piece])),
  });
  return { stream, finish: () => new File(pieces, name, { type }) };
}

/**
 * A new file: at a place the person chooses where the browser asks for one, else held until it is whole.
 * @returns undefined when the person chose none
 */
export async function newFile(name: string, type: string): Promise<FileBeingWritten | undefined> {
  const pick = (globalThis as { showSaveFilePicker?: Picker }).showSaveFilePicker;
  if (!pick) return kept(name, type);
  try {
    const picked = await pick({ suggestedName: name });
    return { stream: await picked.createWritable(), finish: () => undefined };
  } catch (thrown) {
    if ((thrown as DOMException)?.name === 'AbortError') return undefined;
    // Not allowed here, as in a frame: downloading is.
    return kept(name, type);
  }
}

/** Hands a file to the browser's downloads. */
export function download(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  // Some browsers begin to read the address only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Whether the phone's share sheet takes such a file. */
export const canShare = (file: File): boolean => navigator.canShare?.({ files: [file] }) === true;

/** Opens the share sheet. @returns false when it was closed without sharing */
export async function share(file: File): Promise<boolean> {
  try {
    await navigator.share({ files: [file], title: file.name });
    return true;
  } catch (thrown) {
    if ((thrown as DOMException)?.name === 'AbortError') return false;
    throw thrown;
  }
}

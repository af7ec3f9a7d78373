import type { FileRefusal, RefusedFile } from '../words/fileRefusals.ts';

/** Thrown deep inside a file and caught by the function that was asked to read it. */
export class RefusedWhileReading extends Error {
  readonly refused: RefusedFile;
  constructor(refused: FileRefusal, about?: string) {
    super(about === undefined ? refused : `${refused}: ${about}`);
    this.refused = about === undefined ? { refused } : { refused, about };
  }
}

/** Ends the reading of a file with a named refusal. */
export function refuseFile(refused: FileRefusal, about?: string): never {
  throw new RefusedWhileReading(refused, about);
}

/** What reading gives, or the refusal it ended with. Anything else that was thrown goes on. */
export async function orRefused<T>(read: () => Promise<T>): Promise<T | RefusedFile> {
  try {
    return await read();
  } catch (thrown) {
    if (thrown instanceof RefusedWhileReading) return thrown.refused;
    throw thrown;
  }
}

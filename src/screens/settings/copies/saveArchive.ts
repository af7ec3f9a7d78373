import {
  type ArchiveContent,
  type WriteOptions,
  writeArchive,
} from '../../../exchange/archive/writeArchive.ts';
import type { CopyProgress } from '../../../exchange/copy/copy.ts';
import { copyName } from '../../../words/copyWords.ts';
import { download, newFile } from './keepFile.ts';

/**
 * Saves an archive to a place the person chooses, or to the downloads.
 * @returns how much was written; undefined when the person chose no place
 */
export async function saveArchive(
  content: ArchiveContent,
  options: WriteOptions = {},
): Promise<CopyProgress | undefined> {
  const locked = Boolean(options.passphrase);
  const name = copyName(content.madeAtMs, locked ? 'pinchbolt' : 'zip');
  const file = await newFile(name, locked ? 'application/octet-stream' : 'application/zip');
  if (!file) return undefined;
  const written = await writeArchive(content, file.stream, options);
  const whole = file.finish();
  if (whole) download(whole);
  return written;
}

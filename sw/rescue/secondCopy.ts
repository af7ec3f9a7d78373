import { writeArchive } from '../../src/exchange/archive/writeArchive.ts';
import { ofSecondCopy } from '../../src/exchange/copy/ofSecondCopy.ts';
import { copyLeft } from '../../src/mirror/copyLeft.ts';
import { countedWords } from '../../src/words/phrases.ts';
import { dayOfName, offerFile, onTap } from './tap.ts';

// A script of its own, since it is too long to lie in the worker. The rescue page works without it.

/** The second copy as an archive that the app can restore. */
async function archived(left: NonNullable<Awaited<ReturnType<typeof copyLeft>>>) {
  const pieces: Blob[] = [];
  const stream = new WritableStream<Uint8Array<ArrayBuffer>>({
    write: (piece) => void pieces.push(new Blob([piece])),
  });
  const written = await writeArchive(ofSecondCopy(left, Date.now()), stream);
  return { written, blob: new Blob(pieces, { type: 'application/zip' }) };
}

/** Puts in its place what saves the second copy, where there is one. */
async function offerSecondCopy(): Promise<void> {
  const files = await navigator.storage?.getDirectory?.().catch(() => undefined);
  const left = await copyLeft(files, globalThis.caches);
  const place = document.getElementById('saved');
  if (!left || !place) return;
  const words = document.createElement('p');
  words.textContent = `This phone also keeps a second copy of the logbook: ${countedWords({ entries: left.entries.length, photos: left.photos.length })}. Save it as well. The app can restore from it.`;
  const button = document.createElement('button');
  button.id = 'copy';
  button.type = 'button';
  button.textContent = 'Save the second copy';
  const line = document.createElement('p');
  line.id = 'copied';
  line.role = 'status';
  place.after(words, button, line);
  onTap('copy', 'copied', async (say) => {
    const { written, blob } = await archived(left);
    offerFile(blob, `pinchbolt-second-copy-${dayOfName()}.zip`);
    const lost = left.photos.length - written.photos + left.unreadable;
    const rest = lost > 0 ? ` Not readable: ${lost}.` : '';
    say(`In the file: ${countedWords(written)}.${rest}`);
  });
}

void offerSecondCopy();

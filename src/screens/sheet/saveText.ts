import { fileName } from '../../documents/fileName.ts';

/**
 * Lets the phone keep a text as a file.
 * @param called what the file is about; its name is made of it
 */
export function saveText(called: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/plain;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName(called, '.txt');
  link.click();
  // Some browsers begin to read the address only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/**
 * Lets the phone keep a text as a file.
 * @param name name of the file; signs no file system takes are left out
 */
export function saveText(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/plain;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name.replace(/[\\/:*?"<>|]/g, '');
  link.click();
  // Some browsers begin to read the address only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

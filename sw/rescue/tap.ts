/** Hands a file to the browser's downloads. */
export function offerFile(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** The day of today, as it stands in the names of files. */
export const dayOfName = () => new Date().toISOString().slice(0, 10);

/** What a button does, and the line that says how it went. */
export function onTap(
  button: string,
  line: string,
  work: (say: (words: string) => void) => Promise<void>,
): void {
  const place = document.getElementById(line) as HTMLElement;
  const say = (words: string) => {
    place.textContent = words;
  };
  document.getElementById(button)?.addEventListener('click', () => {
    say('One moment…');
    work(say).catch((thrown: Error) => say(thrown.message));
  });
}

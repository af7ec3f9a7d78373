const NAME_KEY = 'pinchbolt:phone';

/** What this phone is called; the journal goes to other phones, so the name lies beside it. */
export function readPhoneName(): string | undefined {
  try {
    return localStorage.getItem(NAME_KEY) ?? undefined;
  } catch {
    return undefined;
  }
}

/**
 * Names this phone; without a word the name is taken away.
 * @throws DOMException where the browser keeps nothing
 */
export function keepPhoneName(name: string): void {
  if (name.trim()) localStorage.setItem(NAME_KEY, name.trim());
  else localStorage.removeItem(NAME_KEY);
}

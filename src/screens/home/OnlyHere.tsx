import { useEffect, useState } from 'preact/hooks';
import { useSafety } from '../safety.tsx';

/** Lets the first screen be read first. */
const LATER_MS = 1500;

/** A quiet line where entries have long been on this phone alone. */
export function OnlyHere() {
  const safety = useSafety();
  const [words, setWords] = useState<string>();
  useEffect(() => {
    let current = true;
    const look = async () => {
      const found = await (await safety.safeguards()).oldEntriesHere();
      if (current) setWords(found);
    };
    const timer = setTimeout(() => void look().catch(() => {}), LATER_MS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [safety]);
  return words === undefined ? null : (
    <p>
      {words} <a href="#/settings">Save a copy</a>
    </p>
  );
}

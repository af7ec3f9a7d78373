import { useEffect, useState } from 'preact/hooks';
import { checkPile, type PileCheck } from '../../fit/checkPile.ts';
import type { PilePart } from '../../fit/pile.ts';

/**
 * The fit check of a pile, computed after the page is drawn; while it is computed anew the last answer stays.
 * @param key changes when the pile does
 */
export function usePileCheck(parts: readonly PilePart[] | undefined, key: string): PileCheck | undefined {
  const [check, setCheck] = useState<PileCheck>();
  useEffect(() => {
    if (!parts) return;
    const timer = setTimeout(() => setCheck(checkPile(parts)), 0);
    return () => clearTimeout(timer);
    // The key stands for the parts: they are read anew after every commit.
  }, [key]);
  return check;
}

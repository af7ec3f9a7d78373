import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { LogbookMark } from '../../mirror/mark.ts';
import { useView } from '../door.tsx';
import { Slow } from '../Slow.tsx';
import { useSafety } from '../safety.tsx';
import { FirstWords } from './FirstWords.tsx';
import type { Demo } from './useDemo.ts';

type LostProps = { mark: LogbookMark; onNew(): void };

/** No bike: a first day is greeted; where entries were and are gone, that is said instead. */
export function EmptyHome({ demo }: { demo: Demo }) {
  const { heldBefore } = useSafety();
  const size = useView('size');
  const [before, setBefore] = useState<{ mark: LogbookMark; Lost: ComponentType<LostProps> } | 'nothing'>();
  const empty = size.is === 'there' && size.value.entries === 0;
  useEffect(() => {
    if (!empty) return;
    const look = async () => {
      const mark = await heldBefore();
      setBefore(mark ? { mark, Lost: (await import('../check/Check.tsx')).Lost } : 'nothing');
    };
    look().catch(() => setBefore('nothing'));
  }, [empty, heldBefore]);
  if (size.is === 'reading' || (empty && !before)) return <Slow />;
  if (!empty || !before || before === 'nothing') return <FirstWords {...demo} />;
  const { mark, Lost } = before;
  return <Lost mark={mark} onNew={() => setBefore('nothing')} />;
}

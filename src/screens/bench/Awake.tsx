import './awake.css';
import { useEffect, useState } from 'preact/hooks';
import { Icon } from '../../controls/Icon.tsx';
import { type AwakeState, keepAwake } from '../../sensing/wakeLock.ts';

/** Keeps the screen on for as long as it is drawn, and says whether that works. */
export function Awake() {
  const [state, setState] = useState<AwakeState>('released');
  useEffect(() => {
    const kept = keepAwake(setState);
    return () => void kept.release();
  }, []);
  if (state === 'released') return null;
  if (state === 'held')
    return (
      <p class="awake small">
        <Icon name="sun" sizePx={20} />
        The screen stays on
      </p>
    );
  return (
    <p class="awake loud" role="status">
      <Icon name="moon" sizePx={24} />
      {state === 'lost'
        ? 'The screen may switch off. Your count is saved.'
        : 'This browser cannot keep the screen on. Set a longer screen time in the phone.'}
    </p>
  );
}

import type { Bell } from './sound.ts';

/** What browsers take for a touch of a person: a finger that goes down is none, one that goes up is. */
const TOUCHES = ['pointerup', 'click', 'keydown'] as const;

/**
 * Lets the bell sound from the first real touch or key on, and again whenever the phone has taken the sound away.
 * @param bell asked at each touch while it may not sound
 * @param page where touches are heard
 * @returns how to stop
 */
export function unlockSound(bell: Pick<Bell, 'unlock' | 'mayRing'>, page: EventTarget): () => void {
  const hear = () => {
    if (!bell.mayRing()) void bell.unlock();
  };
  // Heard on the way down, so that a control that stops the event does not keep the bell silent.
  for (const touch of TOUCHES) page.addEventListener(touch, hear, { capture: true, passive: true });
  return () => {
    for (const touch of TOUCHES) page.removeEventListener(touch, hear, { capture: true });
  };
}

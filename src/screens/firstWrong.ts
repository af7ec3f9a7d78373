import type { Ref } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * Brings the first field that could not be taken into sight and puts the cursor there: the button that was
 * pressed may stand a screen away from it.
 * @param tried changes with each attempt
 * @returns for the element round the fields
 */
export function useFirstWrong<T extends HTMLElement>(tried: unknown): Ref<T> {
  const form = useRef<T>(null);
  useEffect(() => {
    const field = form.current?.querySelector<HTMLElement>('[aria-invalid="true"]');
    field?.scrollIntoView({ block: 'center' });
    field?.focus({ preventScroll: true });
  }, [tried]);
  return form;
}

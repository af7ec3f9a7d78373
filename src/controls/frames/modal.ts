import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * Opens a dialog as a modal while `open`; when it goes, the focus returns to what had it before.
 * A dialog taken off the page cannot give the focus back by itself, hence the note of where it was.
 * @returns ref for the `<dialog>`
 */
export function useModal(open: boolean): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = dialog.current;
    if (!open || !shown) return;
    const before = document.activeElement;
    shown.showModal();
    return () => {
      shown.close();
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, [open]);
  return dialog;
}

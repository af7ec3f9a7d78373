import './Sheet.css';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { Icon } from '../Icon.tsx';
import { useModal } from './modal.ts';

export interface SheetProps {
  open: boolean;
  title: string;
  /** Told on close button, Escape, the phone's back gesture and a tap beside the sheet. */
  onClose: () => void;
  /** Buttons along the lower edge. */
  actions?: ComponentChildren;
  children: ComponentChildren;
}

/** A sheet laid over the card from below; the focus stays in it and returns where it came from. */
export function Sheet({ open, title, onClose, actions, children }: SheetProps) {
  const dialog = useModal(open);
  const titleId = useId();
  if (!open) return null;
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape closes through onCancel; the click is for the shade beside the sheet
    <dialog
      class="sheet"
      ref={dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onClick={(event) => {
        if (event.target === dialog.current) onClose();
      }}
    >
      <header class="sheet-head">
        <h2 class="sheet-title" id={titleId}>
          {title}
        </h2>
        <button type="button" class="sheet-close" onClick={onClose} aria-label="Close">
          <Icon name="cross" sizePx={28} />
        </button>
      </header>
      <div class="sheet-body">{children}</div>
      {actions && <div class="sheet-foot">{actions}</div>}
    </dialog>
  );
}

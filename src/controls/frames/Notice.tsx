import './Notice.css';
import type { ComponentChildren } from 'preact';
import { Icon, type IconName } from '../Icon.tsx';

export type NoticeKind = 'empty' | 'error' | 'caution' | 'note';

const icons: Record<NoticeKind, IconName> = {
  empty: 'pencil',
  error: 'stop',
  caution: 'warning',
  note: 'note',
};

export interface NoticeProps {
  kind: NoticeKind;
  /** Says what is the matter in one line. */
  title: string;
  /** Says what can be done about it. */
  children?: ComponentChildren;
  /** A button. */
  action?: ComponentChildren;
}

/** A boxed remark on the card: nothing here yet, something failed, take care, or worth knowing. */
export function Notice({ kind, title, children, action }: NoticeProps) {
  return (
    <div
      class={`notice notice-${kind}`}
      role={kind === 'error' ? 'alert' : kind === 'caution' ? 'note' : undefined}
    >
      <Icon name={icons[kind]} sizePx={28} />
      <div>
        <p class="notice-title">{title}</p>
        {children && <div class="notice-text">{children}</div>}
        {action && <div class="notice-act">{action}</div>}
      </div>
    </div>
  );
}

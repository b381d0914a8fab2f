/**
 * The frame of every dialog: title, body, a button that closes. Loaded with the first dialog.
 */
import { t } from '../language/index';
import { Dialog } from 'radix-ui';
import type { ReactNode } from 'react';
import { Notices } from './Notices';
import { useReturnFocus } from './useReturnFocus';
import './dialogs.css';

interface SheetProps {
  readonly title: string;
  readonly wide?: boolean;
  /** As large as the window allows. */
  readonly full?: boolean;
  /** Words only: the keys scroll them. */
  readonly reading?: boolean;
  readonly children: ReactNode;
  onClose(): void;
}

export function Sheet({ title, wide = false, full = false, reading = false, children, onClose }: SheetProps) {
  const returnFocus = useReturnFocus();
  return (
    <Dialog.Root open onOpenChange={(open) => !open && onClose()}>
      <Dialog.Portal>
        <Dialog.Overlay className="overlay" />
        <Dialog.Content
          className="dialog"
          data-wide={wide || undefined}
          data-full={full || undefined}
          aria-describedby={undefined}
          onCloseAutoFocus={returnFocus}
          onEscapeKeyDown={(event) => {
            // The key belongs to a field that restores by it.
            if ((event.target as Element | null)?.closest('[data-own-escape]')) event.preventDefault();
          }}
          onOpenAutoFocus={(event) => {
            event.preventDefault();
            (event.currentTarget as HTMLElement | null)?.focus();
          }}
        >
          <header className="dialog-head">
            <Dialog.Title>{title}</Dialog.Title>
            <Dialog.Close className="button" aria-label={t('Close')}>
              ×
            </Dialog.Close>
          </header>
          <Notices inDialog />
          {/* Where nothing in it takes the focus, the text itself does, so that the arrow keys scroll it. */}
          <div
            className="dialog-body"
            tabIndex={reading ? 0 : undefined}
            role={reading ? 'region' : undefined}
            aria-label={reading ? title : undefined}
          >
            {children}
          </div>
        </Dialog.Content>
      </Dialog.Portal>
    </Dialog.Root>
  );
}

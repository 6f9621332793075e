import { useEffect, useId, useRef, type ReactNode } from 'react';
import { Spoken } from './Announcer';
import { Icon } from './marks/Icon';

export interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly wide?: boolean;
  /** id of what is read out along with the title when the question comes up */
  readonly describedBy?: string;
}

/**
 * A question that must be answered before going on. Uses the browser's own modal dialog, so the
 * rest of the page cannot be reached meanwhile; Escape closes it and focus goes back to whatever
 * opened it.
 */
export function Dialog({ title, onClose, children, wide, describedBy }: DialogProps) {
  const titleId = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const opener = document.activeElement;
    const element = dialog.current;
    element?.showModal();
    // React's own autoFocus comes before the dialog is shown, so what is to be focused is marked.
    const body = element?.querySelector('.dialog-body');
    const first =
      body?.querySelector<HTMLElement>('[data-focus-first]') ??
      body?.querySelector<HTMLElement>('input:not([type=file]), select, textarea, button') ??
      // nothing to answer: it is read from its beginning
      element?.querySelector<HTMLElement>('h2');
    first?.focus();
    return () => {
      element?.close();
      if (opener instanceof HTMLElement && opener.isConnected && opener !== document.body)
        opener.focus();
      else document.getElementById('place')?.focus();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      aria-labelledby={titleId}
      aria-describedby={describedBy}
      className={wide ? 'dialog dialog-wide' : 'dialog'}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onSubmit={() =>
        // what was refused is gone to, and so read out with what is wrong
        requestAnimationFrame(() =>
          dialog.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus(),
        )
      }
    >
      <div className="dialog-head">
        <h2 id={titleId} tabIndex={-1}>
          {title}
        </h2>
        <button type="button" className="button-plain" onClick={onClose}>
          <Icon name="close" />
          <span className="only-heard">Close</span>
        </button>
      </div>
      <div className="dialog-body">{children}</div>
      <Spoken where="dialog" />
    </dialog>
  );
}

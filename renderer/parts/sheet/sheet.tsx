import { type ReactNode, useEffect, useId, useRef } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { settlePlaces } from '#renderer/parts/term/term-places.ts';
import './sheet.css';

interface SheetProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A native modal dialog: Escape closes it, focus stays inside and comes back. Mount it to open it; `data-first` takes the focus. */
export function Sheet({ title, onClose, children }: SheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const shown = dialog.current;
    if (shown !== null && !shown.open) shown.showModal();
    // Until now nothing within was seen, and so nothing was told.
    settlePlaces();
    shown?.querySelector<HTMLElement>('[data-first]')?.focus();
    return () => shown?.close();
  }, []);
  return (
    <dialog ref={dialog} className="sheet" aria-labelledby={id} onClose={onClose}>
      <header className="sheet-head">
        <h2 id={id}>
          <Explained words={title} />
        </h2>
        <button type="button" className="sheet-close" aria-label={phrase`Close`} onClick={onClose}>
          ×
        </button>
      </header>
      {children}
    </dialog>
  );
}

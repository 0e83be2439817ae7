import { type DragEvent, useEffect, useRef, useState } from 'react';
import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { type PhotoOwner, useAddPhotos } from './use-add-photos.ts';
import { words } from './words.ts';
import './photos.css';

function hasFiles({ dataTransfer }: DragEvent): boolean {
  return dataTransfer.types.includes('Files');
}

interface PhotoEntryProps {
  readonly owner: PhotoOwner;
  /** When what is shown began: no photo of it is older. */
  readonly earliest: string;
}

/** Adds photos: by choosing files, by dropping them here, or by pasting anywhere on the page. */
export function PhotoEntry({ owner, earliest }: PhotoEntryProps) {
  const { doing, faults, add } = useAddPhotos(owner, earliest);
  const [isOver, setOver] = useState(false);
  const chooser = useRef<HTMLInputElement>(null);
  const latest = useRef(add);
  latest.current = add;

  useEffect(() => {
    const onPaste = (event: ClipboardEvent) => {
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length === 0) return;
      event.preventDefault();
      void latest.current(files);
    };
    window.addEventListener('paste', onPaste);
    return () => window.removeEventListener('paste', onPaste);
  }, []);

  const onDrop = (event: DragEvent) => {
    if (!hasFiles(event)) return;
    // The window's own drop target leaves what is taken here alone.
    event.preventDefault();
    setOver(false);
    void add([...event.dataTransfer.files]);
  };

  return (
    <section
      className={isOver ? 'photo-entry is-over' : 'photo-entry'}
      aria-label={words.add}
      onDragOver={(event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={onDrop}
    >
      <div className="button-row">
        <Button disabled={doing !== null} onClick={() => chooser.current?.click()}>
          {words.add}
        </Button>
        <span className="soft">{isOver ? words.dropNow : words.drop}</span>
      </div>
      <input
        ref={chooser}
        className="unseen"
        type="file"
        accept="image/*"
        multiple
        tabIndex={-1}
        aria-label={words.add}
        onChange={({ target }) => {
          const files = [...(target.files ?? [])];
          target.value = '';
          void add(files);
        }}
      />
      <p className="soft small">
        <Explained words={words.kept} />
      </p>
      <p role="status" className={doing === null ? 'unseen' : undefined}>
        {doing}
      </p>
      {faults.map((fault) => (
        <p key={fault} className="field-fault" role="alert">
          {fault}
        </p>
      ))}
    </section>
  );
}

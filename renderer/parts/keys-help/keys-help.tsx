import { useEffect } from 'react';
import { glued } from '#renderer/format/glued.ts';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { type TermName, termName, termWords } from '#renderer/parts/term/term-words.ts';
import { keyLines, keysWords } from './keys-words.ts';
import './keys-help.css';

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    target.closest('input, textarea, select, [contenteditable], [role="grid"]') !== null
  );
}

const isMac = typeof navigator !== 'undefined' && /mac/i.test(navigator.platform);

function keyName(key: string): string {
  return key === 'Mod' ? (isMac ? '⌘' : 'Ctrl') : key;
}

/** Every key that does something and every word of the trade, on one sheet; opens by its button and by "?". */
export function KeysHelp({ isOpen, onOpen, onClose }: { isOpen: boolean; onOpen: () => void; onClose: () => void }) {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== '?' || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
      event.preventDefault();
      onOpen();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [onOpen]);
  if (!isOpen) return null;
  return (
    <Sheet title={keysWords.title} onClose={onClose}>
      <div className="keys-help">
        <h3>{keysWords.keys}</h3>
        <dl className="keys-list">
          {keyLines.map(({ keys, does }) => (
            <div key={does}>
              <dt>
                {keys.map((key) => (
                  <kbd key={key}>{keyName(key)}</kbd>
                ))}
              </dt>
              <dd>{does}</dd>
            </div>
          ))}
        </dl>
        <h3>{keysWords.words}</h3>
        <dl className="keys-list">
          {Object.entries(termWords).map(([term, { meaning }]) => (
            <div key={term}>
              <dt>{termName(term as TermName)}</dt>
              <dd>{glued(meaning)}</dd>
            </div>
          ))}
        </dl>
      </div>
    </Sheet>
  );
}

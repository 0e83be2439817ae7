import { type KeyboardEvent, useEffect, useId, useState } from 'react';
import { useLocation } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { actsFor, factsOf, findWords, kindWords, placeOf } from './find-words.ts';
import './find.css';

interface Line {
  readonly key: string;
  readonly to: string;
  readonly what: string;
  readonly name: string;
  readonly facts: string;
}

function useSettled(words: string): string {
  const [settled, setSettled] = useState(words);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(words), 80);
    return () => clearTimeout(timer);
  }, [words]);
  return settled;
}

/** What answers to the words: rows of the kitchen first, then things to do. */
function useLines(words: string): { lines: Line[]; more: number; isFailed: boolean } {
  const settled = useSettled(words.trim());
  const answer = useAnswer('kitchen:find', { words: settled }, { enabled: settled !== '', keepLast: true });
  const found = settled === '' ? [] : (answer.data?.found ?? []);
  return {
    lines: [
      ...found.map((one, place) => ({
        key: `${one.kind}${one.id ?? place}`,
        to: placeOf(one),
        what: kindWords[one.kind],
        name: one.name,
        facts: factsOf(one),
      })),
      ...actsFor(settled).map(({ name, to }) => ({ key: name, to, what: '', name, facts: '' })),
    ],
    more: settled === '' ? 0 : (answer.data?.more ?? 0),
    isFailed: answer.error !== null,
  };
}

/** A field that finds, and a list to choose from: arrows move, Enter goes, Escape closes. */
function FindSheet({ onClose }: { readonly onClose: () => void }) {
  const [words, setWords] = useState('');
  const [at, setAt] = useState(0);
  const [, go] = useLocation();
  const id = useId();
  const { lines, more, isFailed } = useLines(words);
  const chosen = Math.min(at, lines.length - 1);

  function leave(to: string) {
    onClose();
    go(to);
  }

  function onKey(event: KeyboardEvent) {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined && lines.length > 0) {
      event.preventDefault();
      setAt((chosen + step + lines.length) % lines.length);
    } else if (event.key === 'Enter' && lines[chosen] !== undefined) {
      event.preventDefault();
      leave(lines[chosen].to);
    }
  }

  return (
    <Sheet title={findWords.title} onClose={onClose}>
      <div className="find-box">
        <label htmlFor={id} className="soft small">
          {findWords.label}
        </label>
        <input
          id={id}
          data-first
          role="combobox"
          aria-expanded={lines.length > 0}
          aria-controls={`${id}-list`}
          aria-activedescendant={lines.length > 0 ? `${id}-${chosen}` : undefined}
          autoComplete="off"
          spellCheck={false}
          value={words}
          onKeyDown={onKey}
          onChange={({ target }) => {
            setWords(target.value);
            setAt(0);
          }}
        />
        <p role="status" className={lines.length === 0 ? undefined : 'unseen'}>
          {isFailed ? findWords.failed : lines.length === 0 ? findWords.none : findWords.count(lines.length)}
        </p>
        <div role="listbox" id={`${id}-list`} aria-label={findWords.results} className="find-list">
          {lines.map(({ key, to, what, name, facts }, place) => (
            // biome-ignore lint/a11y/useKeyWithClickEvents: the field takes the keys
            // biome-ignore lint/a11y/useFocusableInteractive: focus stays in the field
            <div
              key={key}
              id={`${id}-${place}`}
              role="option"
              aria-selected={place === chosen}
              className="find-line"
              onClick={() => leave(to)}
              onMouseMove={() => setAt(place)}
            >
              <span className="find-name">{name}</span>
              <span className="soft small">{[what, facts].filter(Boolean).join(': ')}</span>
            </div>
          ))}
        </div>
        {more === 0 ? null : <p className="soft small">{findWords.more(more)}</p>}
      </div>
    </Sheet>
  );
}

/** Opens by Ctrl or Cmd and K, from anywhere, and by its button. */
export function FindBox({ isOpen, onOpen, onClose }: { isOpen: boolean; onOpen: () => void; onClose: () => void }) {
  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || event.key.toLowerCase() !== 'k')
        return;
      event.preventDefault();
      onOpen();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [onOpen]);
  return isOpen ? <FindSheet onClose={onClose} /> : null;
}

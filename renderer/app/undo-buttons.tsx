import { useEffect } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { Icon } from '#renderer/parts/icon/icon.tsx';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import type { Bridge } from '#shared/carriage.ts';
import { useAnswer } from './use-answer.ts';
import { useRequest } from './use-request.ts';

/** Where the browser's own undo, of typed letters, must win. */
function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable]') !== null;
}

/** Undo and redo of the kitchen's last step, each with what it would do; also by keyboard and from the window's menu. */
export function UndoButtons({ bridge }: { readonly bridge: Bridge }) {
  const { data } = useAnswer('undo:state', {});
  const { say } = useToasts();
  const { mutate: undo, isPending: isUndoing } = useRequest('undo:last', {
    done: ({ summary }) => phrase`Undone: ${summary}`,
  });
  const { mutate: redo, isPending: isRedoing } = useRequest('redo:last', {
    done: ({ summary }) => phrase`Done again: ${summary}`,
  });
  const undoWords = data?.undo ?? null;
  const redoWords = data?.redo ?? null;
  const refused = data?.undoRefused ?? null;

  useEffect(() => {
    const act = (which: 'undo' | 'redo') => {
      if (which === 'undo' && refused !== null) say({ kind: 'fault', words: refused });
      else if (which === 'undo' && undoWords !== null) undo({});
      else if (which === 'redo' && redoWords !== null) redo({});
    };
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      act(key === 'y' || event.shiftKey ? 'redo' : 'undo');
    };
    window.addEventListener('keydown', onKey);
    const deafen = bridge.listen((event) => {
      if (event.kind === 'menu' && (event.act === 'undo' || event.act === 'redo')) act(event.act);
    });
    return () => {
      window.removeEventListener('keydown', onKey);
      deafen();
    };
  }, [bridge, undo, redo, undoWords, redoWords, refused, say]);

  return (
    <div className="undo no-print">
      <button
        type="button"
        className="undo-button"
        disabled={undoWords === null || refused !== null || isUndoing}
        title={refused ?? undefined}
        onClick={() => undo({})}
      >
        <Icon name="undo" />
        <span className="undo-words">{undoWords === null ? phrase`Nothing to undo` : phrase`Undo: ${undoWords}`}</span>
      </button>
      <button
        type="button"
        className="undo-button"
        hidden={redoWords === null}
        disabled={isRedoing}
        onClick={() => redo({})}
      >
        <Icon name="redo" />
        <span className="undo-words">
          {phrase`Redo:`} {redoWords}
        </span>
      </button>
    </div>
  );
}

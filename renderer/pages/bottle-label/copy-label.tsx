import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import { words } from './words.ts';

/** The label's words to be read, and to be taken into another program. */
export function CopyLabel({ text }: { readonly text: string }) {
  const { say } = useToasts();
  async function copy() {
    try {
      await navigator.clipboard.writeText(text);
      say({ kind: 'done', words: words.copied });
    } catch {
      say({ kind: 'fault', words: words.cantCopy });
    }
  }
  return (
    <div className="subsection">
      <h2>
        <Explained words={words.text} />
      </h2>
      <p className="bottle-text">{text}</p>
      <p className="soft small">
        {words.marked} {words.order}
      </p>
      <div className="button-row">
        <Button onClick={() => void copy()}>{words.copy}</Button>
      </div>
    </div>
  );
}

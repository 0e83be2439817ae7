import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { words } from './words.ts';

interface SmellProps {
  readonly isBusy: boolean;
  readonly onNote: (smell: string) => void;
}

/** "Smells of …": what of, in a word or two, once the chip is tapped. */
export function SmellEntry({ isBusy, onNote }: SmellProps) {
  const [text, setText] = useState('');
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  function send(event: FormEvent) {
    event.preventDefault();
    if (text.trim() !== '') onNote(text.trim());
  }
  return (
    <form className="quick-note" onSubmit={send}>
      <Field label={words.smell} hint={words.smellHint}>
        {(wiring) => (
          <input
            {...wiring}
            ref={field}
            autoComplete="off"
            maxLength={200}
            value={text}
            onChange={({ target }) => setText(target.value)}
          />
        )}
      </Field>
      <Button type="submit" disabled={isBusy}>
        {words.noteSmell}
      </Button>
    </form>
  );
}

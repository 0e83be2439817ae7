import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { readSip, sipWords } from './read-sip.ts';
import { words } from './words.ts';
import './sip-entry.css';

interface SipEntryProps {
  readonly jar: { readonly id: string; readonly label: string };
}

/** The maker's own taste of one jar in four digits, shown back in words before it is kept. */
export function SipEntry({ jar }: SipEntryProps) {
  const [text, setText] = useState('');
  const [note, setNote] = useState('');
  const [isTried, setIsTried] = useState(false);
  const log = useRequest('sips:log', { done: () => words.kept(jar.label), showsFailure: true });
  const reading = readSip(text);

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (reading.kind !== 'sip') return;
    const said = note.trim();
    log.mutate(
      { jar: jar.id, ...reading.scores, ...(said === '' ? {} : { note: said }) },
      {
        onSuccess: () => {
          setText('');
          setNote('');
          setIsTried(false);
        },
      },
    );
  }

  const isBegun = reading.kind === 'fault' && reading.message.startsWith('Still to come') && !isTried;
  const fault = reading.kind === 'fault' && !isBegun ? reading.message : log.error?.message;
  return (
    <form className="sip" onSubmit={send} noValidate>
      <Field label={words.sip(jar.label)} fault={fault}>
        {(wiring) => (
          <input
            {...wiring}
            className="sip-digits"
            inputMode="decimal"
            autoComplete="off"
            value={text}
            onChange={({ target }) => setText(target.value)}
          />
        )}
      </Field>
      <Field label={words.note}>
        {(wiring) => (
          <input
            {...wiring}
            className="sip-note"
            maxLength={4000}
            value={note}
            onChange={({ target }) => setNote(target.value)}
          />
        )}
      </Field>
      <div className="button-row">
        <Button type="submit" weight="main" disabled={log.isPending || reading.kind !== 'sip'}>
          {words.keep}
        </Button>
      </div>
      <p className="sip-read" role="status">
        {reading.kind === 'sip' ? words.reads(sipWords(reading.scores)) : null}
        {isBegun ? <span className="soft">{reading.message}</span> : null}
      </p>
    </form>
  );
}

/** How a sip is typed, said once above the fields. */
export function SipHint() {
  return (
    <p className="soft small sip-hint">
      <Explained words={words.hint} />
    </p>
  );
}

import { type FormEvent, useId, useState } from 'react';
import { readingCautions } from '#core/ferment/reading-cautions.ts';
import { parseReading } from '#core/units/parse-reading.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { Jar } from './next-act.ts';
import { readingWords } from './reading-words.ts';
import { words } from './words.ts';

/** One line for a reading: what it is understood as stands below it before anything is logged. */
export function QuickReading({ jar }: { readonly jar: Jar }) {
  const id = useId();
  const measures = useMeasures();
  const [text, setText] = useState('');
  const [isTried, setIsTried] = useState(false);
  const sayWithUndo = useSayWithUndo();
  const log = useRequest('readings:log', { showsFailure: true });
  const read = parseReading(text);
  const isEmpty = text.trim() === '';
  const fault = log.error?.message ?? (!read.ok && isTried ? read.problem.message : undefined);
  const cautions = read.ok && read.value.ph !== undefined ? readingCautions([{ hours: 0, pH: read.value.ph }]) : [];

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (!read.ok) return;
    log.mutate(
      { jar: jar.id, ...read.value },
      {
        onSuccess: () => {
          setText('');
          setIsTried(false);
          void sayWithUndo(words.logged(jar.label));
        },
      },
    );
  }

  return (
    <form className="quick-reading" onSubmit={send} noValidate>
      <label htmlFor={id} className="field-legend">
        {words.reading}
      </label>
      <div className="quick-line">
        <input
          id={id}
          autoComplete="off"
          placeholder={words.readingHint}
          aria-describedby={`${id}-back`}
          aria-invalid={fault === undefined ? undefined : true}
          value={text}
          onChange={({ target }) => {
            setText(target.value);
            setIsTried(false);
            if (log.error !== null) log.reset();
          }}
        />
        <Button type="submit" disabled={log.isPending}>
          {words.log}
        </Button>
      </div>
      <p id={`${id}-back`} className={fault === undefined ? 'soft' : 'field-fault'} role="status">
        {fault ??
          (read.ok ? `${words.readBack} ${readingWords(read.value, measures)}` : isEmpty ? '' : read.problem.message)}
      </p>
      {cautions.map(({ code, message, basis }) => (
        <Caution key={code} basis={basis}>
          {message}
        </Caution>
      ))}
    </form>
  );
}

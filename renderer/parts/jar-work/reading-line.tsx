import { type FormEvent, useId, useState } from 'react';
import { hydrometerCaution, refractometerCaution } from '#core/ferment/reading-cautions.ts';
import { parseReading } from '#core/units/parse-reading.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { amountOf, isClear, typedTemperature } from '#renderer/format/typed-amount.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useExplainedLabel } from '#renderer/parts/term/explained-label.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { GravityPart } from './gravity-part.tsx';
import { gravityReading } from './gravity-reading.ts';
import { readingWords } from './reading-words.ts';
import { usePhCautions } from './use-ph-cautions.ts';
import { useStem } from './use-stem.ts';
import type { Watched } from './watched.ts';
import { words } from './words.ts';

/** One line for a reading: what it is understood as, corrected and cautioned, stands below it before anything is logged. */
export function ReadingLine({ watched }: { readonly watched: Watched }) {
  const id = useId();
  const label = useExplainedLabel<HTMLLabelElement>(words.reading);
  const measures = useMeasures();
  const [text, setText] = useState('');
  const [isTried, setIsTried] = useState(false);
  const [stem, setStem] = useStem(measures.system);
  const sample = useAmount('', (typed) => typedTemperature(typed, measures.system));
  const sayWithUndo = useSayWithUndo();
  const log = useRequest('readings:log', { showsFailure: true });
  const read = parseReading(text);
  const value = read.ok ? read.value : null;
  const gravity =
    value?.sg === undefined
      ? null
      : gravityReading(value.sg, amountOf(sample.typed) ?? value.temperature_C, stem, measures);
  const cautions = [
    ...usePhCautions(watched, value?.ph),
    ...(value?.brix === undefined ? [] : [refractometerCaution()]),
    ...(gravity === null ? [] : [hydrometerCaution()]),
  ];
  const isEmpty = text.trim() === '';
  const fault = log.error?.message ?? (!read.ok && isTried ? read.problem.message : undefined);

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (value === null || gravity?.isFault === true || (gravity !== null && !isClear(sample.typed))) return;
    log.mutate(
      {
        ...watched.owner,
        ...value,
        ...(gravity === null ? {} : { sg: gravity.sg }),
        ...(gravity?.note == null ? {} : { note: gravity.note }),
      },
      {
        onSuccess: () => {
          setText('');
          sample.setText('');
          setIsTried(false);
          void sayWithUndo(words.logged(watched.name));
        },
      },
    );
  }

  return (
    <form className="quick-reading" onSubmit={send} noValidate>
      <label {...label.mark} htmlFor={id} className="field-legend">
        {label.words}
      </label>
      <div className="quick-line">
        <input
          id={id}
          autoComplete="off"
          placeholder={words.readingHint}
          aria-describedby={[`${id}-back`, label.describedBy ?? ''].join(' ').trim()}
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
      {gravity === null ? null : (
        <GravityPart
          stem={stem}
          setStem={setStem}
          sample={sample}
          isInLine={value?.temperature_C !== undefined}
          gravity={gravity}
        />
      )}
      {value?.ph === undefined ? null : (
        <p className="soft small">
          <Explained words={words.phGuidance} />
        </p>
      )}
      {cautions.map(({ code, message, basis }) => (
        <Caution key={code} basis={basis}>
          {message}
        </Caution>
      ))}
    </form>
  );
}

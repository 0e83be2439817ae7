import { useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { putOffSpans } from '#shared/closed-lists.ts';
import { type Need, needTitle, ownZone } from './need.ts';
import { spanWordsOf, words } from './words.ts';

/** Puts a need off: for how long, and why. */
export function PutOffPart({ need, onDone }: { readonly need: Need; readonly onDone: () => void }) {
  const [reason, setReason] = useState('');
  const sayWithUndo = useSayWithUndo();
  const putOff = useRequest('today:putOff');
  const { kind, jars, base, culture, tasting } = need;

  function put(span: (typeof putOffSpans)[number]) {
    const said = reason.trim();
    putOff.mutate(
      {
        need: kind,
        span,
        zone: ownZone(),
        ...(jars.length === 0 ? {} : { jars: jars.map(({ id }) => id) }),
        ...(base === null ? {} : { base: base.id }),
        ...(culture === null ? {} : { culture: culture.id }),
        ...(tasting === null ? {} : { tasting: tasting.id }),
        ...(said === '' ? {} : { reason: said }),
      },
      {
        onSuccess: ({ until }) => {
          onDone();
          void sayWithUndo(words.putOff(needTitle(need), dayAndTime(until)));
        },
      },
    );
  }

  return (
    <div className="need-put-off">
      <Field label={words.why}>
        {(wiring) => (
          <input
            {...wiring}
            autoComplete="off"
            maxLength={400}
            value={reason}
            onChange={({ target }) => setReason(target.value)}
          />
        )}
      </Field>
      <fieldset className="button-row">
        <legend className="unseen">{words.forHowLong}</legend>
        {putOffSpans.map((span) => (
          <Button key={span} disabled={putOff.isPending} onClick={() => put(span)}>
            {spanWordsOf[span]}
          </Button>
        ))}
      </fieldset>
    </div>
  );
}

/** Brings back what was put off. */
export function WakeButton({ need }: { readonly need: Need }) {
  const wake = useRequest('today:wake', { done: () => words.woken(needTitle(need)) });
  if (need.putOff === null) return null;
  const { ids } = need.putOff;
  return (
    <Button
      disabled={wake.isPending}
      aria-label={`${words.wake}: ${needTitle(need)}`}
      onClick={() => wake.mutate({ putOffs: ids })}
    >
      {words.wake}
    </Button>
  );
}

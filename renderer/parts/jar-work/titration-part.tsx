import { type FormEvent, useState } from 'react';
import { endPointsInShort, titrationEndPoints } from '#core/ferment/acidity.ts';
import { titrantCaution } from '#core/ferment/reading-cautions.ts';
import { type TitrationAcid, titrationAcids } from '#core/units/parse-reading.ts';
import { phrase } from '#core/words/phrase.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { amountOf, typedWithin } from '#renderer/format/typed-amount.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { ExplainedSummary } from '#renderer/parts/term/explained-label.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { type EndPoint, titrationResult } from './titration.ts';
import type { Watched } from './watched.ts';
import { words } from './words.ts';

const said = words.titration;
const sampleRange = { unit: 'mL', low: 0, high: 1000, isAbove: true, example: '20' };
const titrantRange = { unit: 'mL', low: 0, high: 1000, example: '6.2' };
const normalityRange = { unit: 'N', low: 0.001, high: 2, example: '0.1' };

const acidNames: Readonly<Record<TitrationAcid, string>> = {
  lactic: phrase`lactic`,
  acetic: phrase`acetic`,
  citric: phrase`citric`,
  malic: phrase`malic`,
  tartaric: phrase`tartaric`,
};

/** Titratable acidity from a titration, worked out and logged as a reading with how it was done. */
export function TitrationPart({ watched }: { readonly watched: Watched }) {
  const sample = useAmount('', (text) => typedWithin(text, sampleRange));
  const titrant = useAmount('', (text) => typedWithin(text, titrantRange));
  const normality = useAmount('0.1', (text) => typedWithin(text, normalityRange));
  const [acid, setAcid] = useState<TitrationAcid>('lactic');
  const [endPoint, setEndPoint] = useState<EndPoint>('aoac');
  const [isTried, setIsTried] = useState(false);
  const sayWithUndo = useSayWithUndo();
  const log = useRequest('readings:log', { showsFailure: true });
  const [sample_mL, titrant_mL, strength] = [sample, titrant, normality].map(({ typed }) => amountOf(typed));
  const result =
    sample_mL === undefined || titrant_mL === undefined || strength === undefined
      ? null
      : titrationResult({ sample_mL, titrant_mL, normality: strength, acid, endPoint });
  const fault = log.error?.message ?? (result !== null && !result.ok ? result.message : undefined);

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (result === null || !result.ok) return;
    log.mutate(
      { ...watched.owner, acidity: { g_per_L: result.g_per_L, as: acid }, note: result.note },
      {
        onSuccess: () => {
          sample.setText('');
          titrant.setText('');
          setIsTried(false);
          void sayWithUndo(words.logged(watched.name));
        },
      },
    );
  }

  return (
    <details className="titration">
      <ExplainedSummary words={said.title} />
      <form className="quick-reading" onSubmit={send} noValidate>
        <div className="field-grid">
          <AmountField label={said.sample} amount={sample} isTried={isTried} missing={said.missing} />
          <AmountField label={said.titrant} amount={titrant} isTried={isTried} missing={said.missing} />
          <AmountField
            label={said.normality}
            hint={said.normalityHint}
            amount={normality}
            isTried={isTried}
            missing={said.missing}
          />
          <Field label={said.acid} hint={said.acidHint}>
            {(wiring) => (
              <select {...wiring} value={acid} onChange={({ target }) => setAcid(target.value as TitrationAcid)}>
                {titrationAcids.map((one) => (
                  <option key={one} value={one}>
                    {acidNames[one]}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <Field label={said.endPoint} hint={said.endPointHint(titrationEndPoints[endPoint])}>
            {(wiring) => (
              <select {...wiring} value={endPoint} onChange={({ target }) => setEndPoint(target.value as EndPoint)}>
                {Object.entries(endPointsInShort).map(([value, name]) => (
                  <option key={value} value={value}>
                    {name}
                  </option>
                ))}
              </select>
            )}
          </Field>
        </div>
        <p role="status" className={fault === undefined ? undefined : 'field-fault'}>
          {fault ?? (result?.ok ? result.said : '')}
        </p>
        <Caution basis={titrantCaution().basis}>{titrantCaution().message}</Caution>
        <div className="button-row">
          <Button type="submit" disabled={log.isPending}>
            {said.log}
          </Button>
        </div>
      </form>
    </details>
  );
}

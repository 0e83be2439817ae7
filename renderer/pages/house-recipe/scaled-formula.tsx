import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { additionWords, coverWords, daysWords } from '#renderer/format/words.ts';
import { faultAt } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Version = ValueOf<'recipes:open'>['versionList'][number];

interface ScaledFormulaProps {
  readonly recipe: string;
  readonly version: Version;
}

/** The version's formula, for as much as is to be made. */
export function ScaledFormula({ recipe, version }: ScaledFormulaProps) {
  const measures = useMeasures();
  const [typed, setTyped] = useState(String(Math.round(version.volume_mL)));
  const read = typedNumber(typed);
  const isVolume = read.kind === 'number' && read.value > 0;
  const scaled = useAnswer(
    'recipes:scale',
    { recipe, version: version.number, volume_mL: isVolume ? read.value : version.volume_mL },
    { keepLast: true },
  );
  const { formula } = version;
  const base_mL = scaled.data?.base_mL ?? version.base_mL;
  const additions = scaled.data?.additions ?? formula.additions;
  const kept = [
    daysWords(formula.days),
    ...(formula.cover === null ? [] : [coverWords[formula.cover]]),
    ...(formula.temperature_C === null ? [] : [`at ${measures.temperature(formula.temperature_C)}`]),
  ];
  return (
    <div className="recipe-card">
      <div className="recipe-volume no-print">
        <Field label={words.volume} fault={isVolume ? faultAt(scaled.error, 'volume_mL') : words.notVolume}>
          {(wiring) => (
            <input {...wiring} inputMode="decimal" value={typed} onChange={({ target }) => setTyped(target.value)} />
          )}
        </Field>
      </div>
      <ol className="recipe-lines figures" aria-live="polite">
        <li>
          {measures.volume(base_mL)} {words.base.toLowerCase()}
        </li>
        {additions.map((addition, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same fruit may be weighed in twice
          <li key={place}>{additionWords(addition, measures)}</li>
        ))}
        <li>{kept.join(', ')}</li>
      </ol>
    </div>
  );
}

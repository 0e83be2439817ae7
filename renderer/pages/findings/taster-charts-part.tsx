import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { attributesInOrder } from '#renderer/charts/attribute-colour.ts';
import { AgreementChart, ScaleUseChart } from '#renderer/charts/taster-charts.tsx';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { words } from './words.ts';

interface TasterChartsProps {
  readonly trial: string;
  /** Shown first, where it was scored. */
  readonly liking: string | null;
}

/** How far the tasters go together and how each used the scale, one attribute at a time. */
export function TasterCharts({ trial, liking }: TasterChartsProps) {
  const found = useAnswer('findings:tasters', { trial });
  const [chosen, setChosen] = useState<string | null>(null);
  return (
    <Answer of={found}>
      {({ attributes }) => {
        const names = attributesInOrder(attributes.map(({ attribute }) => attribute));
        const shown =
          attributes.find(({ attribute }) => attribute === chosen) ??
          attributes.find(({ attribute }) => attribute === (liking ?? names[0])) ??
          attributes[0];
        if (shown === undefined) return null;
        return (
          <>
            {names.length < 2 ? null : (
              <div className="field-grid no-print">
                <Field label={words.byAttribute}>
                  {(wiring) => (
                    <select {...wiring} value={shown.attribute} onChange={({ target }) => setChosen(target.value)}>
                      {names.map((name) => (
                        <option key={name} value={name}>
                          {capital(name)}
                        </option>
                      ))}
                    </select>
                  )}
                </Field>
              </div>
            )}
            <div className="charts">
              <AgreementChart of={shown} />
              <ScaleUseChart of={shown} />
            </div>
          </>
        );
      }}
    </Answer>
  );
}

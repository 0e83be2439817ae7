import { lazy, Suspense, useRef, useState } from 'react';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { TakeChart } from '#renderer/charts/take-chart.tsx';
import { glued } from '#renderer/format/glued.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { csvText, tabbedText } from '#shared/csv-text.ts';
import { errorBasis, neededWords, type Panel, sightSentence, tooFewWords } from './panel-sight-words.ts';
import './panel-sight.css';

/** Comes with the drawing library, which the first screen does without. */
const SightDrawing = lazy(async () => ({ default: (await import('./sight-drawing.tsx')).SightDrawing }));

const title = phrase`What the panel will see`;

/** Where the drawing ends, in points. */
const upTo = 8;
const power = 0.8;

/** What a panel will be able to see, moving while its numbers change: sentence, curve, table, tasters for a chosen gap. */
export function PanelSight(panel: Panel) {
  const { samples, tasters, replicates } = panel;
  const few = tooFewWords(panel);
  const [gapText, setGapText] = useState('2');
  const typed = typedNumber(gapText);
  const gap = typed.kind === 'number' && typed.value > 0 && typed.value <= 100 ? typed.value : null;
  const experience = useAnswer('panel:experience', {});
  const drawing = useRef<HTMLDivElement>(null);
  const basis = errorBasis(experience.data);
  const sight = useAnswer(
    'panel:sight',
    { samples, tasters, replicates, errorSd: basis.errorSd, power, upTo, differences: gap === null ? [] : [gap] },
    { enabled: few === null && !experience.isPending, keepLast: true },
  );
  if (few !== null) {
    return (
      <p className="sight-first" role="status">
        {few}
      </p>
    );
  }
  return (
    <Answer of={sight}>
      {(value) => (
        <figure className="sight">
          <figcaption role="status">
            <p className="sight-first">{glued(sightSentence(panel, value.detectableDifference))}</p>
            <p className="soft">{phrase`“Most likely” is 8 times in 10. A smaller gap may be there and go unseen: not seen is not “the same”.`}</p>
          </figcaption>
          <div ref={drawing} className="sight-drawing">
            <Suspense fallback={null}>
              <SightDrawing sight={value} upTo={upTo} power={power} />
            </Suspense>
          </div>
          <div className="sight-needed">
            <Field
              label={phrase`Tasters for a gap of (points)`}
              fault={gap === null ? phrase`A number of points above 0, up to 100.` : undefined}
            >
              {(wiring) => (
                <input
                  {...wiring}
                  inputMode="decimal"
                  value={gapText}
                  onChange={({ target }) => setGapText(target.value)}
                />
              )}
            </Field>
            <p role="status">
              {value.tastersNeededFor.map(({ difference, tasters: needed }) =>
                difference === gap ? neededWords(needed, tasters) : null,
              )}
            </p>
          </div>
          <details>
            <summary>{phrase`The chance to see a gap, as a table`}</summary>
            <DataTable
              caption={phrase`The chance to see a gap`}
              rows={value.curve.filter(({ difference }) => difference > 0 && Number.isInteger(round(difference)))}
              rowKey={({ difference }) => String(difference)}
              columns={[
                { head: phrase`Gap (points)`, cell: ({ difference }) => shownNumber(round(difference)) },
                { head: phrase`Chance to see it`, cell: (row) => `${Math.round(row.power * 100)} %`, isFigure: true },
              ]}
            />
          </details>
          <TakeChart
            picture={{
              title,
              sentence: sightSentence(panel, value.detectableDifference),
              key: `Line: the chance to see a gap of that size. Diamond: seen 8 times in 10. ${basis.words}`,
            }}
            figures={tabbedText(rowsOf(value.curve))}
            csv={() => csvText(rowsOf(value.curve))}
            drawing={drawing}
          />
          <p className="small soft">{glued(basis.words)}</p>
        </figure>
      )}
    </Answer>
  );
}

/** The curve as rows for a spreadsheet. */
function rowsOf(curve: readonly { readonly difference: number; readonly power: number }[]): (string | number)[][] {
  return [
    [phrase`gap (points)`, phrase`chance to see it`],
    ...curve.map(({ difference, power: chance }) => [round(difference), Number(chance.toPrecision(6))]),
  ];
}

function round(difference: number): number {
  return Number(difference.toFixed(6));
}

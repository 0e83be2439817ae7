import { useMeasures } from '#renderer/format/use-measures.ts';
import { daysWords } from '#renderer/format/words.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ToolName } from './measured-formula.ts';
import type { Make, Version } from './use-make.ts';
import { words } from './words.ts';

/** How much is to be made, and what to pour and weigh in for it. */
export function MakeForm({ make, version }: { readonly make: Make; readonly version: Version }) {
  const measures = useMeasures();
  const { lines, sugarRemark } = make.measured;
  const isMoved = sugarRemark !== null || lines.some(({ remark }) => remark !== null);
  return (
    <div className="make">
      <div className="field-grid">
        <AmountField
          label={words.volume}
          hint={words.volumeHint[measures.system]}
          amount={make.amount}
          isTried
          missing={words.notVolume}
          fault={make.fault}
        />
        <Field label={words.measure}>
          {(wiring) => (
            <select {...wiring} value={make.tool} onChange={({ target }) => make.setTool(target.value as ToolName)}>
              {Object.entries(words.tools).map(([tool, name]) => (
                <option key={tool} value={tool}>
                  {name}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <ol className="recipe-lines figures" aria-live="polite">
        <li>
          {measures.volume(make.base_mL)} {words.base}
        </li>
        {lines.map((line) => (
          <li key={line.key}>
            {line.words}
            {line.remark === null ? null : <span className="soft small"> {line.remark}</span>}
          </li>
        ))}
        <li>{daysWords(version.formula.days)}</li>
      </ol>
      {sugarRemark === null ? null : <p className="soft small">{sugarRemark}</p>}
      {isMoved || make.tool === 'exact' || lines.length === 0 ? null : (
        <p className="soft small">
          <Explained words={words.nothingMoved} />
        </p>
      )}
    </div>
  );
}

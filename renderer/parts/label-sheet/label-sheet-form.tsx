import { Field } from '#renderer/parts/field/field.tsx';
import { gridDraft, type LabelDraft, type LabelMedium, withMedium, withUnit } from './label-draft.ts';
import { type GridName, type LabelField, type LengthUnit, labelFields } from './label-grids.ts';
import type { LabelFaults } from './read-label-draft.ts';
import { words } from './words.ts';

interface LabelSheetFormProps {
  readonly draft: LabelDraft;
  readonly faults: LabelFaults;
  /** The grids offered, the usual one first. */
  readonly grids: readonly [GridName, ...GridName[]];
  readonly onChange: (draft: LabelDraft) => void;
}

/** What the labels are printed on, and where they lie on it. */
export function LabelSheetForm({ draft, faults, grids, onChange }: LabelSheetFormProps) {
  const isStrip = draft.medium === 'strip';
  const asked: readonly LabelField[] = isStrip ? ['width', 'height'] : draft.grid === 'own' ? labelFields : [];

  function chooseGrid(grid: GridName | 'own') {
    if (draft.medium === 'strip') return;
    onChange(grid === 'own' ? { ...draft, grid } : gridDraft(draft.medium, grid));
  }

  return (
    <>
      <div className="field-grid">
        <Field label={words.medium}>
          {(wiring) => (
            <select
              {...wiring}
              value={draft.medium}
              onChange={({ target }) => onChange(withMedium(draft, target.value as LabelMedium, grids[0]))}
            >
              {Object.entries(words.media).map(([medium, name]) => (
                <option key={medium} value={medium}>
                  {name}
                </option>
              ))}
            </select>
          )}
        </Field>
        {isStrip ? null : (
          <Field label={words.grid}>
            {(wiring) => (
              <select
                {...wiring}
                value={draft.grid}
                onChange={({ target }) => chooseGrid(target.value as GridName | 'own')}
              >
                {grids.map((grid) => (
                  <option key={grid} value={grid}>
                    {words.gridNamed(grid)}
                  </option>
                ))}
                <option value="own">{words.own}</option>
              </select>
            )}
          </Field>
        )}
        {asked.length === 0 ? null : (
          <Field label={words.unit}>
            {(wiring) => (
              <select
                {...wiring}
                value={draft.unit}
                onChange={({ target }) => onChange(withUnit(draft, target.value as LengthUnit))}
              >
                {Object.entries(words.units).map(([unit, name]) => (
                  <option key={unit} value={unit}>
                    {name}
                  </option>
                ))}
              </select>
            )}
          </Field>
        )}
        {isStrip ? null : (
          <Field label={words.first} hint={words.firstHint} fault={faults.first}>
            {(wiring) => (
              <input
                {...wiring}
                type="text"
                inputMode="numeric"
                value={draft.first}
                onChange={({ target }) => onChange({ ...draft, first: target.value })}
              />
            )}
          </Field>
        )}
      </div>
      {asked.length === 0 ? null : (
        <div className="field-grid">
          {asked.map((field) => (
            <Field
              key={field}
              label={
                field === 'columns' || field === 'rows'
                  ? words.fields[field]
                  : words.withUnit(words.fields[field], draft.unit)
              }
              fault={faults[field]}
            >
              {(wiring) => (
                <input
                  {...wiring}
                  type="text"
                  inputMode="decimal"
                  value={draft.typed[field]}
                  onChange={({ target }) => onChange({ ...draft, typed: { ...draft.typed, [field]: target.value } })}
                />
              )}
            </Field>
          ))}
        </div>
      )}
    </>
  );
}

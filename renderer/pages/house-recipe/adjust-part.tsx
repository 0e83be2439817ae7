import { useState } from 'react';
import { amountOf, typedStrength, typedVolume } from '#renderer/format/typed-amount.ts';
import { type Measures, useMeasures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { diluteAdvice, sugarOfRow, sweetenAdvice } from './adjust-words.ts';
import { AdviceLine } from './advice-line.tsx';
import { BlendPart } from './blend-part.tsx';
import type { PantryRow } from './known-additions.ts';
import { words } from './words.ts';

const said = words.adjust;

interface AdjustProps {
  readonly pantry: readonly PantryRow[];
  readonly volume_mL: number;
}

function useDrink(volume_mL: number, measures: Measures) {
  const volume = useAmount(measures.volume(volume_mL), (text) => typedVolume(text, measures.system));
  const now = useAmount('', (text) => typedStrength(text, measures.system));
  const target = useAmount('', (text) => typedStrength(text, measures.system));
  const [there, from, to] = [amountOf(volume.typed), amountOf(now.typed), amountOf(target.typed)];
  return {
    fields: { volume, now, target },
    drink:
      there === undefined || from === undefined || to === undefined
        ? null
        : { volume_mL: volume.isChanged ? there : volume_mL, now_g_per_L: from, target_g_per_L: to },
  };
}

function DrinkFields({ fields, measures }: Pick<ReturnType<typeof useDrink>, 'fields'> & { measures: Measures }) {
  return (
    <>
      <AmountField label={said.volume} amount={fields.volume} />
      <AmountField label={said.now} hint={said.nowHint[measures.system]} amount={fields.now} />
      <AmountField label={said.target} amount={fields.target} />
    </>
  );
}

function Sweeten({ pantry, volume_mL }: AdjustProps) {
  const measures = useMeasures();
  const { fields, drink } = useDrink(volume_mL, measures);
  const sweeteners = pantry.filter((row) => row.kind === 'sweetener' || (row.kind === 'juice' && sugarOfRow(row)));
  const [chosen, setChosen] = useState('sugar');
  const row = sweeteners.find(({ name }) => name === chosen) ?? sweeteners[0];
  const advice = drink === null || row === undefined ? null : sweetenAdvice(drink, row, measures);
  return (
    <div className="make">
      <div className="field-grid">
        <DrinkFields fields={fields} measures={measures} />
        <Field label={said.sweetener}>
          {(wiring) => (
            <select {...wiring} value={row?.name ?? ''} onChange={({ target }) => setChosen(target.value)}>
              {sweeteners.map(({ name }) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      <AdviceLine advice={advice} />
      <p className="soft small">
        <Explained words={said.sweetenBasis} />
      </p>
      {advice?.isWorked ? <Caution basis={said.pressureBasis}>{said.pressure}</Caution> : null}
    </div>
  );
}

function Dilute({ volume_mL }: Pick<AdjustProps, 'volume_mL'>) {
  const measures = useMeasures();
  const { fields, drink } = useDrink(volume_mL, measures);
  return (
    <div className="make">
      <div className="field-grid">
        <DrinkFields fields={fields} measures={measures} />
      </div>
      <AdviceLine advice={drink === null ? null : diluteAdvice(drink, measures)} />
      <p className="soft small">
        <Explained words={said.diluteBasis} />
      </p>
    </div>
  );
}

/** Three small sums for a drink that is not yet as sweet as it should be. */
export function AdjustPart({ pantry, volume_mL }: AdjustProps) {
  return (
    <div className="adjust">
      <details>
        <summary>{said.sweeten}</summary>
        <Sweeten pantry={pantry} volume_mL={volume_mL} />
      </details>
      <details>
        <summary>{said.dilute}</summary>
        <Dilute volume_mL={volume_mL} />
      </details>
      <details>
        <summary>{said.blend}</summary>
        <BlendPart pantry={pantry} />
      </details>
    </div>
  );
}

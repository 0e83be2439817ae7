import { useState } from 'react';
import { amountOf, typedStrength, typedVolume } from '#renderer/format/typed-amount.ts';
import { type Measures, useMeasures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { type Advice, blendAdvice, sugarOfRow } from './adjust-words.ts';
import { AdviceLine } from './advice-line.tsx';
import type { PantryRow } from './known-additions.ts';
import { words } from './words.ts';

const said = words.adjust;
const elsewhere = '';

function useJuice(juices: readonly PantryRow[], first: string, which: string, measures: Measures) {
  const [chosen, setChosen] = useState(first);
  const sugar = useAmount('', (text) => typedStrength(text, measures.system));
  const row = juices.find(({ name }) => name === chosen);
  const known = row === undefined ? null : sugarOfRow(row);
  return {
    row,
    chosen,
    setChosen,
    sugar,
    isTyped: known === null,
    name: row?.name ?? which,
    sugar_g_per_L: known ?? amountOf(sugar.typed) ?? null,
  };
}

interface JuiceFieldsProps {
  readonly label: string;
  readonly which: string;
  readonly juices: readonly PantryRow[];
  readonly juice: ReturnType<typeof useJuice>;
  readonly measures: Measures;
}

function JuiceFields({ label, which, juices, juice, measures }: JuiceFieldsProps) {
  const isUnknown = juice.row !== undefined && juice.isTyped;
  return (
    <>
      <Field
        label={label}
        hint={juice.isTyped || juice.sugar_g_per_L === null ? undefined : measures.sugar(juice.sugar_g_per_L)}
      >
        {(wiring) => (
          <select {...wiring} value={juice.chosen} onChange={({ target }) => juice.setChosen(target.value)}>
            {juices.map(({ name }) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
            <option value={elsewhere}>{said.typed}</option>
          </select>
        )}
      </Field>
      {juice.isTyped ? (
        <AmountField
          label={said.itsSugar(juice.row?.name ?? which)}
          hint={isUnknown ? said.sugarUnknown(juice.name) : said.nowHint[measures.system]}
          amount={juice.sugar}
        />
      ) : null}
    </>
  );
}

/** Two juices blended to a wanted sugar. */
export function BlendPart({ pantry }: { readonly pantry: readonly PantryRow[] }) {
  const measures = useMeasures();
  const juices = pantry.filter(({ kind }) => kind === 'juice');
  const first = useJuice(juices, 'apple juice', said.firstOne, measures);
  const second = useJuice(juices, 'lemon juice', said.secondOne, measures);
  const target = useAmount('', (text) => typedStrength(text, measures.system));
  const volume = useAmount(measures.system === 'us' ? '1 qt' : '1 L', (text) => typedVolume(text, measures.system));
  const [wanted, made] = [amountOf(target.typed), amountOf(volume.typed)];
  const [one, two] = [first.sugar_g_per_L, second.sugar_g_per_L];
  const advice: Advice | null =
    wanted === undefined || made === undefined || one === null || two === null
      ? null
      : blendAdvice(
          { name: first.name, sugar_g_per_L: one },
          { name: second.name, sugar_g_per_L: two },
          wanted,
          made,
          measures,
        );
  return (
    <div className="make">
      <div className="field-grid">
        <JuiceFields label={said.first} which={said.firstOne} juices={juices} juice={first} measures={measures} />
        <JuiceFields label={said.second} which={said.secondOne} juices={juices} juice={second} measures={measures} />
        <AmountField label={said.target} hint={said.nowHint[measures.system]} amount={target} />
        <AmountField label={said.wantedVolume} amount={volume} />
      </div>
      <AdviceLine advice={advice} />
      <p className="soft small">
        <Explained words={said.blendBasis} />
      </p>
    </div>
  );
}

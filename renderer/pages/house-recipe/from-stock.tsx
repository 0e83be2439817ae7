import { useState } from 'react';
import { scaleToStock } from '#core/recipe/scale-to-stock.ts';
import { shownNumber } from '#core/words/figures.ts';
import { amountOf, type TypedAmount, typedMass, typedVolume } from '#renderer/format/typed-amount.ts';
import { type Measures, useMeasures } from '#renderer/format/use-measures.ts';
import { joined } from '#renderer/format/words.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { knownAddition, type PantryRow } from './known-additions.ts';
import type { Make, Version } from './use-make.ts';
import { words } from './words.ts';

const said = words.stock;

interface FromStockProps {
  readonly version: Version;
  readonly make: Make;
  /** What is left of the base that it was tried with; null when unknown. */
  readonly baseLeft_mL: number | null;
}

interface OneOnHandProps {
  readonly name: string;
  readonly row: PantryRow | undefined;
  readonly measures: Measures;
  readonly onTyped: (typed: TypedAmount) => void;
}

function OneOnHand({ name, row, measures, onTyped }: OneOnHandProps) {
  const known = row ?? { name, measures: [] };
  const amount = useAmount(row?.onHand_g == null ? '' : measures.mass(row.onHand_g), (text) => typedMass(text, known));
  return (
    <AmountField
      label={said.of(name)}
      amount={{
        ...amount,
        setText(text) {
          amount.setText(text);
          onTyped(typedMass(text, known));
        },
        sayYes() {
          amount.sayYes();
          const { typed } = amount;
          if (typed.kind === 'doubt') onTyped({ kind: 'amount', value: typed.value });
        },
      }}
    />
  );
}

/** How much can be made of what there is, and what runs out first. */
export function FromStock({ version, make, baseLeft_mL }: FromStockProps) {
  const measures = useMeasures();
  const needed = version.formula.additions.map((one) => ({ ...knownAddition(one, make.pantry), mass_g: one.mass_g }));
  const names = [...new Set(needed.map(({ name }) => name))];
  const base = useAmount(baseLeft_mL === null ? '' : measures.volume(baseLeft_mL), (text) =>
    typedVolume(text, measures.system),
  );
  const [typed, setTyped] = useState<Readonly<Record<string, TypedAmount>>>({});
  const onHand = (name: string): number | null => {
    const now = typed[name];
    if (now !== undefined) return amountOf(now) ?? null;
    return needed.find((one) => one.name === name)?.row?.onHand_g ?? null;
  };
  const there_mL = base.isChanged ? (amountOf(base.typed) ?? null) : baseLeft_mL;
  const most = scaleToStock(
    { base_mL: version.base_mL, volume_mL: version.volume_mL, additions: needed },
    { base_mL: there_mL, additions: Object.fromEntries(names.map((name) => [name, onHand(name)])) },
  );
  const limiting = most === null ? '' : 'base' in most.limiting ? said.theBase : most.limiting.name;
  return (
    <>
      <p className="soft">
        <Explained words={said.lead} />
      </p>
      <div className="field-grid">
        <AmountField label={said.base} amount={base} />
        {names.map((name) => (
          <OneOnHand
            key={name}
            name={name}
            row={needed.find((one) => one.name === name)?.row}
            measures={measures}
            onTyped={(now) => setTyped((all) => ({ ...all, [name]: now }))}
          />
        ))}
      </div>
      <div role="status" className="make">
        {most === null ? (
          <p className="soft">
            <Explained words={said.none} />
          </p>
        ) : most.volume_mL < 1 ? (
          <p>{said.nothing(limiting)}</p>
        ) : (
          <p>
            <strong>{said.most(measures.volume(most.volume_mL), limiting)}</strong>
            {most.uncounted.length === 0 ? null : (
              <span className="soft"> {said.uncounted(joined(most.uncounted))}</span>
            )}
          </p>
        )}
      </div>
      {most === null || most.volume_mL < 1 ? null : (
        <div className="button-row">
          <Button onClick={() => make.amount.setText(`${shownNumber(Math.floor(most.volume_mL * 100) / 100)} mL`)}>
            {said.make(measures.volume(most.volume_mL))}
          </Button>
        </div>
      )}
    </>
  );
}

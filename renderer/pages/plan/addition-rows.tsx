import type { AdditionState } from '#core/trial/formula.ts';
import { stateWords } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { withAddition } from './change-plan.ts';
import { usePlan } from './plan-context.ts';
import { type AdditionDraft, newAddition } from './plan-draft.ts';
import { PlanChoice, PlanText } from './plan-field.tsx';
import { stateOf } from './read-addition.ts';
import { readAmount } from './read-amount.ts';
import { words } from './words.ts';
import './addition-rows.css';

export const pantryListId = 'plan-pantry';

const states: readonly (readonly [AdditionState, string])[] = [
  ['fresh', stateWords.fresh],
  ['frozen', stateWords.frozen],
  ['liquid', stateWords.liquid],
];
/** Where fresh or frozen is what moves, a row is only fruit or juice. */
const movingStates: readonly (readonly [AdditionState, string])[] = [
  ['fresh', words.moves],
  ['liquid', stateWords.liquid],
];
const ends: readonly (readonly [AdditionDraft['end'], string])[] = [
  ['', words.ends['']],
  ['left-in', words.ends['left-in']],
  ['strained-out', words.ends['strained-out']],
];

interface AdditionRowsProps {
  readonly at: string;
  readonly rows: readonly AdditionDraft[];
  readonly onChange: (rows: AdditionDraft[]) => void;
  /** Where the jars say how much, one ingredient needs no weight here. */
  readonly isShare?: boolean;
  readonly isStateMoved?: boolean;
}

function AdditionRow({
  row,
  place,
  ...about
}: AdditionRowsProps & { readonly row: AdditionDraft; readonly place: number }) {
  const { at, rows, onChange, isShare = false, isStateMoved = false } = about;
  const { measures } = usePlan();
  const here = `${at}.${place}`;
  const set = (change: Partial<AdditionDraft> | null) => onChange(withAddition(rows, place, change));
  const amount = readAmount(row.amount, row.ingredient, { measured: measures.measured });
  const state = stateOf(row);
  const amountHint =
    amount.kind === 'grams' && amount.fromMeasure
      ? words.weighs(measures.mass(amount.mass_g))
      : row.amount === ''
        ? words.amountHint
        : undefined;
  return (
    <li className="plan-addition">
      <div className="plan-addition-what">
        <PlanText
          at={`${here}.ingredient`}
          label={words.ingredient}
          list={pantryListId}
          value={row.ingredient}
          onType={(ingredient) => set({ ingredient })}
        />
        {isShare ? null : (
          <PlanText
            at={`${here}.amount`}
            label={words.amount}
            hint={amountHint}
            value={row.amount}
            onType={(text) => set({ amount: text })}
          />
        )}
        {!isShare && amount.kind === 'unweighed' ? (
          <PlanText
            at={`${here}.weight`}
            label={words.weight}
            hint={amount.why === '' ? words.weightHint : amount.why}
            inputMode="decimal"
            value={row.weight}
            onType={(weight) => set({ weight })}
          />
        ) : null}
      </div>
      <div className="plan-addition-how">
        <PlanChoice
          at={`${here}.state`}
          label={words.state}
          value={isStateMoved && state === 'frozen' ? 'fresh' : state}
          options={isStateMoved ? movingStates : states}
          onChoose={(chosen) => set({ state: chosen })}
        />
        <PlanChoice
          at={`${here}.end`}
          label={words.end}
          value={row.end}
          options={ends}
          onChoose={(end) => set({ end })}
        />
        {rows.length > 1 ? (
          <Button
            weight="quiet"
            className="plan-take-out"
            aria-label={words.removeIngredient(row.ingredient)}
            onClick={() => set(null)}
          >
            ×
          </Button>
        ) : null}
      </div>
    </li>
  );
}

/** What is weighed in, a row each: ingredient, how much of it, its state, and whether it stays in. */
export function AdditionRows(props: AdditionRowsProps) {
  const { rows, onChange } = props;
  return (
    <div className="subsection">
      <ul className="plan-additions">
        {rows.map((row, place) => (
          <AdditionRow key={row.key} {...props} row={row} place={place} />
        ))}
      </ul>
      <div>
        <Button weight="quiet" onClick={() => onChange([...rows, newAddition(rows)])}>
          {words.addIngredient}
        </Button>
      </div>
    </div>
  );
}

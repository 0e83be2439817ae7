import { Link } from 'wouter';
import { measureWeight, priceWords } from '#renderer/format/money.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { Facts } from '#renderer/parts/facts/facts.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { basisLines, gramWords, type Ingredient, measureName, sugarsOf } from './ingredient-words.ts';
import { words } from './words.ts';

export type PantryAct = 'stock' | 'figures' | 'change' | 'remove';

interface IngredientRowProps {
  readonly row: Ingredient;
  readonly alias: string | null;
  readonly measures: Measures;
  readonly currency: string | null;
  readonly onAct: (act: PantryAct, row: Ingredient) => void;
}

function Unknown({ row, onAct }: Pick<IngredientRowProps, 'row' | 'onAct'>) {
  return (
    <div className="pantry-ask">
      <p>
        <strong>{row.isBuiltIn ? words.ask(row.name) : words.askOwn(row.name)}</strong> {words.askLine}
      </p>
      <Button onClick={() => onAct(row.isBuiltIn ? 'figures' : 'change', row)}>{words.fillIn}</Button>
    </div>
  );
}

function Whole({ row, measures, currency, onAct }: Omit<IngredientRowProps, 'alias'>) {
  const sugars = sugarsOf(row);
  const sugarWords =
    row.sugars_g === null && sugars !== null ? words.sumOfKinds(gramWords(sugars)) : gramWords(row.sugars_g);
  return (
    <div className="pantry-whole">
      {sugars === null ? <Unknown row={row} onAct={onAct} /> : null}
      {row.short_g === null ? null : <Caution>{words.short(measures.mass(row.short_g))}</Caution>}
      <section>
        <h3>
          <Explained words={words.per100} />
        </h3>
        <Facts
          facts={[
            { name: words.water, value: gramWords(row.water_g) },
            { name: words.allSugars, value: sugarWords },
            { name: words.glucose, value: gramWords(row.glucose_g) },
            { name: words.fructose, value: gramWords(row.fructose_g) },
            { name: words.sucrose, value: gramWords(row.sucrose_g) },
          ]}
        />
      </section>
      <section>
        <h3>
          <Explained words={words.measures} />
        </h3>
        {row.measures.length === 0 ? (
          <p className="soft">
            <Explained words={words.noMeasures} />
          </p>
        ) : (
          <Facts
            facts={row.measures.map((one) => ({
              name: measureName(one),
              value: measureWeight(one.mass_g, measures.system),
            }))}
          />
        )}
      </section>
      <Facts
        facts={[
          {
            name: words.onHand,
            value: row.onHand_g === null ? words.onHandUnknown : measures.mass(row.onHand_g),
          },
          { name: words.price, value: priceWords(row, measures.system, currency) ?? words.priceUnknown },
          {
            name: words.allergens,
            value: row.allergens.join(', ') || (row.isBuiltIn ? words.noAllergens : words.noneNamed),
          },
        ]}
      />
      <section>
        <h3>
          <Explained words={words.basis} />
        </h3>
        {basisLines(row).map((line) => (
          <p key={line}>{line}</p>
        ))}
        {row.aliases.length === 0 ? null : (
          <p className="soft small">
            {words.aliases}: {row.aliases.join('; ')}
          </p>
        )}
        {row.note === null ? null : <p className="soft">{row.note}</p>}
      </section>
      <div className="button-row">
        <Button aria-label={words.stockOf(row.name)} onClick={() => onAct('stock', row)}>
          {words.stock}
        </Button>
        {row.isBuiltIn ? (
          <Button weight="quiet" aria-label={words.figuresOf(row.name)} onClick={() => onAct('figures', row)}>
            {words.figures}
          </Button>
        ) : (
          <>
            <Button aria-label={words.changeOf(row.name)} onClick={() => onAct('change', row)}>
              {words.change}
            </Button>
            <Button weight="quiet" aria-label={`${words.remove} ${row.name}`} onClick={() => onAct('remove', row)}>
              {words.remove}
            </Button>
          </>
        )}
      </div>
      <Pasts row={row} />
    </div>
  );
}

/** The pasts of the owner's figures and of what is on hand, where there are such rows. */
function Pasts({ row }: Pick<IngredientRowProps, 'row'>) {
  if (row.id === null && row.stock === null) return null;
  return (
    <p className="pantry-pasts small">
      {row.id === null ? null : (
        <Link href={`/history/ingredients/${row.id}`} aria-label={words.pastOf(row.name)}>
          {words.past}
        </Link>
      )}{' '}
      {row.stock === null ? null : (
        <Link href={`/history/stocks/${row.stock}`} aria-label={words.pastOfStock(row.name)}>
          {words.pastStock}
        </Link>
      )}
    </p>
  );
}

/** One ingredient: its name, sugar and what is on hand in a line; everything that is known of it below, when opened. */
export function IngredientRow({ row, alias, measures, currency, onAct }: IngredientRowProps) {
  const sugars = sugarsOf(row);
  return (
    <li>
      <details className="pantry-row">
        <summary>
          <span className="pantry-name">
            {row.name} <SampleMark when={row.isSample} />
            {alias === null ? null : <span className="soft small"> {words.alias(alias)}</span>}
          </span>
          <span className={sugars === null ? 'pantry-unknown' : 'soft figures'}>
            {sugars === null ? words.sugarUnknown : words.sugars(gramWords(Number(sugars.toFixed(1))))}
          </span>
          <span className="pantry-on-hand figures">
            {row.onHand_g === null ? null : words.onHandMark(measures.mass(row.onHand_g))}
            {row.short_g === null ? null : <span className="pantry-unknown"> {words.shortMark}</span>}
          </span>
        </summary>
        <Whole row={row} measures={measures} currency={currency} onAct={onAct} />
      </details>
    </li>
  );
}

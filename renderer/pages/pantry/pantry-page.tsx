import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { ingredientKindWords } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { FiguresForm } from './figures-form.tsx';
import { IngredientRow, type PantryAct } from './ingredient-row.tsx';
import { foundAs, type Ingredient, sugarsOf } from './ingredient-words.ts';
import { OwnForm } from './own-form.tsx';
import { StockForm } from './stock-form.tsx';
import { words } from './words.ts';
import './pantry.css';

const kinds = Object.keys(ingredientKindWords) as Ingredient['kind'][];
type Show = keyof typeof words.shows;

const isShown: Readonly<Record<Show, (row: Ingredient) => boolean>> = {
  all: () => true,
  onHand: ({ onHand_g }) => onHand_g !== null,
  unknown: (row) => sugarsOf(row) === null,
  own: ({ isBuiltIn, ownFigures }) => !isBuiltIn || ownFigures.length > 0,
};

/** Nothing to show, and what to do about it. */
function Nothing({ show, onAdd }: { readonly show: Show; readonly onAdd: () => void }) {
  const [title, line] =
    show === 'onHand'
      ? [words.emptyOnHand, words.emptyOnHandLine]
      : show === 'own'
        ? [words.emptyOwn, words.emptyOwnLine]
        : [words.none, words.noneLine];
  return (
    <EmptyState title={title} actions={show === 'onHand' ? null : <Button onClick={onAdd}>{words.add}</Button>}>
      <p>
        <Explained words={line} />
      </p>
    </EmptyState>
  );
}

type Opened = { readonly act: PantryAct | 'add'; readonly row: Ingredient | null };

/** Every ingredient by kind, found as you type, with what is on hand and what it costs. */
export function PantryPage() {
  const pantry = useAnswer('pantry:list', {});
  const kitchen = useAnswer('kitchen:open', {});
  const measures = useMeasures();
  const [sought, setSought] = useState('');
  const [show, setShow] = useState<Show>('all');
  const [opened, setOpened] = useState<Opened | null>(null);
  const sayWithUndo = useSayWithUndo();
  const remove = useRequest('pantry:remove');
  const currency = kitchen.data?.currency ?? null;
  const close = () => setOpened(null);
  const add = () => setOpened({ act: 'add', row: null });

  function act(kind: PantryAct, row: Ingredient) {
    if (kind !== 'remove') setOpened({ act: kind, row });
    else if (row.id !== null) {
      remove.mutate({ ingredient: row.id }, { onSuccess: () => void sayWithUndo(words.removed(row.name)) });
    }
  }

  return (
    <>
      <PageHead
        title={words.title}
        lead={words.lead}
        actions={
          <Button weight="main" onClick={add}>
            {words.add}
          </Button>
        }
      />
      <Answer of={pantry}>
        {({ ingredients }) => {
          const found = ingredients.flatMap((row) => {
            const as = isShown[show](row) ? foundAs(row, sought) : null;
            return as === null ? [] : [{ row, alias: as.alias }];
          });
          return (
            <>
              <search className="section pantry-search">
                <Field label={words.search} hint={words.searchHint}>
                  {(wiring) => (
                    <input
                      {...wiring}
                      type="search"
                      value={sought}
                      onChange={({ target }) => setSought(target.value)}
                    />
                  )}
                </Field>
                <Field label={words.show}>
                  {(wiring) => (
                    <select {...wiring} value={show} onChange={({ target }) => setShow(target.value as Show)}>
                      {Object.entries(words.shows).map(([value, name]) => (
                        <option key={value} value={value}>
                          {name}
                        </option>
                      ))}
                    </select>
                  )}
                </Field>
              </search>
              <p className="soft pantry-count" role="status">
                {found.length === 0 ? '' : words.found(found.length)}
              </p>
              {found.length === 0 ? <Nothing show={sought.trim() === '' ? show : 'all'} onAdd={add} /> : null}
              {kinds.map((kind) => {
                const rows = found.filter(({ row }) => row.kind === kind);
                return rows.length === 0 ? null : (
                  <section key={kind} className="section">
                    <h2>{ingredientKindWords[kind]}</h2>
                    <ul className="rows pantry-rows" aria-label={ingredientKindWords[kind]}>
                      {rows.map(({ row, alias }) => (
                        <IngredientRow
                          key={`${row.isBuiltIn} ${row.name}`}
                          row={row}
                          alias={alias}
                          measures={measures}
                          currency={currency}
                          onAct={act}
                        />
                      ))}
                    </ul>
                  </section>
                );
              })}
            </>
          );
        }}
      </Answer>
      {opened?.act === 'add' ? (
        <Sheet title={words.add} onClose={close}>
          <OwnForm row={null} name={sought.trim()} onDone={close} />
        </Sheet>
      ) : null}
      {opened?.act === 'change' && opened.row !== null ? (
        <Sheet title={words.changeOf(opened.row.name)} onClose={close}>
          <OwnForm row={opened.row} onDone={close} />
        </Sheet>
      ) : null}
      {opened?.act === 'figures' && opened.row !== null ? (
        <Sheet title={words.figuresOf(opened.row.name)} onClose={close}>
          <FiguresForm row={opened.row} onDone={close} />
        </Sheet>
      ) : null}
      {opened?.act === 'stock' && opened.row !== null ? (
        <Sheet title={words.stockOf(opened.row.name)} onClose={close}>
          <StockForm row={opened.row} measures={measures} currency={currency} onDone={close} />
        </Sheet>
      ) : null}
    </>
  );
}
